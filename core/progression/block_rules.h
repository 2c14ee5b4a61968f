#pragma once

#include "core/progression/event.h"
#include "core/progression/lift_state.h"
#include "core/progression/load_steps.h"

namespace chalk::progression {

// After the beginner months a lift can follow a block of weeks: what it does comes from the block, its load from the share of a single that the
// block names. The stage and what belongs to it stay as they were meanwhile.
//
// N-1  `block` on a loaded lift that is not on hold: its weeks begin. In a block that runs already the new one takes its place. `set` and `swap` end
//      it, and so does G-3.
// N-2  An exposure in it that no rule about pain, steadiness or a lighter week decides: the single moves half of the way to what the best set spoke
//      for (see single_estimate.h), but not down where every set did the planned repetitions at the planned load or more, with the reserve asked for
//      or none written down: light days say nothing against a single. A tested single is taken as it was lifted.
// N-3  When its last day is over, the lift is in Load build, with the load that is good for hard_reps repetitions and the reserve.
// N-4  `block` without weeks: the coach ends it, and N-3's load and stage follow at once.
// N-5  `block` on a lift that carries no load or is on hold, or one without weeks where none runs: nothing changes.
//
// Pain, Control, holds and releases act as ever; while the lift is not in a loaded stage its weeks go by. G-1 and G-2 cut the single as they cut
// the load.

/// N-1, N-4 or N-5.
[[nodiscard]] Rule applyBlock(const Block& block, LiftState& state, const Policy& policy, const LoadSteps& steps);

/// Whether a block's last day was before `day`.
[[nodiscard]] bool isBlockOver(base::Date day, const LiftState& state);

/// What N-3 does.
void endBlock(LiftState& state, const Policy& policy, const LoadSteps& steps);

/// N-2's work on the single. The lift is in a block.
void moveSingle(base::Date day, const Exposure& exposure, const Kit& kit, LiftState& state, const Policy& policy, const LoadSteps& steps);

/// Puts the block's numbers for `day` in the place of the stage's. Anything but work stays as it is, and so does a day without a week.
void followBlock(Prescription& next, base::Date day, const BlockRun& run, const LoadSteps& steps);

}  // namespace chalk::progression
