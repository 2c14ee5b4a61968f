#include "core/analysis/best_single.h"

#include "core/analysis/lift_work.h"

namespace chalk::analysis {

namespace {

std::optional<BestSingle> singleOf(const progression::SetRecord& set, const progression::LiftSetup& setup, const progression::Kit& kit)
{
    const auto load = massMoved(set.load, setup, kit, BodyShare::Counted);
    if (set.isWarmup || set.amount <= 0 || set.amount > kMostReps || set.steadiness == progression::Steadiness::Lost || !load) {
        return std::nullopt;
    }
    const bool isReserveKnown = set.rir != progression::SetRecord::kNotRecorded;
    const base::Reps toFailure(set.amount + (isReserveKnown ? set.rir : 0));
    const auto band = maximumBand(*load, toFailure);
    return band ? std::optional(BestSingle{*band, *load, toFailure, isReserveKnown}) : std::nullopt;
}

}  // namespace

std::optional<BestSingle> bestSingle(const progression::Exposure& exposure, const progression::LiftSetup& setup, const progression::Kit& kit)
{
    if (kit.measure != lifts::Measure::Reps) {
        return std::nullopt;
    }
    std::optional<BestSingle> best;
    for (const progression::SetRecord& set : exposure.sets) {
        const auto single = singleOf(set, setup, kit);
        if (single && (!best || single->band.median > best->band.median)) {
            best = single;
        }
    }
    return best;
}

}  // namespace chalk::analysis
