#pragma once

#include "core/direction/direction.h"

#include <array>
#include <cstdint>
#include <vector>

namespace chalk::direction {

/// What is known of a client when the three directions are held beside each other.
struct FitFacts {
    int sessionsAWeek = 2;
    int loadedLifts = 0;             ///< in a loaded stage, not on hold
    int liftsPastFirstCycle = 0;     ///< of those, how many have gone round once at least
    int stalledLifts = 0;
    bool needsCareWithHeavyLoads = false;  ///< a caution about blood pressure, bone density, pregnancy, the pelvic floor or the lower back
    bool hasLiftOnHold = false;
};

/// One thing to be said of a direction.
enum class FitNote : std::uint8_t {
    FitsTheWeek,        ///< as many sessions as the direction does well with
    FewerThanWanted,    ///< it goes, with less
    TooFewSessions,     ///< fewer than the least
    CareWithHeavyLoads, ///< to be spoken about with whoever treats the client, before it is chosen
    LiftOnHold,         ///< a lift on hold comes first
    FewLiftsGoneRound   ///< less than half of the loaded lifts are through the first cycle: more is still to be had there
};

struct DirectionFit {
    Direction direction = Direction::Strength;
    std::vector<FitNote> notes;   ///< the week first
    bool isSuggested = false;

    bool operator==(const DirectionFit&) const = default;
};

/// The three directions in their order. One at most is suggested, never with a lift on hold, and none is forced: another cycle is a choice as good.
/// Strength where the week fits it, half of the loaded lifts are past their first cycle and no caution speaks against heavy loads; else physique where
/// the week fits it; else movement where a caution asks for lighter loads or the week has fewer sessions than the others do well with. Common practice.
[[nodiscard]] std::array<DirectionFit, 3> fitsOf(const FitFacts& facts);

}  // namespace chalk::direction
