#include "core/analysis/ewma_chart.h"

#include <cmath>

namespace chalk::analysis {

std::optional<std::vector<EwmaPoint>> ewmaChart(std::span<const double> values, const EwmaPlan& plan)
{
    if (!(plan.deviation > 0 && plan.weight > 0 && plan.weight <= 1 && plan.width > 0)) {
        return std::nullopt;
    }
    const double kept = 1 - plan.weight;
    double average = plan.target;
    double forgotten = 1;  // (1 - weight)^2i
    std::vector<EwmaPoint> points;
    for (const double value : values) {
        average = plan.weight * value + kept * average;
        forgotten *= kept * kept;
        const double share = plan.weight / (2 - plan.weight) * (plan.isLimitExact ? 1 - forgotten : 1);
        const double reach = plan.width * plan.deviation * std::sqrt(share);
        points.push_back({average, plan.target - reach, plan.target + reach});
    }
    return points;
}

}  // namespace chalk::analysis
