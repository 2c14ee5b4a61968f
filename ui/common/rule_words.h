#pragma once

#include "core/base/load.h"
#include "core/lifts/pattern.h"
#include "core/progression/lift_state.h"
#include "core/progression/policy.h"
#include "core/progression/rule.h"

#include <QString>

namespace chalk::ui::common {

/// What the sentences of the rules need to know besides the prescription.
struct RuleFacts {
    const progression::Policy& policy;
    base::MassUnit unit = base::MassUnit::Kilogram;
    lifts::Measure measure = lifts::Measure::Reps;
    int pieces = 1;
    bool isAddedToBody = false;
};

/// What a rule means for what comes next, as one plain sentence.
[[nodiscard]] QString sentenceFor(progression::Rule rule, const progression::Prescription& next, const RuleFacts& facts);

/// Why this is what comes next: the day's own rules where it has any, else those of the last decision. With no rule at all,
/// what the stage asks for.
[[nodiscard]] QString whyOf(const progression::RuleList& decided, const progression::Prescription& next, const RuleFacts& facts);

}  // namespace chalk::ui::common
