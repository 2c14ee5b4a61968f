#pragma once

#include "core/base/load.h"
#include "core/lifts/pattern.h"
#include "core/progression/event.h"
#include "core/progression/exposure_facts.h"
#include "core/progression/lift_state.h"
#include "core/progression/policy.h"
#include "core/progression/rule.h"

#include <QString>

#include <optional>

namespace chalk::ui::common {

/// The record that the rules were decided on.
struct DecidedRecord {
    base::Date date;
    int pain = 0;
    progression::ExposureFacts facts;
};

/// What a record says, for the sentences; nothing for what the coach did by hand. A rehearsal has no sets.
[[nodiscard]] std::optional<DecidedRecord> decidedRecordOf(base::Date date, const progression::EventBody& body,
                                                           lifts::Measure measure, const progression::Policy& policy);

/// What the sentences of the rules need to know besides the prescription. With the record they say its numbers; without, they
/// say the rule alone.
struct RuleFacts {
    const progression::Policy& policy;
    base::MassUnit unit = base::MassUnit::Kilogram;
    lifts::Measure measure = lifts::Measure::Reps;
    int pieces = 1;
    bool isAddedToBody = false;
    std::optional<DecidedRecord> record = {};
    std::optional<base::Date> today = {};  ///< for how long ago the record is
};

/// What a rule means for what comes next, as one plain sentence.
[[nodiscard]] QString sentenceFor(progression::Rule rule, const progression::Prescription& next, const RuleFacts& facts);

/// Why this is what comes next: the day's own rules where it has any, else those of the last decision. With no rule at all,
/// what the stage asks for.
[[nodiscard]] QString whyOf(const progression::RuleList& decided, const progression::Prescription& next, const RuleFacts& facts);

}  // namespace chalk::ui::common
