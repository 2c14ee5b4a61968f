#pragma once

#include "core/base/load.h"
#include "core/lifts/pattern.h"
#include "core/progression/event.h"
#include "core/progression/policy.h"

#include <optional>

namespace chalk::progression {

/// What the rules read off one exposure.
struct ExposureFacts {
    int workingSets = 0;              ///< sets that are not warm-ups
    bool isLost = false;              ///< in any working set
    bool isShaky = false;             ///< in any working set
    base::Load workingLoad;           ///< w: of most working sets; on a tie the heavier
    int counted = 0;                  ///< n: working sets at w
    int adjustedReps = 0;             ///< a: the fewest reps of a counted set with the reserve kept
    std::optional<int> capacity;      ///< c: the smallest reps + RIR of the counted sets that have RIR
    std::optional<int> leastRir;      ///< of the counted sets
    int leastReps = 0;                ///< of the counted sets
    std::optional<int> longestRest;   ///< seconds, of the counted sets but the first
};

/// Reads the facts off an exposure; holds and carries are turned into repetitions by the policy.
[[nodiscard]] ExposureFacts factsOf(const Exposure& exposure, lifts::Measure measure, const Policy& policy);

/// The repetitions that an amount of the measure stands for: whole ones, rounded down.
[[nodiscard]] int repsOf(std::int32_t amount, lifts::Measure measure, const Policy& policy);

}  // namespace chalk::progression
