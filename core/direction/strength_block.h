#pragma once

#include "core/direction/scheme_ramp.h"

namespace chalk::direction {

/// An exposure of a strength plan. Main lifts, linear: base 4 to 5 × 4 at 80 to 82 per cent of the single, build 4 to 5 × 3 at 85 to 87, peak
/// 4 to 2 × 2 at 90 to 93; the second exposure of a week is a light day, the third a medium one. Undulating: 4 × 4 at 80, 5 × 3 at 85 and 4 × 2
/// at 90 take turns from exposure to exposure, one per cent more in build, two in peak. Each lies in the published range of its aim and its total
/// in the table of repetitions by intensity. Assistance: 3 × 8 at 75 to 77 per cent, not heavier than 8RM.
[[nodiscard]] PlannedWork strengthWork(LiftRole role, Wave wave, const Place& place);

/// The repetition maxima that a published trial of 12 weeks compared, three sets each: linear 8RM in weeks 1 to 4, 6RM in 5 to 8, 4RM in 9 to
/// 12; undulating 8, 6 and 4RM on the three days of each week. `week` and `day` count from 0, 12 weeks of 3 days. Source: Rhea M. R. 2002,
/// J Strength Cond Res 16:250-255 (its numbers are from memory).
[[nodiscard]] base::Reps trialRepMaximum(Wave wave, int week, int day);

}  // namespace chalk::direction
