#include "core/direction/direction_fit.h"

#include <algorithm>

namespace chalk::direction {

namespace {

FitNote weekNote(Direction direction, int sessionsAWeek)
{
    const Demands demands = demandsOf(direction);
    if (sessionsAWeek >= demands.goodSessions) {
        return FitNote::FitsTheWeek;
    }
    return sessionsAWeek >= demands.leastSessions ? FitNote::FewerThanWanted : FitNote::TooFewSessions;
}

bool isMostlyThroughFirstCycle(const FitFacts& facts)
{
    return facts.loadedLifts > 0 && 2 * facts.liftsPastFirstCycle >= facts.loadedLifts;
}

DirectionFit fitOf(Direction direction, const FitFacts& facts)
{
    DirectionFit fit{direction, {weekNote(direction, facts.sessionsAWeek)}, false};
    if (facts.hasLiftOnHold) {
        fit.notes.push_back(FitNote::LiftOnHold);
    }
    if (direction == Direction::Strength && facts.needsCareWithHeavyLoads) {
        fit.notes.push_back(FitNote::CareWithHeavyLoads);
    }
    if (direction != Direction::Movement && !isMostlyThroughFirstCycle(facts)) {
        fit.notes.push_back(FitNote::FewLiftsGoneRound);
    }
    return fit;
}

/// Whether nothing but good is to be said of it.
bool isWithoutReserve(const DirectionFit& fit)
{
    return std::all_of(fit.notes.begin(), fit.notes.end(), [](FitNote note) { return note == FitNote::FitsTheWeek; });
}

}  // namespace

std::array<DirectionFit, 3> fitsOf(const FitFacts& facts)
{
    std::array<DirectionFit, 3> fits{fitOf(Direction::Strength, facts), fitOf(Direction::Physique, facts), fitOf(Direction::Movement, facts)};
    auto& [strength, physique, movement] = fits;
    const bool isShortOfSessions = facts.sessionsAWeek < demandsOf(Direction::Strength).goodSessions;
    if (isWithoutReserve(strength)) {
        strength.isSuggested = true;
    } else if (isWithoutReserve(physique)) {
        physique.isSuggested = true;
    } else if (isWithoutReserve(movement) && (facts.needsCareWithHeavyLoads || (isShortOfSessions && isMostlyThroughFirstCycle(facts)))) {
        movement.isSuggested = true;
    }
    return fits;
}

}  // namespace chalk::direction
