#pragma once

#include "core/progression/lift_state.h"

namespace chalk::progression {

/// What a lift in this state is to do next, with no layoff looked at.
[[nodiscard]] Prescription prescriptionOf(const LiftState& state, const Policy& policy);

/// The number that moves with the next exposure: the load where a plan leads, else that of the stage; none in a lighter week.
[[nodiscard]] std::optional<Lever> movingLeverOf(const Prescription& next);

}  // namespace chalk::progression
