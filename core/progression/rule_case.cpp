#include "core/progression/rule_case.h"

#include <algorithm>

namespace chalk::progression {

bool fireFirst(std::span<const RuleRow> table, RuleCase& c)
{
    for (const RuleRow& row : table) {
        if (row.when(c)) {
            c.fired.add(row.rule);
            row.then(c);
            return true;
        }
    }
    return false;
}

bool always(const RuleCase&)
{
    return true;
}

bool isIncomplete(const RuleCase& c)
{
    return c.facts.counted < c.policy.baseSets.value();
}

bool isMissLast(const RuleCase& c)
{
    return c.state.misses + 1 >= c.policy.missLimit;
}

void enterStage(RuleCase& c, Stage stage)
{
    c.state.stage = stage;
    c.state.misses = 0;
    c.state.bridgeTarget.reset();
}

void enterRepBuild(RuleCase& c, base::Load load, int best)
{
    enterStage(c, Stage::RepBuild);
    c.state.load = load;
    c.state.best = base::Reps(best);
}

void setBuildLoad(RuleCase& c, base::Load load)
{
    if (c.state.load != load) {
        c.state.bridgeTarget.reset();
    }
    c.state.load = load;
}

void takeHeavierLoad(RuleCase& c)
{
    c.state.load = std::max(*c.state.load, c.facts.workingLoad);
}

void missHeld(RuleCase& c)
{
    takeHeavierLoad(c);
    ++c.state.misses;
}

void backOffHeld(RuleCase& c)
{
    c.state.load = c.steps.cut(*c.state.load, c.policy.backOff);
    c.state.misses = 0;
    c.state.flags.raise(Flag::Stalled);
}

bool areSetsMade(const RuleCase& c, base::Sets wanted)
{
    return c.facts.workingLoad >= *c.state.load && c.facts.counted >= wanted.value() &&
           c.facts.adjustedReps >= c.state.holdReps->value() - c.policy.repTolerance.value();
}

void stepUpFrom(RuleCase& c, base::Load w, int a)
{
    const Step step = c.steps.stepUp(w);
    switch (step.kind) {
    case Step::Kind::Plain:
        c.state.load = step.load;
        c.state.bridgeTarget.reset();
        return;
    case Step::Kind::Bridge:
        if (a >= c.policy.repGoal.value()) {
            c.fired.add(Rule::L7);
            c.state.load = step.load;
            c.state.bridgeTarget.reset();
        } else {
            c.fired.add(Rule::L6);
            c.state.load = w;
            c.state.bridgeTarget = std::min(base::Reps(a + 1), c.policy.repGoal);
        }
        return;
    case Step::Kind::EquipmentLimit:
        c.fired.add(Rule::L8);
        enterRepBuild(c, w, a);
        return;
    }
}

void startNextCycle(RuleCase& c)
{
    const base::Load held = *c.state.load;
    enterStage(c, Stage::LoadBuild);
    ++c.state.cycle;
    c.state.lastMade = held;
    c.state.rest.reset();
    c.state.flags.clearAll();
    const Step step = c.steps.stepUp(held);
    switch (step.kind) {
    case Step::Kind::Plain:
        c.state.load = step.load;
        return;
    case Step::Kind::Bridge:
        c.fired.add(Rule::L6);
        c.state.bridgeTarget = c.policy.repGoal;
        return;
    case Step::Kind::EquipmentLimit:
        c.fired.add(Rule::L8);
        enterRepBuild(c, held, 0);
        return;
    }
}

std::span<const RuleRow> stageRules(Stage stage)
{
    switch (stage) {
    case Stage::Pattern:
    case Stage::Control:
        return {};
    case Stage::BaseLoad:
        return baseLoadRules();
    case Stage::LoadBuild:
        return loadBuildRules();
    case Stage::RepBuild:
        return repBuildRules();
    case Stage::SetBuild:
        return setBuildRules();
    case Stage::RestCut:
        return restCutRules();
    }
    return {};
}

}  // namespace chalk::progression
