#include "core/checkin/load_trend.h"

#include <cmath>
#include <numeric>

namespace chalk::checkin {

LoadTrend loadTrendOf(std::span<const double> weeks, bool isNew)
{
    const std::size_t half = weeks.size() / 2;
    const auto sum = [](std::span<const double> part) { return std::accumulate(part.begin(), part.end(), 0.0); };
    const double earlier = sum(weeks.first(half));
    const double later = sum(weeks.subspan(half));
    if (earlier + later <= 0) {
        return {};
    }
    if (isNew) {
        return {LoadTrend::Kind::New};
    }
    if (earlier <= 0) {
        return {LoadTrend::Kind::Back};
    }
    const int percent = static_cast<int>(std::lround((later / earlier - 1) * 100));
    return {LoadTrend::Kind::Change, percent, percent <= -kFallPercent};
}

}  // namespace chalk::checkin
