#include "core/progression/rule.h"

#include "core/base/enum_keys.h"

#include <algorithm>

namespace chalk::progression {

namespace {

constexpr std::array<std::string_view, kRuleCount> kRuleNames{
    "P-1", "P-2", "P-3", "P-4", "P-5", "V-1", "K-1", "K-2", "K-3", "C-1", "C-2", "C-3", "U-1", "U-2", "U-3", "B-1",
    "B-2", "B-3", "B-4", "B-5", "B-6", "B-7", "A-2", "L-1", "L-2", "L-3", "L-4", "L-5", "L-6", "L-7", "L-8", "R-1",
    "R-2", "R-3", "R-4", "R-5", "S-1", "S-2", "S-3", "S-4", "T-1", "T-2", "T-3", "T-4", "G-1", "G-2", "G-3", "O-1",
    "X-1", "D-1", "D-2", "D-3", "D-4", "N-1", "N-2", "N-3", "N-4", "N-5"};
constexpr std::array<std::string_view, 3> kFlagKeys{"needs_lighter_option", "rescreen", "stalled"};

}  // namespace

std::string_view nameOf(Rule rule)
{
    return base::keyIn(kRuleNames, rule);
}

std::optional<Rule> ruleOf(std::string_view name)
{
    return base::enumOf<Rule>(kRuleNames, name);
}

bool RuleList::operator==(const RuleList& other) const
{
    return std::equal(begin(), end(), other.begin(), other.end());
}

std::string_view keyOf(Flag flag)
{
    return base::keyIn(kFlagKeys, flag);
}

}  // namespace chalk::progression
