#include "core/progression/rule_case.h"

namespace chalk::progression {

namespace {

bool isBelowHeldLoad(const RuleCase& c)
{
    return c.facts.workingLoad < *c.state.load;
}

bool isGoalReached(const RuleCase& c)
{
    return c.facts.adjustedReps >= c.policy.repGoal.value();
}

bool isBestBeaten(const RuleCase& c)
{
    return c.facts.adjustedReps > c.state.best.value();
}

bool isRepMissLast(const RuleCase& c)
{
    return c.state.misses + 1 >= c.policy.repMissLimit;
}

void enterSetBuild(RuleCase& c, base::Reps holdReps)
{
    enterStage(c, Stage::SetBuild);
    c.state.holdReps = holdReps;
    c.state.sets = c.policy.baseSets + base::Sets(1);
}

void buildSets(RuleCase& c)
{
    takeHeavierLoad(c);
    c.state.flags.clear(Flag::Stalled);
    enterSetBuild(c, c.policy.repGoal);
}

void noteBest(RuleCase& c)
{
    takeHeavierLoad(c);
    c.state.flags.clear(Flag::Stalled);
    c.state.best = base::Reps(c.facts.adjustedReps);
    c.state.misses = 0;
}

void endRepBuild(RuleCase& c)
{
    takeHeavierLoad(c);
    if (c.state.best >= c.policy.repCeiling) {
        enterSetBuild(c, c.state.best);
        return;
    }
    backOffHeld(c);
    c.state.best = base::Reps(0);
}

constexpr RuleRow kRepMisses[] = {
    {Rule::R4, isRepMissLast, endRepBuild},
    {Rule::R3, always, missHeld},
};

void missRepsBelowHeld(RuleCase& c)
{
    fireFirst(kRepMisses, c);
}

constexpr RuleRow kRepBuild[] = {
    {Rule::A2, isIncomplete, keepAll},
    {Rule::R5, isBelowHeldLoad, missRepsBelowHeld},
    {Rule::R1, isGoalReached, buildSets},
    {Rule::R2, isBestBeaten, noteBest},
    {Rule::R4, isRepMissLast, endRepBuild},
    {Rule::R3, always, missHeld},
};

}  // namespace

std::span<const RuleRow> repBuildRules()
{
    return kRepBuild;
}

}  // namespace chalk::progression
