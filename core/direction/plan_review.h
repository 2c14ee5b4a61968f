#pragma once

#include "core/base/load.h"
#include "core/direction/block_plan.h"

#include <span>
#include <vector>

namespace chalk::direction {

/// A working set of a lift, as it was done.
struct DoneSet {
    base::Date date;
    base::Load load;   ///< effective, in the lift's unit
    base::Reps reps;
};

/// One lift in one week of a plan, as planned and as done.
struct WeekReview {
    base::Date monday;
    int plannedSets = 0;
    int doneSets = 0;
    int plannedReps = 0;
    int doneReps = 0;
    double plannedShare = 0;   ///< mean share of the single over the repetitions, 0 to 1
    double doneShare = 0;      ///< the same of what was done; may be above 1. 0 where nothing was

    bool operator==(const WeekReview&) const = default;
};

/// Every week of a plan for one of its lifts (an index), by the sets done in the week's seven days. What was done outside of the plan's weeks is
/// left out. `single` is the effective load that shares are of, above 0. A test is planned as one single.
[[nodiscard]] std::vector<WeekReview> reviewOf(const BlockPlan& plan, std::size_t lift, base::Load single, std::span<const DoneSet> done);

}  // namespace chalk::direction
