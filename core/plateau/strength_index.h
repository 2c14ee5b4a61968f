#pragma once

#include "core/plateau/effort.h"

namespace chalk::plateau {

/// What one exposure says about strength, whatever the load and the effort.
struct StrengthIndex {
    double value = 0;     ///< natural logarithm of the estimated 1RM, in the lift's own unit; minus infinity where nothing was loaded
    double variance = 0;  ///< of `value`
};

/// Of the first set: ln(load (1 + m/30)), where m is its reps and those in reserve.
[[nodiscard]] StrengthIndex strengthIndexOf(const LoggedExposure& exposure, const Effort& effort);

/// A load as a number of its own unit.
[[nodiscard]] double numberOf(base::Load load);

}  // namespace chalk::plateau
