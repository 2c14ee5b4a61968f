#pragma once

#include "core/progression/event.h"
#include "core/progression/lift_state.h"
#include "core/progression/load_steps.h"

namespace chalk::progression {

/// P-4 or P-5: lets a lift off its hold.
[[nodiscard]] Rule applyRelease(LiftState& state);

/// O-1: stage, load, reps, sets, rest as the coach says.
[[nodiscard]] Rule applyCoachSet(const CoachSet& set, LiftState& state, const Policy& policy, const LoadSteps& steps);

/// the lift goes on with other equipment, which `steps` knows already.
[[nodiscard]] Rule applySwap(LiftState& state, const LoadSteps& steps);

}  // namespace chalk::progression
