#include "core/plateau/effort.h"

#include "core/plateau/detector_figures.h"
#include "core/plateau/median.h"

#include <algorithm>

namespace chalk::plateau {

namespace {

Effort recordedEffort(int reserve)
{
    const double spread = reserve >= kFigures.cappedReserve ? kFigures.cappedSpread : kFigures.reserveSpread + kFigures.reserveSpreadPerRep * reserve;
    return {static_cast<double>(reserve), spread};
}

}  // namespace

std::optional<int> soundReserve(const LoggedExposure& exposure)
{
    const bool isSound = exposure.reserve && *exposure.reserve >= 0 && *exposure.reserve <= kFigures.reserveMost;
    return isSound ? exposure.reserve : std::nullopt;
}

Effort effortOf(const LoggedExposure& exposure, std::span<const double> recorded)
{
    if (const auto reserve = soundReserve(exposure)) {
        return recordedEffort(*reserve);
    }
    const auto isMissed = [&exposure](base::Reps reps) { return reps < exposure.targetReps; };
    if (isMissed(exposure.reps.front())) {
        return {kFigures.reserveAfterMiss, kFigures.missSpread};
    }
    if (std::any_of(exposure.reps.begin(), exposure.reps.end(), isMissed)) {
        return {kFigures.reserveBeforeMiss, kFigures.missSpread};
    }
    const auto last = recorded.last(std::min(recorded.size(), kFigures.reserveMemory));
    return {last.empty() ? kFigures.reserveUnknown : medianOf(last), kFigures.unknownSpread};
}

}  // namespace chalk::plateau
