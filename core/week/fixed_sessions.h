#pragma once

#include "core/week/packed_week.h"

#include <cstddef>
#include <vector>

namespace chalk::week {

/// Where locked sessions and those that `options` fixes are, to the minute; nothing for all others.
[[nodiscard]] WeekPlan fixedPlanOf(const WeekProblem& problem, const FillOptions& options);

/// The week without the candidates that clash with fixed sessions. `problem` outlives it.
[[nodiscard]] PackedWeek weekAroundFixed(const WeekProblem& problem, const FillOptions& options);

/// Locked sessions that break a rule on their standing slots, be it with another locked one; ascending.
[[nodiscard]] std::vector<std::size_t> lockedAgainstRules(const WeekProblem& problem);

}  // namespace chalk::week
