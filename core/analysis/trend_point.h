#pragma once

namespace chalk::analysis {

/// One value of a series, in whatever units the series has: a time (days, weeks) and what was found then.
struct TrendPoint {
    double time = 0;
    double value = 0;

    bool operator==(const TrendPoint&) const = default;
};

}  // namespace chalk::analysis
