#pragma once

#include "core/analysis/trend_point.h"

#include <map>
#include <string>
#include <vector>

namespace chalk::test {

/// The published series of tests/data/reference/trend_series.csv by name, in the order of the file.
[[nodiscard]] std::map<std::string, std::vector<analysis::TrendPoint>> trendSeries();

/// Points at times 0, 1, 2 … with these values.
[[nodiscard]] std::vector<analysis::TrendPoint> inTurn(const std::vector<double>& values);

/// A series of so many points, values small whole numbers, so that some are tied; no two times are the same. For property tests.
[[nodiscard]] std::vector<analysis::TrendPoint> anySeries(int fewest, int most);

/// Whether two numbers agree to a share of the greater, or differ by no more than that share of 1.
[[nodiscard]] bool isNear(double a, double b, double share);

}  // namespace chalk::test
