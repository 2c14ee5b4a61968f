#pragma once

#include <optional>
#include <span>
#include <vector>

namespace chalk::analysis {

/// What a chart of exponentially weighted moving averages is drawn with.
struct EwmaPlan {
    double target = 0;             ///< where the average starts and should stay
    double deviation = 1;          ///< standard deviation of single values, above 0
    double weight = 0.3;           ///< of the newest value, above 0, at most 1
    double width = 3;              ///< of the limits, in deviations of the average, above 0
    bool isLimitExact = true;      ///< limits widen with the values there are; else they are those of a long series from the first value on
};

/// The average after one value, and the limits that it should stay within.
struct EwmaPoint {
    double average = 0;
    double lower = 0;
    double upper = 0;

    [[nodiscard]] bool isOut() const { return average < lower || average > upper; }
    bool operator==(const EwmaPoint&) const = default;
};

/// A point for each value, in their order: average = weight × value + (1 - weight) × former average, limits = target ± width × deviation ×
/// √(weight / (2 - weight) × (1 - (1 - weight)^2i)), the last factor left out where limits are not exact. Nothing where the plan leaves its ranges.
/// Sources: Roberts S.W. 1959, Technometrics 1:239-250; NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4 (constant limits).
[[nodiscard]] std::optional<std::vector<EwmaPoint>> ewmaChart(std::span<const double> values, const EwmaPlan& plan);

}  // namespace chalk::analysis
