#pragma once

#include "core/plateau/cleaning.h"

#include <span>
#include <vector>

namespace chalk::plateau {

/// An exposure and when it was by the training clock: weeks in which a long gap counts as kFigures.gapMostDays.
struct ClockedExposure {
    const CleanExposure* exposure = nullptr;
    double week = 0;
};

/// The used exposures of a segment by the training clock, which starts at the first of them. `segment` outlives what is returned.
[[nodiscard]] std::vector<ClockedExposure> trainingClockOf(std::span<const CleanExposure> segment);

/// Those of the last kFigures.windowWeeks before `day`, or as many more as make kFigures.windowLeast, but none of windowMostWeeks ago or
/// longer. `day` is that of the last one or later.
[[nodiscard]] std::vector<ClockedExposure> trendWindowOf(std::span<const ClockedExposure> used, base::Date day);

/// Those of fewer than `weeks` before `day`.
[[nodiscard]] std::vector<ClockedExposure> lastWeeksOf(std::span<const ClockedExposure> used, base::Date day, double weeks);

}  // namespace chalk::plateau
