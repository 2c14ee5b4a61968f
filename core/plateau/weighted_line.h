#pragma once

#include <optional>
#include <span>

namespace chalk::plateau {

/// A point with the variance of its y, which is more than 0.
struct WeightedPoint {
    double x = 0;
    double y = 0;
    double variance = 1;
};

/// The slope of a line through points.
struct WeightedLine {
    double slope = 0;  ///< y per x
    double error = 0;  ///< its standard error
};

/// Weighted least squares, each point by 1 / variance. The error takes the variances for the least there is: it grows by the root of
/// chi²/(n - 2) where the points scatter more than they say. Nothing for fewer than three points, or where all have one x.
[[nodiscard]] std::optional<WeightedLine> weightedLineThrough(std::span<const WeightedPoint> points);

}  // namespace chalk::plateau
