#include "core/analysis/theil_sen.h"

#include "core/analysis/mann_kendall.h"
#include "core/analysis/normal_distribution.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace chalk::analysis {

namespace {

double medianOf(std::span<const double> sorted)
{
    const std::size_t half = sorted.size() / 2;
    return sorted.size() % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

double medianOf(std::span<const TrendPoint> points, double TrendPoint::* number)
{
    std::vector<double> numbers;
    for (const TrendPoint& point : points) {
        numbers.push_back(point.*number);
    }
    std::sort(numbers.begin(), numbers.end());
    return medianOf(numbers);
}

std::vector<double> sortedSlopes(std::span<const TrendPoint> points)
{
    std::vector<double> slopes;
    for (std::size_t i = 0; i < points.size(); ++i) {
        for (std::size_t j = i + 1; j < points.size(); ++j) {
            if (points[i].time != points[j].time) {
                slopes.push_back((points[j].value - points[i].value) / (points[j].time - points[i].time));
            }
        }
    }
    std::sort(slopes.begin(), slopes.end());
    return slopes;
}

/// The number of a rank, counted from 1, interpolated between its neighbours; nothing outside of them.
std::optional<double> atRank(std::span<const double> sorted, double rank)
{
    if (!(rank >= 1 && rank <= static_cast<double>(sorted.size()))) {
        return std::nullopt;
    }
    const auto below = static_cast<std::size_t>(rank) - 1;
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (rank - std::floor(rank)) * (sorted[above] - sorted[below]);
}

}  // namespace

std::optional<TheilSen> theilSen(std::span<const TrendPoint> points, double confidence)
{
    const bool isFinite = std::all_of(points.begin(), points.end(), [](const TrendPoint& point) {
        return std::isfinite(point.time) && std::isfinite(point.value);
    });
    if (!isFinite || !(confidence > 0 && confidence < 1)) {
        return std::nullopt;
    }
    const std::vector<double> slopes = sortedSlopes(points);
    if (slopes.empty()) {
        return std::nullopt;
    }
    TheilSen line;
    line.slopes = static_cast<int>(slopes.size());
    line.slope = medianOf(slopes);
    line.intercept = medianOf(points, &TrendPoint::value) - line.slope * medianOf(points, &TrendPoint::time);
    if (slopes.front() == 0 && slopes.back() == 0) {
        line.lowest = line.highest = 0;
    } else if (const auto test = mannKendall(points)) {
        const double reach = normalUpperQuantile((1 - confidence) / 2) * std::sqrt(test->variance);
        line.lowest = atRank(slopes, (line.slopes - reach) / 2);
        line.highest = atRank(slopes, (line.slopes + reach) / 2 + 1);
    }
    return line;
}

}  // namespace chalk::analysis
