#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/lift_for_plan.h"

#include <optional>
#include <span>

namespace chalk::direction {

/// The lift with that id; null where there is none.
[[nodiscard]] const LiftForPlan* liftWith(std::span<const LiftForPlan> lifts, base::LiftId id);

/// The single that the loads of a lift of a plan (an index) come from now: of a lift that follows the plan as results have moved it, else that of the
/// plan, else what is known of the lift by now. 0 where none is known.
[[nodiscard]] PlanSingle singleNow(const ClientPlan& plan, std::size_t lift, std::span<const LiftForPlan> lifts);

/// What is put on the lift for a share of a single (see progression::LoadSteps::atShare): the heaviest load of its equipment that is not above it, as it is
/// written on the lift. Nothing where no single is known.
[[nodiscard]] std::optional<base::Load> plannedLoad(const LiftForPlan& lift, base::Load single, base::Milli share);

}  // namespace chalk::direction
