#pragma once

#include "core/week/week_problem.h"

#include <cstdint>

namespace chalk::test {

/// How large a week is, and how full.
struct UsualWeek {
    int clients = 150;           ///< two sessions each, or thereabouts
    int clientsACoach = 35;      ///< fewer: roomier
    int grid = 15;
    std::uint64_t seed = 1;
};

/// A week like that of a studio: coaches with a morning and an evening, clients before work, at noon or after it, most of them with the
/// standing slots of last year, some with new wishes; racks, benches and floor that are shared.
[[nodiscard]] week::WeekProblem usualWeek(const UsualWeek& size);

}  // namespace chalk::test
