#include "core/analysis/estimated_maximum.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace chalk::analysis {

namespace {

using base::Mass;
using base::Reps;

Mass times(Mass mass, double factor)
{
    return Mass::fromRaw(std::llround(static_cast<double>(mass.raw()) * factor));
}

bool isMassInRange(Mass mass)
{
    return mass > Mass() && mass <= kMostMass;
}

std::optional<NoEstimate> refusalOf(Mass mass, Reps reps, Formula formula)
{
    if (!isMassInRange(mass)) {
        return NoEstimate::LoadOutOfRange;
    }
    if (reps.value() < 1 || reps.value() > kMostReps) {
        return NoEstimate::RepsOutOfRange;
    }
    return reps.value() >= poleOf(formula).value_or(kMostReps + 1) ? std::optional(NoEstimate::PastPole) : std::nullopt;
}

double shareOfSingle(Reps reps, Formula formula)
{
    return reps.value() == 1 ? 1.0 : publishedShare(reps.value(), formula);
}

}  // namespace

tl::expected<MassEstimate, NoEstimate> estimatedMaximum(Mass load, Reps reps, Formula formula)
{
    if (const auto refusal = refusalOf(load, reps, formula)) {
        return tl::unexpected(*refusal);
    }
    return MassEstimate{times(load, 1 / shareOfSingle(reps, formula)), reps.value() <= highestReps(formula)};
}

tl::expected<MassEstimate, NoEstimate> loadFor(Mass maximum, Reps reps, Formula formula)
{
    if (const auto refusal = refusalOf(maximum, reps, formula)) {
        return tl::unexpected(*refusal);
    }
    return MassEstimate{times(maximum, shareOfSingle(reps, formula)), reps.value() <= highestReps(formula)};
}

tl::expected<RepsEstimate, NoEstimate> repsAt(Mass load, Mass maximum, Formula formula)
{
    if (!isMassInRange(load) || !isMassInRange(maximum)) {
        return tl::unexpected(NoEstimate::LoadOutOfRange);
    }
    if (load > maximum) {
        return tl::unexpected(NoEstimate::AboveMaximum);
    }
    if (load == maximum) {
        return RepsEstimate{};
    }
    const auto reps = publishedReps(static_cast<double>(load.raw()) / static_cast<double>(maximum.raw()), formula);
    if (!reps) {
        return tl::unexpected(NoEstimate::AnyReps);
    }
    if (*reps > kMostReps) {
        return tl::unexpected(NoEstimate::RepsOutOfRange);
    }
    return RepsEstimate{std::max(*reps, 1.0), *reps <= highestReps(formula)};
}

tl::expected<MaximumBand, NoEstimate> maximumBand(Mass load, Reps reps)
{
    std::vector<Mass> maxima;
    for (const Formula formula : kFormulas) {
        const auto estimate = estimatedMaximum(load, reps, formula);
        if (!estimate && estimate.error() != NoEstimate::PastPole) {
            return tl::unexpected(estimate.error());
        }
        if (estimate && estimate->isInRange) {
            maxima.push_back(estimate->mass);
        }
    }
    if (maxima.empty()) {
        return tl::unexpected(NoEstimate::BeyondEveryRange);
    }
    std::sort(maxima.begin(), maxima.end());
    const std::size_t half = maxima.size() / 2;
    const std::int64_t twice = maxima[half].raw() + maxima[(maxima.size() - 1) / 2].raw();
    return MaximumBand{maxima.front(), Mass::fromRaw(twice / 2), maxima.back(), static_cast<int>(maxima.size())};
}

}  // namespace chalk::analysis
