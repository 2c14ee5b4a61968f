#include "core/analysis/lift_work.h"

#include "core/progression/exposure_facts.h"

#include <algorithm>

namespace chalk::analysis {

namespace {

using base::Mass;

constexpr std::int64_t kMostVolume = 10'000'000'000'000'000;  // 1,000,000 kg × repetitions
constexpr int kMostPieces = 100;
constexpr std::int64_t kWholeShare = 1000;

/// Half away from zero.
std::int64_t shareOf(std::int64_t raw, base::Milli share)
{
    const std::int64_t product = raw * share.value();
    return (product + (product < 0 ? -kWholeShare : kWholeShare) / 2) / kWholeShare;
}

Mass volumeOf(Mass mass, std::int64_t reps)
{
    return mass.raw() > kMostVolume / reps ? Mass::fromRaw(kMostVolume) : reps * mass;
}

}  // namespace

std::optional<Mass> Work::meanLoad() const
{
    return reps == 0 ? std::nullopt : std::optional(Mass::fromRaw((volume.raw() + reps / 2) / reps));
}

Work& Work::operator+=(const Work& other)
{
    volume += other.volume;
    reps += other.reps;
    sets += other.sets;
    unweighed += other.unweighed;
    return *this;
}

std::optional<Mass> massMoved(base::Load load, const progression::LiftSetup& setup, const progression::Kit& kit, BodyShare body)
{
    const std::int64_t piece = std::clamp(Mass::of(load, setup.unit).raw(), -kMostVolume, kMostVolume);
    Mass moved = std::int64_t{std::clamp(kit.pieces, 1, kMostPieces)} * Mass::fromRaw(piece);
    if (body == BodyShare::Counted && kit.bodyShare > base::Milli()) {
        if (!setup.bodyMass) {
            return std::nullopt;
        }
        moved += Mass::fromRaw(shareOf(Mass::of(*setup.bodyMass, setup.unit).raw(), kit.bodyShare));
    }
    return std::max(moved, Mass());
}

Work workOf(const progression::Exposure& exposure, const progression::LiftSetup& setup, const progression::Kit& kit, BodyShare body)
{
    Work work;
    for (const progression::SetRecord& set : exposure.sets) {
        const int reps = progression::repsOf(set.amount, kit.measure, setup.policy);
        if (set.isWarmup || reps <= 0) {
            continue;
        }
        const auto moved = massMoved(set.load, setup, kit, body);
        if (!moved) {
            ++work.unweighed;
        } else if (*moved > Mass()) {
            work += Work{volumeOf(*moved, reps), reps, 1, 0};
        }
    }
    return work;
}

std::optional<double> densityOf(Mass volume, int minutes)
{
    return minutes > 0 ? std::optional(volume.kilograms() / minutes) : std::nullopt;
}

std::optional<double> relativeLoad(Mass load, Mass maximum)
{
    return maximum > Mass() ? std::optional(static_cast<double>(load.raw()) / static_cast<double>(maximum.raw())) : std::nullopt;
}

}  // namespace chalk::analysis
