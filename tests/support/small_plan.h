#pragma once

#include "core/planning/starting_plan.h"

namespace chalk::test {

/// Squats `sit` (unloaded), `bell` (kettlebell), `bar` (barbell, ruled out by a shoulder), hinges `bow` (unloaded), `dead` (barbell, ruled out
/// by a lower back), and for each other pattern one unloaded exercise named after it.
[[nodiscard]] lifts::Catalogue smallCatalogue();

/// Sessions of these patterns, named A, B …; squats rather with `bar`, then `bell`.
[[nodiscard]] planning::PlanTemplate templateOf(std::vector<std::vector<lifts::Pattern>> sessions);

/// From Monday 2026-03-02, kettlebells of 8, 12 and 16 kg and a bar of 20 kg on hand, every pattern earned.
[[nodiscard]] planning::PlanRequest readyRequest();

}  // namespace chalk::test
