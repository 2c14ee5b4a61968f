#include "core/analysis/cusum_chart.h"

#include <algorithm>

namespace chalk::analysis {

std::optional<std::vector<CusumPoint>> cusumChart(std::span<const double> values, const CusumPlan& plan)
{
    if (!(plan.allowance >= 0 && plan.decision > 0 && plan.headStart >= 0 && plan.headStart <= plan.decision)) {
        return std::nullopt;
    }
    double high = plan.headStart;
    double low = plan.headStart;
    std::vector<CusumPoint> points;
    for (const double value : values) {
        high = std::max(0.0, high + (value - plan.target) - plan.allowance);
        low = std::max(0.0, low - (value - plan.target) - plan.allowance);
        points.push_back({high, low, high > plan.decision, low > plan.decision});
    }
    return points;
}

}  // namespace chalk::analysis
