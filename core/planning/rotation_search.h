#pragma once

#include "core/planning/rotation_order.h"

#include <cstdint>
#include <unordered_map>
#include <vector>

namespace chalk::planning {

/// Branch and bound over the orders of all clients at once (see rotationOf), from a good order on. Used once.
class RotationSearch {
public:
    /// `request` outlives the search.
    RotationSearch(const RotationRequest& request, const RotationEffort& effort);

    [[nodiscard]] Rotation run();

private:
    /// The next lift of one client.
    struct Move {
        std::size_t client = 0;
        std::size_t lift = 0;
        int start = 0;
        RotationState after;
        RotationBound bound;
    };
    /// What two states must share to be compared: who has done what, and what last.
    struct Same {
        std::uint64_t done = 0;
        std::uint64_t last = 0;

        bool operator==(const Same&) const = default;
    };
    struct SameHash {
        std::size_t operator()(const Same& same) const { return same.done * 0x9E3779B97F4A7C15U ^ same.last * 0xC2B2AE3D27D4EB4FU; }
    };

    void explore(const RotationState& state, std::size_t depth);
    [[nodiscard]] std::vector<Move> movesFrom(const RotationState& state) const;
    [[nodiscard]] int startOf(const RotationState& state, std::size_t client, const WorkLift& lift) const;
    [[nodiscard]] RotationState after(const RotationState& state, std::size_t client, std::size_t lift, int start) const;
    /// Whether a state that was explored before is at least as good in everything; keeps this one if not.
    [[nodiscard]] bool isKnownWorse(const RotationState& state);
    [[nodiscard]] bool isNoLater(const RotationState& one, const RotationState& other) const;
    void keepIfBest(const RotationState& state);
    [[nodiscard]] Rotation rotationOfBest() const;

    const RotationRequest& m_request;
    RotationEffort m_effort;
    RotationWork m_work;
    std::vector<RotationStep> m_taken;
    std::vector<RotationStep> m_best;
    RotationBound m_bestValue{1 << 30, 1 << 30};
    RotationBound m_rootBound;
    std::int64_t m_steps = 0;
    std::unordered_map<Same, std::vector<RotationState>, SameHash> m_explored;
};

}  // namespace chalk::planning
