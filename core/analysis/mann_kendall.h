#pragma once

#include "core/analysis/trend_point.h"

#include <cstdint>
#include <optional>
#include <span>

namespace chalk::analysis {

/// The most points that the exact chance is worked out for.
inline constexpr std::size_t kMostExactPoints = 20;

/// Whether a series rises or falls in the long run, whatever the shape.
struct MannKendall {
    std::int64_t score = 0;            ///< S: pairs that rise in time less pairs that fall
    double variance = 0;               ///< of S where there is no trend, corrected for ties
    double tauA = 0;                   ///< S over all pairs, -1 to 1
    double tauB = 0;                   ///< S over the pairs that are tied in neither, -1 to 1
    double z = 0;                      ///< (S ∓ 1) / √variance: with the correction for continuity, 0 for S = 0
    double chance = 1;                 ///< two-sided, from z; rough below ten points
    std::optional<double> exactChance; ///< two-sided, exact; nothing above kMostExactPoints and where two times are the same

    bool operator==(const MannKendall&) const = default;
};

/// The Mann-Kendall test. Any order of points. Nothing with fewer than three points, where all times or all values are the same, or where a number
/// is not finite. Pairs of one time score 0. Sources: Mann H.B. 1945, Econometrica 13:245-259; Kendall M.G., Rank Correlation Methods, 4th ed.
/// 1970 (variance with ties in both); Gilbert R.O., Statistical Methods for Environmental Pollution Monitoring, 1987, 208-217 (continuity).
[[nodiscard]] std::optional<MannKendall> mannKendall(std::span<const TrendPoint> points);

/// The chance of a score of at least `score` among values of which some may be tied, each order as likely as every other: Kendall's exact
/// distribution. Nothing above kMostExactPoints values. Times are all different.
[[nodiscard]] std::optional<double> exactUpperTail(std::span<const double> values, std::int64_t score);

}  // namespace chalk::analysis
