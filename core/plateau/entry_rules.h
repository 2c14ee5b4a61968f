#pragma once

#include "core/plateau/logged_exposure.h"

namespace chalk::plateau {

/// The logged load is outside of kFigures.loadShareLowest to loadShareHighest of its target: a slip of the pen, or of the unit.
[[nodiscard]] bool isLoadDoubtful(const LoggedExposure& exposure);

/// The reps of the first set cannot be, or are far beyond the target.
[[nodiscard]] bool areRepsDoubtful(const LoggedExposure& exposure);

/// Reps in reserve are recorded, and cannot be.
[[nodiscard]] bool isReserveDoubtful(const LoggedExposure& exposure);

}  // namespace chalk::plateau
