#pragma once

#include "core/plateau/logged_exposure.h"

#include <optional>
#include <span>

namespace chalk::plateau {

/// How near to failure the first set went.
struct Effort {
    double reserve = 0;  ///< reps in reserve, as recorded or as likely
    double spread = 0;   ///< its standard deviation, reps
};

/// Reps in reserve as recorded, where they can be (0 to kFigures.reserveMost); nothing else.
[[nodiscard]] std::optional<int> soundReserve(const LoggedExposure& exposure);

/// The effort of the first set. Where none is recorded: what a miss says, else the median of the last of `recorded`, the reserves of
/// earlier exposures that counted, oldest first.
[[nodiscard]] Effort effortOf(const LoggedExposure& exposure, std::span<const double> recorded);

}  // namespace chalk::plateau
