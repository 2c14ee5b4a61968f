#pragma once

#include "core/progression/lift_state.h"

namespace chalk::progression {

/// What a lift in this state is to do next, with no layoff looked at.
[[nodiscard]] Prescription prescriptionOf(const LiftState& state, const Policy& policy);

}  // namespace chalk::progression
