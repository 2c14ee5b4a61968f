#include "core/analysis/training_load.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace chalk::analysis {

namespace {

constexpr std::size_t kAcuteDays = 7;
constexpr std::size_t kChronicDays = 28;

double sumOf(std::span<const double> loads)
{
    return std::accumulate(loads.begin(), loads.end(), 0.0);
}

double meanLoad(std::span<const double> loads)
{
    return sumOf(loads) / static_cast<double>(loads.size());
}

}  // namespace

std::vector<double> dailyLoads(std::span<const DayLoad> sessions, base::Date from, int days)
{
    std::vector<double> loads(static_cast<std::size_t>(std::max(days, 0)), 0.0);
    for (const DayLoad& session : sessions) {
        const int day = session.date - from;
        if (day >= 0 && day < days) {
            loads[static_cast<std::size_t>(day)] += session.load;
        }
    }
    return loads;
}

tl::expected<double, NoLoadFigure> monotonyOf(std::span<const double> loads, Deviation deviation)
{
    if (loads.size() < 2) {
        return tl::unexpected(NoLoadFigure::TooFew);
    }
    const auto [least, most] = std::minmax_element(loads.begin(), loads.end());
    if (*most <= 0) {
        return tl::unexpected(NoLoadFigure::NoLoad);
    }
    if (*least == *most) {
        return tl::unexpected(NoLoadFigure::AllTheSame);
    }
    const double mean = meanLoad(loads);
    double squares = 0;
    for (const double load : loads) {
        squares += (load - mean) * (load - mean);
    }
    const std::size_t divisor = deviation == Deviation::Sample ? loads.size() - 1 : loads.size();
    return mean / std::sqrt(squares / static_cast<double>(divisor));
}

tl::expected<double, NoLoadFigure> strainOf(std::span<const double> loads, Deviation deviation)
{
    return monotonyOf(loads, deviation).map([loads](double monotony) { return sumOf(loads) * monotony; });
}

tl::expected<double, NoLoadFigure> acuteToChronic(std::span<const double> loads, Coupling coupling)
{
    if (loads.size() < kChronicDays) {
        return tl::unexpected(NoLoadFigure::TooFew);
    }
    const std::span<const double> last = loads.last(kChronicDays);
    const double acute = meanLoad(last.last(kAcuteDays));
    const double chronic = meanLoad(coupling == Coupling::Coupled ? last : last.first(kChronicDays - kAcuteDays));
    return chronic > 0 ? tl::expected<double, NoLoadFigure>(acute / chronic) : tl::unexpected(NoLoadFigure::NoLoad);
}

}  // namespace chalk::analysis
