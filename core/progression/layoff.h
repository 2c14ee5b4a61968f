#pragma once

#include "core/base/date.h"
#include "core/progression/lift_state.h"
#include "core/progression/load_steps.h"

#include <optional>

namespace chalk::progression {

/// The G rule that a lift meets on `day`; nothing where the gap is short, dealt with, or not looked at.
[[nodiscard]] std::optional<Rule> layoffRuleOn(base::Date day, const LiftState& state, const Policy& policy);

/// What the layoff does to the lift. The gap counts as dealt with afterwards.
void applyLayoff(Rule rule, LiftState& state, const Policy& policy, const LoadSteps& steps);

}  // namespace chalk::progression
