#pragma once

#include "app/commands/command.h"
#include "core/direction/client_plan.h"
#include "core/direction/lift_for_plan.h"
#include "core/direction/plan_calendar.h"

#include <optional>
#include <vector>

namespace chalk::app {

/// Which weeks of a plan were missed, and what becomes of them.
struct MissedWish {
    std::vector<base::Date> mondays;  ///< by day
    direction::MissedWeeks way = direction::MissedWeeks::Shift;
};

/// The plan that `--direction`, `--wave`, `--weeks`, `--from` and `--note` ask for, of the client's lifts. Writes one line and answers
/// nothing where it cannot be: the caller ends with kWrongUse.
[[nodiscard]] std::optional<direction::ClientPlan> plannedFor(const CommandContext& context, base::ClientId client, int sessionsAWeek,
                                                              const std::vector<direction::LiftForPlan>& lifts);

/// What `--missed` with `--shift` or `--squeeze` says about a plan. The same on a fault.
[[nodiscard]] std::optional<MissedWish> missedWish(const CommandContext& context, const direction::BlockPlan& plan);

/// The first option that is given without what it goes with, or twice over, as one line; empty where all is well.
[[nodiscard]] QString planOptionFault(const CommandContext& context);

}  // namespace chalk::app
