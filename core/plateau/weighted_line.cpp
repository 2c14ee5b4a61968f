#include "core/plateau/weighted_line.h"

#include <algorithm>
#include <cmath>

namespace chalk::plateau {

std::optional<WeightedLine> weightedLineThrough(std::span<const WeightedPoint> points)
{
    constexpr std::size_t kFitted = 2;  // slope and height
    double weights = 0;
    double sumX = 0;
    double sumY = 0;
    for (const WeightedPoint& point : points) {
        const double weight = 1 / point.variance;
        weights += weight;
        sumX += weight * point.x;
        sumY += weight * point.y;
    }
    const double meanX = sumX / weights;
    const double meanY = sumY / weights;
    double squaresX = 0;
    double products = 0;
    for (const WeightedPoint& point : points) {
        const double weighted = (point.x - meanX) / point.variance;
        squaresX += weighted * (point.x - meanX);
        products += weighted * (point.y - meanY);
    }
    if (points.size() <= kFitted || !(squaresX > 0)) {
        return std::nullopt;
    }
    const double slope = products / squaresX;
    double chiSquare = 0;
    for (const WeightedPoint& point : points) {
        const double rest = point.y - meanY - slope * (point.x - meanX);
        chiSquare += rest * rest / point.variance;
    }
    const double scatter = std::max(1.0, chiSquare / static_cast<double>(points.size() - kFitted));
    return WeightedLine{slope, std::sqrt(scatter / squaresX)};
}

}  // namespace chalk::plateau
