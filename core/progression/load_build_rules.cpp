#include "core/progression/rule_case.h"

#include <algorithm>

namespace chalk::progression {

namespace {

bool isEasy(const RuleCase& c)
{
    return c.facts.adjustedReps > c.policy.hardReps.value();
}

bool isEasyWithStep(const RuleCase& c, Step::Kind kind)
{
    return isEasy(c) && c.steps.stepUp(c.facts.workingLoad).kind == kind;
}

bool isEasyBeforePlainStep(const RuleCase& c)
{
    return isEasyWithStep(c, Step::Kind::Plain);
}

bool isBridgeCrossed(const RuleCase& c)
{
    return isEasyWithStep(c, Step::Kind::Bridge) && c.facts.adjustedReps >= c.policy.repGoal.value();
}

bool isEasyBeforeBridge(const RuleCase& c)
{
    return isEasyWithStep(c, Step::Kind::Bridge);
}

bool isHard(const RuleCase& c)
{
    return c.facts.adjustedReps >= c.policy.repFloor.value();
}

bool isMissLastWithLoadMade(const RuleCase& c)
{
    return isMissLast(c) && c.state.lastMade;
}

void noteMade(RuleCase& c)
{
    c.state.lastMade = c.facts.workingLoad;
    c.state.misses = 0;
}

void takeStep(RuleCase& c)
{
    noteMade(c);
    c.state.load = c.steps.stepUp(c.facts.workingLoad).load;
    c.state.bridgeTarget.reset();
}

void stayOnBridge(RuleCase& c)
{
    noteMade(c);
    c.state.load = c.facts.workingLoad;
    c.state.bridgeTarget = std::min(base::Reps(c.facts.adjustedReps + 1), c.policy.repGoal);
}

void buildRepsHere(RuleCase& c)
{
    enterRepBuild(c, c.facts.workingLoad, c.facts.adjustedReps);
}

void missLoad(RuleCase& c)
{
    ++c.state.misses;
    setBuildLoad(c, c.facts.workingLoad);
}

void buildRepsAtLastMade(RuleCase& c)
{
    enterRepBuild(c, *c.state.lastMade, 0);
}

void backOffLoad(RuleCase& c)
{
    c.state.misses = 0;
    setBuildLoad(c, c.steps.cut(c.facts.workingLoad, c.policy.backOff));
}

constexpr RuleRow kLoadBuild[] = {
    {Rule::A2, isIncomplete, keepAll},
    {Rule::L1, isEasyBeforePlainStep, takeStep},
    {Rule::L7, isBridgeCrossed, takeStep},
    {Rule::L6, isEasyBeforeBridge, stayOnBridge},
    {Rule::L8, isEasy, buildRepsHere},
    {Rule::L2, isHard, buildRepsHere},
    {Rule::L4, isMissLastWithLoadMade, buildRepsAtLastMade},
    {Rule::L5, isMissLast, backOffLoad},
    {Rule::L3, always, missLoad},
};

}  // namespace

std::span<const RuleRow> loadBuildRules()
{
    return kLoadBuild;
}

}  // namespace chalk::progression
