#pragma once

#include "core/plateau/cleaning.h"

#include <optional>
#include <span>

namespace chalk::plateau {

/// Witness B: does the client miss more targets than he used to?
struct LeverReading {
    int misses = 0;         ///< of the last kFigures.recent
    double usualShare = 0;  ///< of targets missed before, 0 to 1; drawn towards a quarter where there are few
    double z = 0;           ///< more is less progress; -kFigures.clamp to clamp
};

/// Of the valid exposures of a segment; nothing for fewer than kFigures.leverNeeds.
[[nodiscard]] std::optional<LeverReading> leverReadingOf(std::span<const CleanExposure> segment);

}  // namespace chalk::plateau
