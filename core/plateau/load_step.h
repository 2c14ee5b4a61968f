#pragma once

#include "core/base/load.h"

namespace chalk::plateau {

/// Weeks that the smallest step of a load takes at a usual gain (0.9 % a week before a stall, the median of simulated beginners). Coarse
/// steps look like a plateau: 2.5 kg on 40 kg take 7 weeks. `load` and `step` are more than 0 and in one unit.
[[nodiscard]] double weeksPerLoadStep(base::Load load, base::Load step);

}  // namespace chalk::plateau
