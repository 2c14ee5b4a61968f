#pragma once

#include <optional>
#include <span>
#include <vector>

namespace chalk::analysis {

/// What a tabular cumulative sum is kept with, all in the units of the values.
struct CusumPlan {
    double target = 0;
    double allowance = 0.5;  ///< K: what a value may be off by for nothing, half of the shift to be found; 0 or more
    double decision = 5;     ///< H: a sum above it is a signal; above 0
    double headStart = 0;    ///< where both sums start, 0 to H: half of H finds a shift that was there from the start sooner
};

/// The sums after one value.
struct CusumPoint {
    double high = 0;  ///< how far the values ran above the target, 0 or more
    double low = 0;   ///< how far they ran below, 0 or more
    bool isHigh = false;  ///< `high` is above the decision
    bool isLow = false;

    bool operator==(const CusumPoint&) const = default;
};

/// A point for each value, in their order: high = max(0, high + value - target - K), low = max(0, low + target - K - value). The sums go on after
/// a signal. Nothing where the plan leaves its ranges. Sources: Page E.S. 1954, Biometrika 41:100-115; Lucas J.M. and Crosier R.B. 1982,
/// Technometrics 24:199-205 (head start); NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3.
[[nodiscard]] std::optional<std::vector<CusumPoint>> cusumChart(std::span<const double> values, const CusumPlan& plan);

}  // namespace chalk::analysis
