#include "core/progression/rule_case.h"

namespace chalk::progression {

namespace {

bool isExposureOnHold(const RuleCase& c)
{
    return c.state.isOnHold;
}

bool isExposurePainful(const RuleCase& c)
{
    return c.pain >= c.policy.painHold;
}

void putLiftOnHold(RuleCase& c)
{
    c.state.isOnHold = true;
    c.state.isPauseAsked = false;
}

bool isWithoutWork(const RuleCase& c)
{
    return c.facts.workingSets == 0;
}

bool isUnloadedStage(const RuleCase& c)
{
    return !isLoaded(c.state.stage);
}

bool isLighterAndPainful(const RuleCase& c)
{
    return c.isLighter && c.pain > 0;
}

void recordOnly(RuleCase& c)
{
    c.fired.add(Rule::D2);
}

bool isLighter(const RuleCase& c)
{
    return c.isLighter;
}

bool isLostAgain(const RuleCase& c)
{
    return c.facts.isLost && c.state.isPauseAsked;
}

void sendBackToControl(RuleCase& c)
{
    c.state.returnStage = c.state.stage;
    c.state.isReturnCut = false;
    c.state.stage = Stage::Control;
    c.state.isPauseAsked = false;
}

bool isLost(const RuleCase& c)
{
    return c.facts.isLost;
}

void askForPause(RuleCase& c)
{
    c.state.isPauseAsked = true;
}

bool isSlightlyPainful(const RuleCase& c)
{
    return c.pain > 0;
}

bool isShaky(const RuleCase& c)
{
    return c.facts.isShaky;
}

void dropPause(RuleCase& c)
{
    c.state.isPauseAsked = false;
}

constexpr RuleRow kExposureRules[] = {
    {Rule::P3, isExposureOnHold, keepAll},
    {Rule::P1, isExposurePainful, putLiftOnHold},
    {Rule::V1, isWithoutWork, keepAll},
    {Rule::K3, isUnloadedStage, keepAll},
    {Rule::P2, isLighterAndPainful, recordOnly},
    {Rule::D2, isLighter, keepAll},
    {Rule::C2, isLostAgain, sendBackToControl},
    {Rule::C1, isLost, askForPause},
    {Rule::P2, isSlightlyPainful, dropPause},
    {Rule::C3, isShaky, dropPause},
};

}  // namespace

std::span<const RuleRow> exposureRules()
{
    return kExposureRules;
}

}  // namespace chalk::progression
