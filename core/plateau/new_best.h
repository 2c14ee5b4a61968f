#pragma once

#include "core/plateau/cleaning.h"

#include <cstddef>
#include <optional>
#include <span>

namespace chalk::plateau {

/// How long ago a segment was at its best.
struct BestReading {
    std::optional<int> daysSinceLever;    ///< since a new best in the lever of its stage; nothing where there never was one
    std::optional<std::size_t> leverRow;  ///< that exposure's place in the log
    std::optional<int> daysSinceIndex;    ///< since the smoothed index was highest; nothing where no exposure is used

    /// A best so recent that nothing else counts.
    [[nodiscard]] bool isNew() const;
};

[[nodiscard]] BestReading bestReadingOf(std::span<const CleanExposure> segment, base::Date day);

}  // namespace chalk::plateau
