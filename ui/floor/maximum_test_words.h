#pragma once

#include "ui/common/plate_stack.h"
#include "ui/floor/maximum_test_run.h"

#include <QString>
#include <QStringList>

namespace chalk::ui::floor {

// What the guided test of a maximum says.

/// A load as it is written on the lift: `77.5 kg`, `2 × 12 kg`, `+10 kg`.
[[nodiscard]] QString testLoadText(const TestedLift& lift, base::Load load);
/// What is to be seen to first, each a sentence to be ticked off.
[[nodiscard]] QStringList testChecks(const TestedLift& lift);
/// Why nothing can be tested; empty where something can.
[[nodiscard]] QString noTestAtAllText(const TestedLift& lift);
/// Why it is not tested by a single, and what is offered instead; empty where it may be.
[[nodiscard]] QString noSingleText(const TestedLift& lift);
/// `1. Warm-up, easy`, `Attempt 2 of 5`.
[[nodiscard]] QString testStepText(const MaximumTestRun& run);
/// `5–10 reps`, `1 rep`.
[[nodiscard]] QString testRepsText(const chalk::direction::TestSet& set);
/// What to do in the step, one sentence.
[[nodiscard]] QString testHowText(const MaximumTestRun& run);
/// `Best so far 95 kg. 3 attempts left.`
[[nodiscard]] QString testStandText(const TestedLift& lift, const MaximumTestRun& run);
/// `Rested 2:00 to 4:00 before it.`; empty before the first.
[[nodiscard]] QString testRestText(const chalk::direction::TestSet& set);
/// The plates of a load; nothing where the lift has no bar.
[[nodiscard]] std::optional<common::PlateStackView> testPlatesOf(const TestedLift& lift, base::Load load);
/// `each side of a 20 kg bar`, or another thing to set up; may be empty.
[[nodiscard]] QString testSetUpText(const TestedLift& lift, base::Load load);
/// `Back squat: 102.5 kg, one repetition.`
[[nodiscard]] QString testResultText(const TestedLift& lift, const MaximumTestRun& run);
/// How it ended and what happens to the sets, one sentence each.
[[nodiscard]] QString testEndingText(const TestedLift& lift, const MaximumTestRun& run);
/// For the ledge, in the past: `Back squat tested for Tomasz: 102.5 kg × 1`.
[[nodiscard]] QString testKeptWords(const TestedLift& lift, const MaximumTestRun& run);

}  // namespace chalk::ui::floor
