#pragma once

#include "core/direction/block_plan.h"

namespace chalk::direction {

/// Where an exposure stands in a plan.
struct Place {
    WeekFrame frame;
    int week = 0;        ///< of the plan, counted from 0
    int exposure = 0;    ///< of its week, counted from 0
    int exposures = 1;   ///< of its week
};

/// A number that goes in even steps from the first week of work of a phase to its last.
struct Ramp {
    int first = 0;
    int last = 0;

    /// At a step of `steps` (1 or more), to the nearest whole number.
    [[nodiscard]] int at(int step, int steps) const;
};

/// The most repetitions to failure that the published chart allows at a share: 8 at 80 per cent; 10 for lighter ones (lifts::chartShare).
[[nodiscard]] int chartReps(base::Milli share);

/// The repetitions in reserve that so many repetitions at a share leave, 1 to 4.
[[nodiscard]] int reserveAt(base::Milli share, base::Reps reps);

/// A lighter week's share of the loads: the light day of the published heavy, light and medium days (100, 80 and 90 per cent; Haff and Triplett
/// 2016, chapter 17).
inline constexpr base::Milli kLightDay{800};
inline constexpr base::Milli kMediumDay{900};

/// `share` of a share.
[[nodiscard]] base::Milli partOf(base::Milli share, base::Milli part);

/// The same work in a lighter week: half of its sets, rounded up, at the loads of a light day. The half is common practice.
[[nodiscard]] PlannedWork lightened(PlannedWork work);

}  // namespace chalk::direction
