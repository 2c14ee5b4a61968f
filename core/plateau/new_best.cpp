#include "core/plateau/new_best.h"

#include "core/plateau/detector_figures.h"

namespace chalk::plateau {

bool BestReading::isNew() const
{
    return (daysSinceLever && *daysSinceLever <= kFigures.leverBestDays) || (daysSinceIndex && *daysSinceIndex <= kFigures.indexBestDays);
}

BestReading bestReadingOf(std::span<const CleanExposure> segment, base::Date day)
{
    BestReading reading;
    double smoothed = 0;
    double highest = 0;
    for (const CleanExposure& row : segment) {
        if (row.isLeverBest) {
            reading.daysSinceLever = day - row.date;
            reading.leverRow = row.row;
        }
        if (!row.isUsed) {
            continue;
        }
        smoothed = reading.daysSinceIndex ? smoothed + kFigures.smoothing * (row.index - smoothed) : row.index;
        if (!reading.daysSinceIndex || smoothed > highest) {
            highest = smoothed;
            reading.daysSinceIndex = day - row.date;
        }
    }
    return reading;
}

}  // namespace chalk::plateau
