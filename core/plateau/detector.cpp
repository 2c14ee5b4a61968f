#include "core/plateau/detector.h"

#include "core/plateau/detector_figures.h"
#include "core/plateau/gates.h"

#include <algorithm>

namespace chalk::plateau {

namespace {

PlateauStrength strengthOf(double z)
{
    if (z >= kFigures.strong) {
        return PlateauStrength::Strong;
    }
    return z >= kFigures.likely ? PlateauStrength::Likely : PlateauStrength::Possible;
}

/// The verdict where all is known.
void decide(Judgement& judgement)
{
    const double z = *judgement.z;
    judgement.confidence = confidenceOf(z, judgement.best->isNew());
    judgement.verdict = PlateauVerdict::Progressing;
    if (judgement.best->isNew()) {
        judgement.reason = PlateauReason::NewBest;
    } else if (z >= kFigures.alarm) {
        const bool isFalling = -judgement.trend->slope / judgement.trend->error >= kFigures.fall;
        judgement.verdict = isFalling ? PlateauVerdict::Regressing : PlateauVerdict::Stalled;
        judgement.strength = strengthOf(z);
    } else {
        judgement.isWatched = z >= kFigures.watch;
    }
}

}  // namespace

std::span<const CleanExposure> segmentOn(std::span<const CleanExposure> log, base::Date day)
{
    const auto end = std::find_if(log.begin(), log.end(), [day](const CleanExposure& row) { return row.date > day; });
    const auto first = std::find_if(log.begin(), end, [&](const CleanExposure& row) { return row.segment == (end - 1)->segment; });
    return {first, end};
}

Judgement judge(std::span<const CleanExposure> log, const CheckDay& check)
{
    Judgement judgement;
    const auto segment = segmentOn(log, check.date);
    if (segment.empty()) {
        judgement.reason = PlateauReason::NoExposures;
        return judgement;
    }
    const auto used = trainingClockOf(segment);
    judgement.trend = trendReadingOf(trendWindowOf(used, check.date));
    judgement.lever = leverReadingOf(segment);
    if (!judgement.trend || !judgement.lever) {
        judgement.reason = shortageOf(segment);
        return judgement;
    }
    judgement.z = judgement.trend->z + kFigures.leverWeight * judgement.lever->z;
    judgement.reason = gateOf(segment, check);
    if (judgement.reason == PlateauReason::None) {
        judgement.best = bestReadingOf(segment, check.date);
        decide(judgement);
    }
    return judgement;
}

}  // namespace chalk::plateau
