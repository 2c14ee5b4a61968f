#pragma once

#include "core/base/date.h"
#include "core/base/load.h"
#include "core/progression/block.h"

#include <memory>
#include <optional>

namespace chalk::progression {

/// How far a lift is in its block. Small to copy: the weeks are shared.
struct BlockRun {
    std::shared_ptr<const Block> block;  ///< never null, with weeks
    base::Load single;                   ///< as results have moved it: effective, in the lift's unit
    base::Date week;                     ///< the Monday of the last exposure
    int done = 0;                        ///< exposures in that week

    bool operator==(const BlockRun& other) const
    {
        return *block == *other.block && single == other.single && week == other.week && done == other.done;
    }
};

/// Where an exposure on a day stands in a block.
struct BlockPlace {
    std::size_t week = 0;      ///< index of the block's weeks
    std::size_t exposure = 0;  ///< index of that week's work

    bool operator==(const BlockPlace&) const = default;
};

/// The week that holds `day`, in a hole the next one, with the exposure that is due in it; nothing before the first week and after the last.
[[nodiscard]] std::optional<BlockPlace> placeOn(base::Date day, const BlockRun& run);

/// Whether the last day of the last week is over.
[[nodiscard]] bool isOver(base::Date day, const BlockRun& run);

/// Counts an exposure.
void countExposure(base::Date day, BlockRun& run);

}  // namespace chalk::progression
