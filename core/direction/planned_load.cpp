#include "core/direction/planned_load.h"

#include "core/progression/load_steps.h"

#include <algorithm>

namespace chalk::direction {

const LiftForPlan* liftWith(std::span<const LiftForPlan> lifts, base::LiftId id)
{
    const auto found = std::find_if(lifts.begin(), lifts.end(), [id](const LiftForPlan& one) { return one.lift == id; });
    return found == lifts.end() ? nullptr : &*found;
}

PlanSingle singleNow(const ClientPlan& plan, std::size_t lift, std::span<const LiftForPlan> lifts)
{
    const LiftForPlan* found = liftWith(lifts, plan.plan.wishes.lifts[lift].lift);
    const PlanSingle agreed = plan.singles[lift];
    const bool isFollowing = found != nullptr && found->machine.state().block.has_value();
    if (found == nullptr || !found->single || (!isFollowing && agreed.load > base::Load())) {
        return agreed;
    }
    return *found->single;
}

std::optional<base::Load> plannedLoad(const LiftForPlan& lift, base::Load single, base::Milli share)
{
    if (single <= base::Load()) {
        return std::nullopt;
    }
    const progression::LoadSteps steps(lift.machine.setup(), lift.machine.kit(), lift.machine.loads());
    return steps.atShare(single, share);
}

}  // namespace chalk::direction
