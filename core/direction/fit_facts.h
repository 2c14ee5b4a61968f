#pragma once

#include "core/direction/direction_fit.h"
#include "core/direction/lift_for_plan.h"
#include "core/lifts/exercise.h"

#include <span>
#include <vector>

namespace chalk::direction {

/// What is known of a client when the three directions are held beside each other, from the client's lifts and the tags of the cautions in force. Carries
/// and holds count among the loaded lifts.
[[nodiscard]] FitFacts fitFactsOf(std::span<const LiftForPlan> ofClient, std::span<const lifts::CautionTag> tags, int sessionsAWeek);

/// The same of cautions, which have `tags`.
template <class Caution>
[[nodiscard]] FitFacts fitFactsOf(std::span<const LiftForPlan> ofClient, const std::vector<Caution>& cautions, int sessionsAWeek)
{
    std::vector<lifts::CautionTag> tags;
    for (const Caution& caution : cautions) {
        tags.insert(tags.end(), caution.tags.begin(), caution.tags.end());
    }
    return fitFactsOf(ofClient, std::span<const lifts::CautionTag>(tags), sessionsAWeek);
}

}  // namespace chalk::direction
