#pragma once

#include "core/week/week_problem.h"

#include <string>
#include <vector>

namespace chalk::test {

/// What a plan breaks, a word for each time, and what it costs.
struct WeekJudgement {
    std::vector<std::string> faults;
    week::Objective objective;
};

/// Judges a plan minute by minute, slowly, and shares no code with what it judges. Sessions off the grid count as faults and are not weighed.
[[nodiscard]] WeekJudgement judged(const week::WeekProblem& problem, const week::WeekPlan& plan);

}  // namespace chalk::test
