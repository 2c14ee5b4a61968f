#pragma once

#include "core/progression/rule.h"

#include <span>

namespace chalk::ui::common {

/// One rule in words, without and with the numbers of the record that it was decided on. English, marked for translation in the
/// context `Rules`. What stands in braces is filled in by rule_words.cpp: {load}, {reps}, {sets}, {rest} of the prescription, {made},
/// {lastLoad} … of the record, {reserve}, {goal} … of the policy.
struct RuleSentence {
    progression::Rule rule;
    const char* text;
    const char* withRecord;  ///< a null pointer: the record adds nothing
};

/// Every rule once, in the order of progression::Rule.
[[nodiscard]] std::span<const RuleSentence> ruleSentences();

}  // namespace chalk::ui::common
