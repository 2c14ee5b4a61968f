#pragma once

#include "core/week/slot_table.h"
#include "core/week/week_problem.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace chalk::week {

/// How many of a session's candidates one rule blocks first, and the one of them that is nearest to what is wanted.
struct BlockCount {
    SlotBlock block = SlotBlock::StudioClosed;
    int count = 0;       ///< 1 or more
    Slot nearest;        ///< candidate: least minutes from the standing slot, else from a preferred start, else the first of the week
    BlockedSlot example; ///< what is in the way there

    bool operator==(const BlockCount&) const = default;
};

/// Why a session has no place. A candidate is a start on the grid with a coach whom the client accepts.
struct LeftOver {
    std::size_t session = 0;
    int candidates = 0;
    std::vector<BlockCount> blocks;   ///< by the order of the rules; together with `free` they make up the candidates
    int free = 0;                     ///< candidates that nothing blocks: it was left over though it fits
    std::optional<Slot> nearestFree;

    /// Candidates that one rule blocks first; 0 where it blocks none.
    [[nodiscard]] int countOf(SlotBlock block) const;

    bool operator==(const LeftOver&) const = default;
};

/// Why a session has no place beside all the others of the plan; as if it were left over where it is not.
[[nodiscard]] LeftOver leftOverOf(const WeekProblem& problem, const WeekPlan& plan, std::size_t session);

/// Of every session that the plan leaves over, by index.
[[nodiscard]] std::vector<LeftOver> allLeftOver(const WeekProblem& problem, const WeekPlan& plan);

/// How far a slot is from what is wanted, in minutes: from the standing slot, else from the nearest preferred start span, else from Monday 00:00.
[[nodiscard]] int minutesFromWanted(const WeekProblem& problem, std::size_t session, const Slot& slot);

}  // namespace chalk::week
