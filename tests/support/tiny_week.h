#pragma once

#include "core/week/week_problem.h"

#include <cstdint>

namespace chalk::test {

/// A week so small that every plan of it can be tried, different for each seed: three days, two coaches, three or four sessions, with every rule and
/// every part of the cost in it now and then.
[[nodiscard]] week::WeekProblem tinyWeek(std::uint64_t seed);

}  // namespace chalk::test
