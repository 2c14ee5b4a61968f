#include "core/plateau/lever_witness.h"

#include "core/plateau/detector_figures.h"
#include "core/plateau/trend_witness.h"

#include <algorithm>
#include <cmath>

namespace chalk::plateau {

std::optional<LeverReading> leverReadingOf(std::span<const CleanExposure> segment)
{
    std::vector<CleanExposure> valid;
    std::copy_if(segment.begin(), segment.end(), std::back_inserter(valid), [](const CleanExposure& row) { return row.isValid; });
    if (valid.size() < kFigures.leverNeeds) {
        return std::nullopt;
    }
    const auto missed = [](auto first, auto last) { return std::count_if(first, last, [](const CleanExposure& row) { return !row.isComplete; }); };
    const auto recent = valid.end() - static_cast<std::ptrdiff_t>(kFigures.recent);
    const auto before = static_cast<std::ptrdiff_t>(std::min(kFigures.usual, valid.size() - kFigures.recent));
    LeverReading reading;
    reading.misses = static_cast<int>(missed(recent, valid.end()));
    reading.usualShare = static_cast<double>(missed(recent - before, recent) + kFigures.missesBeforehand) / static_cast<double>(before + kFigures.triesBeforehand);
    const auto count = static_cast<double>(kFigures.recent);
    const double spread = std::sqrt(reading.usualShare * (1 - reading.usualShare) / count);
    reading.z = clampedWitness((reading.misses / count - reading.usualShare) / spread);
    return reading;
}

}  // namespace chalk::plateau
