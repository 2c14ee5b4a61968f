#include "core/analysis/least_squares.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace chalk::analysis {

namespace {

bool isFinite(const TrendPoint& point)
{
    return std::isfinite(point.time) && std::isfinite(point.value);
}

bool isSound(std::span<const TrendPoint> points, std::span<const double> weights)
{
    return points.size() == weights.size() && std::all_of(points.begin(), points.end(), isFinite) &&
           std::all_of(weights.begin(), weights.end(), [](double weight) { return std::isfinite(weight) && weight >= 0; });
}

/// The weighted mean, taken twice: the second time of what is left, which takes out what the first one rounded.
double meanOf(std::span<const TrendPoint> points, std::span<const double> weights, double TrendPoint::* number)
{
    double mean = 0;
    for (int round = 0; round < 2; ++round) {
        double sum = 0;
        double weight = 0;
        for (std::size_t i = 0; i < points.size(); ++i) {
            sum += weights[i] * (points[i].*number - mean);
            weight += weights[i];
        }
        mean += sum / weight;
    }
    return mean;
}

}  // namespace

std::optional<LineFit> leastSquares(std::span<const TrendPoint> points)
{
    return weightedLeastSquares(points, std::vector<double>(points.size(), 1.0));
}

std::optional<LineFit> weightedLeastSquares(std::span<const TrendPoint> points, std::span<const double> weights)
{
    const auto counted = std::count_if(weights.begin(), weights.end(), [](double weight) { return weight > 0; });
    if (!isSound(points, weights) || counted < 2) {
        return std::nullopt;
    }
    const double meanTime = meanOf(points, weights, &TrendPoint::time);
    const double meanValue = meanOf(points, weights, &TrendPoint::value);
    double spread = 0;
    double shared = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double time = points[i].time - meanTime;
        spread += weights[i] * time * time;
        shared += weights[i] * time * (points[i].value - meanValue);
    }
    if (!(spread > 0)) {
        return std::nullopt;
    }
    LineFit fit{shared / spread, 0, std::nullopt, static_cast<int>(counted)};
    fit.intercept = meanValue - fit.slope * meanTime;
    if (fit.freedom() > 0) {
        double left = 0;
        for (std::size_t i = 0; i < points.size(); ++i) {
            const double residual = points[i].value - meanValue - fit.slope * (points[i].time - meanTime);
            left += weights[i] * residual * residual;
        }
        fit.slopeError = std::sqrt(left / fit.freedom() / spread);
    }
    return fit;
}

}  // namespace chalk::analysis
