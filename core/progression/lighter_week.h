#pragma once

#include "core/base/date.h"
#include "core/progression/lift_state.h"
#include "core/progression/load_steps.h"

namespace chalk::progression {

// A lighter week: fewer sets and less load for some days, and then on from where the lift was. That a week of less work now and
// then helps to get over fatigue, and its figures (about half of the sets, about a tenth less load, a week), are common practice in
// the trade, no published rule. The reps aimed at and the rest stay.
//
// D-1  `lighter` on a loaded lift that is not on hold: a lighter week begins, the event's day the first of `lighter_days`. In one
//      that runs already it begins anew. `set` and `swap` end it; a hold, a release and Control do not stop its days from running.
// D-2  An exposure in it, in a loaded stage, is recorded and judged by nothing but pain: P-3, P-1 and P-2 as ever, V-1 and K-3
//      too. It is neither made nor missed, and nothing that stands changes. (P-2 names D-2 after it.)
// D-3  When its last day is over, what was due before it is due again. Named until the next record.
// D-4  `lighter` on a lift that carries no load or is on hold: there is nothing to make lighter, and nothing changes.
//
// A gap is counted from exposure to exposure as ever: one inside a lighter week is work, days without any are days away. A layoff
// (G-1 to G-3) can therefore fall into it or follow it, and then takes the place of D-3; inside of it, the lighter numbers are worked out
// from the load that the layoff left.

/// Whether the lift is in a lighter week on `day`, no earlier than its last event.
[[nodiscard]] bool isInLighterWeek(base::Date day, const LiftState& state);

/// D-3: whether a lighter week is over on `day`, with no record since, and its end makes a difference: the lift carries a load and is
/// not on hold.
[[nodiscard]] bool isLighterWeekOver(base::Date day, const LiftState& state);

/// D-1 or D-4.
[[nodiscard]] Rule beginLighterWeek(base::Date day, LiftState& state, const Policy& policy);

/// Work with `lighter_sets` of the sets, rounded up, and the load `cut(w, lighter_cut)`: where nothing lighter is on hand the load stays.
/// Anything but work stays as it is.
void makeLighter(Prescription& next, base::Date lastDay, const Policy& policy, const LoadSteps& steps);

}  // namespace chalk::progression
