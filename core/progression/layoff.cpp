#include "core/progression/layoff.h"

namespace chalk::progression {

namespace {

void cutAfterLayoff(LiftState& state, base::Milli fraction, const LoadSteps& steps)
{
    state.load = steps.cut(*state.load, fraction);
    if (state.block) {
        state.block->single = base::Load::fromCenti(state.block->single.centi() * (1000 - fraction.value()) / 1000);
    }
    state.best = base::Reps(0);
    state.misses = 0;
    if (state.stage == Stage::LoadBuild) {
        state.lastMade.reset();
        state.bridgeTarget.reset();
    }
}

}  // namespace

std::optional<Rule> layoffRuleOn(base::Date day, const LiftState& state, const Policy& policy)
{
    if (!isLoaded(state.stage) || state.isOnHold || !state.lastWork || state.isGapDealtWith) {
        return std::nullopt;
    }
    const int gap = day - *state.lastWork;
    if (gap >= policy.layoffDays[2]) {
        return Rule::G3;
    }
    if (gap >= policy.layoffDays[1]) {
        return Rule::G2;
    }
    return gap >= policy.layoffDays[0] ? std::optional(Rule::G1) : std::nullopt;
}

void applyLayoff(Rule rule, LiftState& state, const Policy& policy, const LoadSteps& steps)
{
    state.isGapDealtWith = true;
    state.isPauseAsked = false;
    if (rule == Rule::G1) {
        cutAfterLayoff(state, policy.layoffCuts[0], steps);
    } else if (rule == Rule::G2) {
        cutAfterLayoff(state, policy.layoffCuts[1], steps);
        state.returnStage = state.stage;
        state.isReturnCut = true;
        state.stage = Stage::Control;
    } else {
        cutAfterLayoff(state, policy.layoffCuts[2], steps);
        state.stage = Stage::BaseLoad;
        state.block.reset();
        state.flags.clearAll();
        state.flags.raise(Flag::Rescreen);
    }
}

}  // namespace chalk::progression
