#include "core/progression/rule_case.h"

#include <algorithm>

namespace chalk::progression {

namespace {

bool isRehearsalOnHold(const RuleCase& c)
{
    return c.state.isOnHold;
}

bool isRehearsalPainful(const RuleCase& c)
{
    return c.pain >= c.policy.painHold;
}

void holdAfterRehearsal(RuleCase& c)
{
    c.state.isOnHold = true;
    c.state.isPauseAsked = false;
}

bool isLoadedStage(const RuleCase& c)
{
    return isLoaded(c.state.stage);
}

bool isInPattern(const RuleCase& c)
{
    return c.state.stage == Stage::Pattern;
}

bool isPatternUnearned(const RuleCase& c)
{
    const auto& criteria = c.rehearsal->criteria;
    const bool isEveryMet = std::all_of(criteria.begin(), criteria.end(),
                                        [](const Criterion& criterion) { return criterion.verdict == Verdict::Met; });
    return isInPattern(c) && (criteria.empty() || !isEveryMet || c.pain > 0);
}

bool isPauseShort(const std::optional<int>& pauseMs, const Policy& policy)
{
    return !pauseMs || *pauseMs < policy.pauseMs;
}

bool isControlUnearned(const RuleCase& c)
{
    const Rehearsal& trial = *c.rehearsal;
    const bool isAnyNotMet = std::any_of(trial.criteria.begin(), trial.criteria.end(),
                                         [](const Criterion& criterion) { return criterion.verdict != Verdict::Met; });
    return trial.reps < c.policy.controlReps || isPauseShort(trial.pauses.topMs, c.policy) ||
           isPauseShort(trial.pauses.middleMs, c.policy) || isPauseShort(trial.pauses.bottomMs, c.policy) ||
           trial.steadiness != Steadiness::Steady || c.pain > 0 || isAnyNotMet;
}

bool isControlEarned(const RuleCase& c)
{
    return !isControlUnearned(c);
}

void leaveControl(RuleCase& c)
{
    LiftState& state = c.state;
    if (!state.returnStage) {
        enterStage(c, Stage::BaseLoad);
        state.load = c.steps.startLoad();
        return;
    }
    enterStage(c, *state.returnStage);
    if (!state.isReturnCut) {
        state.load = c.steps.cut(*state.load, c.policy.backOff);
    }
    state.best = base::Reps(0);
    state.lastMade.reset();
    state.returnStage.reset();
    state.isReturnCut = false;
}

constexpr RuleRow kControlRules[] = {
    {Rule::K2, isControlUnearned, keepAll},
    {Rule::K1, isControlEarned, leaveControl},
};

void judgeForControl(RuleCase& c)
{
    c.state.stage = Stage::Control;
    fireFirst(kControlRules, c);
}

constexpr RuleRow kRehearsalRules[] = {
    {Rule::P3, isRehearsalOnHold, keepAll},
    {Rule::P1, isRehearsalPainful, holdAfterRehearsal},
    {Rule::U3, isLoadedStage, keepAll},
    {Rule::U2, isPatternUnearned, keepAll},
    {Rule::U1, isInPattern, judgeForControl},
    {Rule::K2, isControlUnearned, keepAll},
    {Rule::K1, isControlEarned, leaveControl},
};

}  // namespace

std::span<const RuleRow> rehearsalRules()
{
    return kRehearsalRules;
}

}  // namespace chalk::progression
