#pragma once

#include "core/base/load.h"
#include "core/base/quantity.h"

#include <optional>

namespace chalk::lifts {

/// The share of a single that so many repetitions to failure are done with, in thousandths: 930 at 3. Nothing outside of 1 to 10, where
/// prints of the chart differ. Source: Haff and Triplett (eds.), Essentials of Strength Training and Conditioning, 4th ed. 2016,
/// table 17.7, per cent of the 1RM and repetitions allowed.
[[nodiscard]] std::optional<base::Milli> chartShare(base::Reps reps);

/// `share` of a load to the nearest multiple of `step` (above 0), in the load's unit; a half rounds up. `load` 0 or more, `share` above 0.
[[nodiscard]] base::Load shareOfLoad(base::Load load, base::Milli share, base::Load step);

/// The load that `load` is `share` of, to the nearest multiple of `step` (above 0), in the load's unit; a half rounds up. `load` 0 or more,
/// `share` above 0.
[[nodiscard]] base::Load wholeOfShare(base::Load load, base::Milli share, base::Load step);

}  // namespace chalk::lifts
