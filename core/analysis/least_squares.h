#pragma once

#include "core/analysis/trend_point.h"

#include <optional>
#include <span>

namespace chalk::analysis {

/// A straight line through points: value = intercept + slope × time.
struct LineFit {
    double slope = 0;                  ///< values per time
    double intercept = 0;              ///< the value at time 0
    std::optional<double> slopeError;  ///< the slope's standard error; nothing with two points, which leave nothing to judge it by
    int points = 0;                    ///< those that counted

    /// Degrees of freedom of `slopeError`.
    [[nodiscard]] int freedom() const { return points - 2; }
    bool operator==(const LineFit&) const = default;
};

/// Ordinary least squares; the standard error is √(Σ residual² / (n - 2) / Σ (time - mean)²). Any order of points. Nothing with fewer than two
/// points, where all times are the same, or where a number is not finite. Source: Draper and Smith, Applied Regression Analysis, ch. 1.
[[nodiscard]] std::optional<LineFit> leastSquares(std::span<const TrendPoint> points);

/// Least squares with a weight for each point, in proportion to how sure its value is: only their ratios count. A weight of 0 leaves a
/// point out. The standard error is √(Σ weight × residual² / (n - 2) / Σ weight × (time - weighted mean)²). Nothing as above, and where there
/// are not as many weights as points or one is below 0 or not finite.
[[nodiscard]] std::optional<LineFit> weightedLeastSquares(std::span<const TrendPoint> points, std::span<const double> weights);

}  // namespace chalk::analysis
