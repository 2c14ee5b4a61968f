#pragma once

#include "core/analysis/trend_point.h"

#include <optional>
#include <span>

namespace chalk::analysis {

/// The slope that half of all pairs of points are above and half below: a few odd points do not move it.
struct TheilSen {
    double slope = 0;               ///< values per time
    double intercept = 0;           ///< median value - slope × median time (Conover W.J., Practical Nonparametric Statistics)
    std::optional<double> lowest;   ///< of the interval; nothing where the points are too few for it to have that end
    std::optional<double> highest;
    int slopes = 0;                 ///< pairs of different times

    bool operator==(const TheilSen&) const = default;
};

/// The Theil-Sen slope with its two-sided interval of `confidence`, 0 < confidence < 1. Any order of points. Nothing with fewer than two
/// points, where all times are the same, where a number is not finite, or where `confidence` is not in between.
/// The interval is Gilbert's: with C = z × √variance of the Mann-Kendall score, its ends have the ranks (N - C) / 2 and (N + C) / 2 + 1 among the N
/// sorted slopes, interpolated in between. Where a rank lies outside of 1 to N there is no such end. Without any spread in the values both ends are
/// the slope itself. Sources: Sen P.K. 1968, J Am Stat Assoc 63:1379-1389; Gilbert R.O., Statistical Methods for Environmental
/// Pollution Monitoring, 1987, 217-219. Time and memory grow with the square of the points.
[[nodiscard]] std::optional<TheilSen> theilSen(std::span<const TrendPoint> points, double confidence = 0.95);

}  // namespace chalk::analysis
