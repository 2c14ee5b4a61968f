#include "core/direction/fit_facts.h"

#include <algorithm>
#include <array>

namespace chalk::direction {

namespace {

using lifts::CautionTag;

/// What asks for care with heavy loads.
constexpr std::array kHeavyCare{CautionTag::BloodPressure, CautionTag::BoneDensity, CautionTag::Pregnancy, CautionTag::PelvicFloor,
                                CautionTag::LowerBack};

bool asksForCare(CautionTag tag)
{
    return std::find(kHeavyCare.begin(), kHeavyCare.end(), tag) != kHeavyCare.end();
}

}  // namespace

FitFacts fitFactsOf(std::span<const LiftForPlan> ofClient, std::span<const lifts::CautionTag> tags, int sessionsAWeek)
{
    FitFacts facts;
    facts.sessionsAWeek = sessionsAWeek;
    facts.needsCareWithHeavyLoads = std::any_of(tags.begin(), tags.end(), asksForCare);
    for (const LiftForPlan& lift : ofClient) {
        const progression::LiftState& state = lift.machine.state();
        const bool isLoaded = progression::isLoaded(state.stage) && !state.isOnHold;
        facts.loadedLifts += isLoaded ? 1 : 0;
        facts.liftsPastFirstCycle += isLoaded && state.cycle > 1 ? 1 : 0;
        facts.stalledLifts += lift.isStalled ? 1 : 0;
        facts.hasLiftOnHold = facts.hasLiftOnHold || state.isOnHold;
    }
    return facts;
}

}  // namespace chalk::direction
