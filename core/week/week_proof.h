#pragma once

#include "core/week/week_state.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace chalk::week {

/// What a search to the end found.
struct ProofOutcome {
    bool isComplete = false;                       ///< every plan was looked at, or known to be no cheaper
    std::optional<std::vector<Place>> cheaper;     ///< by session: the cheapest plan below the total it began with
    long total = 0;                                ///< of that
};

/// Branch and bound over the places of all sessions that may move. The bound: each of those not placed yet costs its cheapest place or being
/// left over, and closes as much of the coaches' gaps as it is long. Worth trying for small weeks alone.
class WeekProof {
public:
    /// Both outlive it; in `state` all of `free` are left over.
    WeekProof(const PackedWeek& week, WeekState& state, const std::vector<int>& free);

    /// Looks for plans that cost less than `total`; gives up without a step where there are far too many, and later by a number of steps.
    [[nodiscard]] ProofOutcome run(long total);

private:
    void explore(std::size_t depth);
    void tryDay(std::size_t depth, int session, const CandidateDay& day);
    [[nodiscard]] long boundAt(std::size_t depth) const;
    [[nodiscard]] bool isFarTooLarge() const;

    const PackedWeek& m_week;
    WeekState& m_state;
    std::vector<int> m_order;       ///< fewest candidates first
    std::vector<long> m_saving;     ///< by depth: what all from there on save at most, against being left over
    std::vector<long> m_gain;       ///< by depth: what all from there on close of gaps at most
    std::int64_t m_steps = 0;
    ProofOutcome m_outcome;
};

}  // namespace chalk::week
