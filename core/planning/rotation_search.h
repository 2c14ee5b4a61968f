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
        RotationBound bound;
    };
    /// When everybody can begin the next lift or has ended, and when each unit can be taken again or that nobody needs it any more.
    using Times = std::vector<int>;
    /// A state that was gone through, beside who had done what.
    struct Explored {
        std::uint64_t next = 0;  ///< what each client may do next, a byte each
        Times times;
        RotationBound least;     ///< no completion falls below it
    };

    /// Goes through what may follow. Answers what no completion falls below, which is no more than the best found where one reaches it.
    RotationBound explore(const RotationState& state, std::size_t depth);
    /// The same, from what was learnt of a state like it where that is enough.
    RotationBound explored(const RotationState& state, std::size_t depth);
    [[nodiscard]] std::vector<Move> movesFrom(const RotationState& state) const;
    [[nodiscard]] int startOf(const RotationState& state, std::size_t client, const WorkLift& lift) const;
    [[nodiscard]] RotationState after(const RotationState& state, const Move& move) const;
    /// When a client can begin again, or has ended.
    [[nodiscard]] int nextStartOf(const RotationState& state, std::size_t client) const;
    [[nodiscard]] Times timesOf(const RotationState& state) const;
    /// What an explored state says of one with other times: whatever follows the other may follow it too, a little later.
    [[nodiscard]] RotationBound leastAsLearnt(const Explored& one, std::uint64_t next, const Times& times) const;
    RotationBound keepIfBest(const RotationState& state);
    [[nodiscard]] Rotation rotationOfBest() const;

    const RotationRequest& m_request;
    RotationEffort m_effort;
    RotationWork m_work;
    std::vector<RotationStep> m_taken;
    std::vector<RotationStep> m_best;
    RotationBound m_bestValue{1 << 30, 1 << 30};
    RotationBound m_rootBound;
    std::int64_t m_steps = 0;
    std::unordered_map<std::uint64_t, std::vector<Explored>> m_explored;  ///< by who has done what, a byte each
};

}  // namespace chalk::planning
