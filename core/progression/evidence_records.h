#pragma once

#include "core/progression/evidence.h"

#include <optional>
#include <span>

namespace chalk::progression {

/// What a lift's records say, as far as evidence needs it.
struct RecordFacts {
    const Exposure* exposure = nullptr;    ///< the last one with a working set since the stage began, none of a lighter week
    const Rehearsal* rehearsal = nullptr;  ///< the last one since the stage began
    std::optional<base::Date> exposureDate;
    std::optional<base::Date> rehearsalDate;
    std::optional<base::Date> lastDate;  ///< of the last record of any kind and stage
    int lastPain = 0;
    int painFreeInARow = 0;
    int steadyInARow = 0;
    std::optional<base::Date> heldOn;  ///< when P-1 put the lift on hold
    int heldPain = 0;
};

/// Reads the facts for a lift that is now in `stage` and began in `startStage`.
[[nodiscard]] RecordFacts recordFactsOf(std::span<const JudgedEvent> history, Stage stage, Stage startStage);

}  // namespace chalk::progression
