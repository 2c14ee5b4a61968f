#pragma once

#include "core/direction/scheme_ramp.h"

namespace chalk::direction {

/// An exposure of a movement plan. Main lifts are worked for range and control: 3 × 6 to 8 with a pause at the bottom of each repetition, at 50 to
/// 60 per cent of the single (common practice). The others keep strength up: 2 to 3 × 12 to 15 at 55 to 65 per cent, the published range for local
/// endurance (see publishedRange).
[[nodiscard]] PlannedWork movementWork(LiftRole role, const Place& place);

}  // namespace chalk::direction
