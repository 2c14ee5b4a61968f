#include "core/plateau/training_window.h"

#include "core/plateau/detector_figures.h"

#include <algorithm>

namespace chalk::plateau {

namespace {

double trainingWeeks(base::Date from, base::Date to)
{
    constexpr double kDaysOfAWeek = 7;
    return std::min(to - from, kFigures.gapMostDays) / kDaysOfAWeek;
}

/// The clock on a day after the last exposure.
double clockOn(base::Date day, const ClockedExposure& last)
{
    return last.week + trainingWeeks(last.exposure->date, day);
}

}  // namespace

std::vector<ClockedExposure> trainingClockOf(std::span<const CleanExposure> segment)
{
    std::vector<ClockedExposure> used;
    for (const CleanExposure& exposure : segment) {
        if (exposure.isUsed) {
            used.push_back({&exposure, used.empty() ? 0 : clockOn(exposure.date, used.back())});
        }
    }
    return used;
}

std::vector<ClockedExposure> trendWindowOf(std::span<const ClockedExposure> used, base::Date day)
{
    if (used.empty()) {
        return {};
    }
    const double now = clockOn(day, used.back());
    std::vector<ClockedExposure> window;
    for (std::size_t i = 0; i < used.size(); ++i) {
        const double ago = now - used[i].week;
        const bool isNear = ago < kFigures.windowWeeks || i + kFigures.windowLeast >= used.size();
        if (isNear && ago < kFigures.windowMostWeeks) {
            window.push_back(used[i]);
        }
    }
    return window;
}

std::vector<ClockedExposure> lastWeeksOf(std::span<const ClockedExposure> used, base::Date day, double weeks)
{
    std::vector<ClockedExposure> last;
    std::copy_if(used.begin(), used.end(), std::back_inserter(last),
                 [&](const ClockedExposure& one) { return clockOn(day, used.back()) - one.week < weeks; });
    return last;
}

}  // namespace chalk::plateau
