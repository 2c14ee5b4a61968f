#include "core/plateau/trend_witness.h"

#include "core/plateau/detector_figures.h"
#include "core/plateau/stage_lever.h"
#include "core/plateau/weighted_line.h"

#include <algorithm>

namespace chalk::plateau {

double clampedWitness(double z)
{
    return std::clamp(z, -kFigures.clamp, kFigures.clamp);
}

std::optional<TrendReading> trendReadingOf(std::span<const ClockedExposure> window)
{
    if (window.size() < kFigures.trendNeeds || window.back().week - window.front().week < kFigures.trendNeedsWeeks) {
        return std::nullopt;
    }
    std::vector<WeightedPoint> points;
    double shares = 0;
    for (const ClockedExposure& one : window) {
        points.push_back({one.week, one.exposure->index, one.exposure->variance});
        shares += one.exposure->followsPlan ? 1 : strengthShareOf(one.exposure->stage);
    }
    const auto line = weightedLineThrough(points);
    if (!line) {
        return std::nullopt;
    }
    TrendReading reading;
    reading.exposures = static_cast<int>(window.size());
    reading.slope = line->slope;
    reading.error = line->error;
    reading.smallestGain = kFigures.smallestGain * shares / static_cast<double>(window.size());
    reading.z = clampedWitness((reading.smallestGain - reading.slope) / reading.error);
    return reading;
}

}  // namespace chalk::plateau
