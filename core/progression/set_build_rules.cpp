#include "core/progression/rule_case.h"

namespace chalk::progression {

namespace {

bool areSetsDone(const RuleCase& c)
{
    return areSetsMade(c, *c.state.sets);
}

bool areTopSetsDone(const RuleCase& c)
{
    return areSetsDone(c) && *c.state.sets >= c.policy.topSets;
}

void enterRestCut(RuleCase& c, base::Sets holdSets)
{
    enterStage(c, Stage::RestCut);
    c.state.holdSets = holdSets;
    c.state.rest = c.policy.restSteps.front();
    c.state.sets.reset();
}

void cutRests(RuleCase& c)
{
    takeHeavierLoad(c);
    c.state.flags.clear(Flag::Stalled);
    enterRestCut(c, *c.state.sets);
}

void addSet(RuleCase& c)
{
    takeHeavierLoad(c);
    c.state.flags.clear(Flag::Stalled);
    c.state.misses = 0;
    *c.state.sets += base::Sets(1);
}

void endSetBuild(RuleCase& c)
{
    takeHeavierLoad(c);
    const base::Sets passed = *c.state.sets - base::Sets(1);
    if (passed >= c.policy.leastSetsToPass) {
        enterRestCut(c, passed);
        return;
    }
    backOffHeld(c);
}

constexpr RuleRow kSetBuild[] = {
    {Rule::S1, areTopSetsDone, cutRests},
    {Rule::S2, areSetsDone, addSet},
    {Rule::S4, isMissLast, endSetBuild},
    {Rule::S3, always, missHeld},
};

}  // namespace

std::span<const RuleRow> setBuildRules()
{
    return kSetBuild;
}

}  // namespace chalk::progression
