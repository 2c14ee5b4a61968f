#include "core/progression/rule_case.h"

#include <algorithm>

namespace chalk::progression {

namespace {

bool hasNoRir(const RuleCase& c)
{
    return !c.facts.capacity;
}

bool isTooLight(const RuleCase& c)
{
    return *c.facts.capacity > c.policy.capacityMax.value() && c.steps.loads().nextAbove(c.facts.workingLoad);
}

bool isTooHeavy(const RuleCase& c)
{
    return *c.facts.capacity < c.policy.capacityMin.value();
}

bool isTooHeavyAndLightest(const RuleCase& c)
{
    return isTooHeavy(c) && !c.steps.loads().nextBelow(c.facts.workingLoad);
}

bool areSetsShort(const RuleCase& c)
{
    return c.facts.counted < c.policy.baseSets.value() || c.facts.leastReps < c.policy.repFloor.value();
}

bool isReserveSpent(const RuleCase& c)
{
    return c.facts.leastRir && *c.facts.leastRir < c.policy.reserve;
}

void repeatWorkingLoad(RuleCase& c)
{
    c.state.load = c.facts.workingLoad;
    c.state.flags.clear(Flag::NeedsLighterOption);
}

base::Load loadForMidCapacity(const RuleCase& c)
{
    return c.steps.forCapacity(c.facts.workingLoad, *c.facts.capacity, (c.policy.capacityMin + c.policy.capacityMax).value());
}

void goHeavier(RuleCase& c)
{
    repeatWorkingLoad(c);
    c.state.load = std::max(loadForMidCapacity(c), *c.steps.loads().nextAbove(c.facts.workingLoad));
}

void goLighter(RuleCase& c)
{
    repeatWorkingLoad(c);
    c.state.load = std::min(loadForMidCapacity(c), *c.steps.loads().nextBelow(c.facts.workingLoad));
}

void askForLighterOption(RuleCase& c)
{
    c.state.load = c.facts.workingLoad;
    c.state.flags.raise(Flag::NeedsLighterOption);
}

void startBuilding(RuleCase& c)
{
    repeatWorkingLoad(c);
    enterStage(c, Stage::LoadBuild);
    c.state.lastMade.reset();
    stepUpFrom(c, c.facts.workingLoad, c.facts.adjustedReps);
}

constexpr RuleRow kBaseLoad[] = {
    {Rule::B1, hasNoRir, repeatWorkingLoad},
    {Rule::B2, isTooLight, goHeavier},
    {Rule::B4, isTooHeavyAndLightest, askForLighterOption},
    {Rule::B3, isTooHeavy, goLighter},
    {Rule::B6, areSetsShort, repeatWorkingLoad},
    {Rule::B7, isReserveSpent, repeatWorkingLoad},
    {Rule::B5, always, startBuilding},
};

}  // namespace

std::span<const RuleRow> baseLoadRules()
{
    return kBaseLoad;
}

}  // namespace chalk::progression
