#include "core/planning/plan_draft.h"

namespace chalk::planning {

bool LiftWish::operator==(const LiftWish& other) const
{
    const bool isSameStart = start.has_value() == other.start.has_value() &&
                             (!start || (start->stage == other.start->stage && start->reason == other.start->reason));
    return isSameStart && exerciseKey == other.exerciseKey && equipmentKey == other.equipmentKey && firstLoad == other.firstLoad && isLeftOut == other.isLeftOut &&
           whyLeftOut == other.whyLeftOut;
}

}  // namespace chalk::planning
