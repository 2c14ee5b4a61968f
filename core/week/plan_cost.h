#pragma once

#include "core/week/week_problem.h"

namespace chalk::week {

/// What a plan costs, by part, worked out from nothing but the plan. The plan has a place for each session of the problem; it need not keep the
/// rules, and what it breaks costs nothing here.
[[nodiscard]] Objective objectiveOf(const WeekProblem& problem, const WeekPlan& plan);

}  // namespace chalk::week
