#pragma once

#include "core/plateau/training_window.h"

#include <optional>
#include <span>

namespace chalk::plateau {

/// Witness A: does the index still rise as it should?
struct TrendReading {
    int exposures = 0;        ///< in the window
    double slope = 0;         ///< natural logarithm a training week
    double error = 0;         ///< standard error of the slope
    double smallestGain = 0;  ///< the least slope worth having in the stages of the window
    double z = 0;             ///< more is less progress; -kFigures.clamp to clamp
};

/// Nothing for fewer than kFigures.trendNeeds exposures or less than trendNeedsWeeks between the first and the last.
[[nodiscard]] std::optional<TrendReading> trendReadingOf(std::span<const ClockedExposure> window);

/// What a witness says, within bounds.
[[nodiscard]] double clampedWitness(double z);

}  // namespace chalk::plateau
