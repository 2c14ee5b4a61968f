#pragma once

#include "tests/ui/direction/plan_on_test.h"
#include "ui/direction/plan_outcome_words.h"

namespace chalk::ui::direction {

/// The plan on test when it is over. In its first two weeks 9 sets of the back squat a week were done, and nothing else: the squat's single rose from
/// 100 to 107.5, the bench press's fell from 80 to 78 with two days of pain and a hold; of the row none was ever known.
[[nodiscard]] PlanOutcomeCase outcomeOnTest();

}  // namespace chalk::ui::direction
