#pragma once

#include "core/base/date.h"
#include "core/base/load.h"
#include "core/base/quantity.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::progression {

/// One exposure of a lift in a plan of weeks.
struct BlockWork {
    base::Sets sets;
    base::Reps repsLow;
    base::Reps repsHigh;        ///< the top of the range that is worked through; repsLow where there is none
    base::Milli share;          ///< of the single, 1 to 1000
    base::Seconds rest;
    int reserve = 2;            ///< 0 to 10
    bool isPauseAsked = false;
    bool isTest = false;        ///< the single, or a set of few repetitions, is tested

    bool operator==(const BlockWork&) const = default;
};

/// A week of it. The exposures are done in their order; one more than there are is like the last.
struct BlockWeek {
    base::Date monday;
    bool isLighter = false;
    std::vector<BlockWork> work;  ///< one at least

    bool operator==(const BlockWeek&) const = default;
};

/// What a lift does after the beginner months, week by week. Without weeks it ends the one that runs.
struct Block {
    std::vector<BlockWeek> weeks;  ///< by their Mondays; there may be holes between them
    base::Load single{};           ///< the effective load of a single, estimated or tested, in the lift's unit; above 0 where there are weeks
    bool isTested = false;         ///< the single was lifted, not estimated
    std::string note{};

    bool operator==(const Block&) const = default;
};

/// The field of a block that makes no sense (`weeks[2].monday`, `single` …) and why.
struct BlockFault {
    std::string field;
    std::string_view reason;
};

inline constexpr std::size_t kMostBlockWeeks = 60;

[[nodiscard]] std::optional<BlockFault> faultOf(const Block& block);

}  // namespace chalk::progression
