#include "core/progression/lighter_week.h"

namespace chalk::progression {

namespace {

bool carriesLoad(const LiftState& state)
{
    return isLoaded(state.stage) && !state.isOnHold;
}

}  // namespace

bool isInLighterWeek(base::Date day, const LiftState& state)
{
    return state.lighterUntil && day <= *state.lighterUntil;
}

bool isLighterWeekOver(base::Date day, const LiftState& state)
{
    return state.lighterUntil && day > *state.lighterUntil && carriesLoad(state);
}

Rule beginLighterWeek(base::Date day, LiftState& state, const Policy& policy)
{
    if (!carriesLoad(state)) {
        return Rule::D4;
    }
    state.lighterUntil = day + (policy.lighterDays - 1);
    return Rule::D1;
}

void makeLighter(Prescription& next, base::Date lastDay, const Policy& policy, const LoadSteps& steps)
{
    if (next.kind != PrescriptionKind::Work) {
        return;
    }
    next.lighterUntil = lastDay;
    next.sets = base::Sets((next.sets.value() * policy.lighterSets.value() + 999) / 1000);
    next.load = steps.cut(next.load, policy.lighterCut);
}

}  // namespace chalk::progression
