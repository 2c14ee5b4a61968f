#include "core/progression/rule_case.h"

#include <algorithm>

namespace chalk::progression {

namespace {

bool isRestCutMade(const RuleCase& c)
{
    const int longest = (*c.state.rest + c.policy.restTolerance).value();
    return areSetsMade(c, *c.state.holdSets) && c.facts.longestRest.value_or(0) <= longest;
}

/// The longest rest step below the present rest; nothing at the rest floor.
std::optional<base::Seconds> shorterRest(const RuleCase& c)
{
    const auto& steps = c.policy.restSteps;
    const auto shorter = std::find_if(steps.begin(), steps.end(), [&c](base::Seconds rest) { return rest < *c.state.rest; });
    return shorter == steps.end() ? std::nullopt : std::optional(*shorter);
}

bool isLastRestMade(const RuleCase& c)
{
    return isRestCutMade(c) && !shorterRest(c);
}

void goRoundAgain(RuleCase& c)
{
    takeHeavierLoad(c);
    startNextCycle(c);
}

void shortenRest(RuleCase& c)
{
    takeHeavierLoad(c);
    c.state.rest = shorterRest(c);
    c.state.misses = 0;
}

constexpr RuleRow kRestCut[] = {
    {Rule::T1, isLastRestMade, goRoundAgain},
    {Rule::T2, isRestCutMade, shortenRest},
    {Rule::T4, isMissLast, goRoundAgain},
    {Rule::T3, always, missHeld},
};

}  // namespace

std::span<const RuleRow> restCutRules()
{
    return kRestCut;
}

}  // namespace chalk::progression
