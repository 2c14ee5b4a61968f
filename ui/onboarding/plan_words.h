#pragma once

#include "core/lifts/catalogue.h"
#include "core/planning/starting_plan.h"

#include <QString>

#include <cstdint>

namespace chalk::ui::onboarding {

/// Where a gap of the plan can be closed.
enum class WayOut : std::uint8_t { None, Screen, Health, Hours, Kit, AddToSession };

/// Why this exercise, and why unloaded or with this load: a sentence or two.
[[nodiscard]] QString liftReason(const planning::PlannedLift& lift, const lifts::Catalogue& catalogue);
/// Why a pattern is not in the plan and what would open it. `isLeftOut`: the coach left it out.
[[nodiscard]] QString gapReason(const planning::PatternGap& gap, const lifts::Catalogue& catalogue, bool isLeftOut);
/// Where a gap that the coach did not want can be closed.
[[nodiscard]] WayOut wayOutOf(const planning::PatternGap& gap);
/// `Open the screen`; empty for none.
[[nodiscard]] QString wayOutText(WayOut way);
/// `Goblet squat: kettlebell is not there`, `Back squat: ruled out by lower back`.
[[nodiscard]] QString passText(const planning::PassedOver& pass, const lifts::Catalogue& catalogue);
/// `Rehearse: Bodyweight squat`, `8 kg to begin`.
[[nodiscard]] QString liftDoes(const planning::PlannedLift& lift, const lifts::Catalogue& catalogue, base::MassUnit unit);
/// Sessions that lie too close, or find no day; empty where all is well.
[[nodiscard]] QString weekWarning(const planning::WeekOfSessions& week);

}  // namespace chalk::ui::onboarding
