#pragma once

#include "core/clients/client.h"
#include "core/direction/direction_fit.h"
#include "core/direction/lift_for_plan.h"

#include <span>

namespace chalk::direction {

/// What is known of a client when the three directions are held beside each other, from the client's lifts and the cautions in force. Carries and holds
/// count among the loaded lifts.
[[nodiscard]] FitFacts fitFactsOf(std::span<const LiftForPlan> lifts, std::span<const clients::Caution> cautions, int sessionsAWeek);

}  // namespace chalk::direction
