#pragma once

#include "tests/ui/direction/plan_on_test.h"
#include "ui/direction/plan_comparison_figures.h"

namespace chalk::ui::direction {

/// The plan on test on the Wednesday of its second week: of the back squat 4 × 4 at 80 kg were done in the first, of the other lifts nothing. The third
/// lift has a name with a comma and quotes.
[[nodiscard]] PlanComparisonCase comparedOnTest();

}  // namespace chalk::ui::direction
