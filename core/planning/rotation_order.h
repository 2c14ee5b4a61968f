#pragma once

#include "core/planning/rotation_work.h"

#include <cstddef>
#include <vector>

namespace chalk::planning {

/// One lift of one client, in the order in which lifts get their stations.
struct RotationStep {
    std::size_t client = 0;
    std::size_t lift = 0;

    bool operator==(const RotationStep&) const = default;
};

/// What an order comes to where everybody begins as early as the lifts before it in the order allow.
[[nodiscard]] RotationBound valueOf(const RotationWork& work, const std::vector<RotationStep>& order);

/// A good order, found by moving single steps about and now and then accepting a worse one (simulated annealing). Keeps blocks and patterns.
/// The same work and number of moves give the same order.
[[nodiscard]] std::vector<RotationStep> goodOrderOf(const RotationWork& work, int moves);

}  // namespace chalk::planning
