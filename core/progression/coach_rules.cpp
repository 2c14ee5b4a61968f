#include "core/progression/coach_rules.h"

namespace chalk::progression {

namespace {

/// Misses, best, flags, a lighter week and what belongs to one way through Load build or Control.
void clearProgress(LiftState& state)
{
    state.lighterUntil.reset();
    state.misses = 0;
    state.best = base::Reps(0);
    state.flags.clearAll();
    state.bridgeTarget.reset();
    state.lastMade.reset();
    state.returnStage.reset();
    state.isReturnCut = false;
    state.block.reset();
}

/// `before` is the stage that the lift was in: sets and rest stay as they were only where the lift stays in their stage.
void setHeldFigures(const CoachSet& set, Stage before, LiftState& state, const Policy& policy)
{
    if (set.reps) {
        state.holdReps = set.reps;
    } else if (!state.holdReps) {
        state.holdReps = policy.repGoal;
    }
    if (state.stage == Stage::SetBuild) {
        const base::Sets present = before == Stage::SetBuild ? *state.sets : policy.baseSets + base::Sets(1);
        state.sets = set.sets.value_or(present);
        return;
    }
    state.holdSets = set.sets ? *set.sets : state.holdSets.value_or(policy.topSets);
    state.rest = set.rest.value_or(before == Stage::RestCut ? *state.rest : policy.restSteps.front());
    state.sets.reset();
}

}  // namespace

Rule applyRelease(LiftState& state)
{
    state.isGapDealtWith = true;
    state.isPauseAsked = false;
    if (!state.isOnHold) {
        return Rule::P5;
    }
    state.isOnHold = false;
    if (isLoaded(state.stage)) {
        state.returnStage = state.stage;
        state.isReturnCut = false;
        state.stage = Stage::Control;
    }
    return Rule::P4;
}

Rule applyCoachSet(const CoachSet& set, LiftState& state, const Policy& policy, const LoadSteps& steps)
{
    state.isGapDealtWith = true;
    state.isPauseAsked = false;
    clearProgress(state);
    const Stage before = state.stage;
    state.stage = set.stage.value_or(state.stage);
    if (isLoaded(state.stage)) {
        state.load = set.load ? *set.load : state.load.value_or(steps.startLoad());
    }
    if (state.stage == Stage::RepBuild) {
        state.best = set.reps.value_or(base::Reps(0));
    } else if (state.stage >= Stage::SetBuild) {
        setHeldFigures(set, before, state, policy);
    }
    return Rule::O1;
}

Rule applySwap(LiftState& state, const LoadSteps& steps)
{
    state.isGapDealtWith = true;
    state.isPauseAsked = false;
    clearProgress(state);
    state.holdReps.reset();
    state.holdSets.reset();
    state.sets.reset();
    state.rest.reset();
    state.load.reset();
    if (isLoaded(state.stage)) {
        state.stage = Stage::BaseLoad;
        state.load = steps.startLoad();
    }
    return Rule::X1;
}

}  // namespace chalk::progression
