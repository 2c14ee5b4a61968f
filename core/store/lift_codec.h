#pragma once

#include "core/progression/event.h"
#include "core/progression/lift_state.h"
#include "core/progression/rule.h"
#include "core/store/store_error.h"

#include <QString>

#include <optional>

namespace chalk::store {

// How what a lift is made of stands in the database's text columns: compact JSON, in the words of the open format.

[[nodiscard]] QString textOfKit(const progression::Kit& kit);
[[nodiscard]] std::optional<progression::Kit> kitOf(const QString& text);

[[nodiscard]] QString textOfPolicy(const progression::Policy& policy, base::MassUnit unit);
[[nodiscard]] std::optional<progression::Policy> policyOf(const QString& text, base::MassUnit unit);

[[nodiscard]] QString textOfState(const progression::LiftState& state);
[[nodiscard]] std::optional<progression::LiftState> stateOf(const QString& text);

/// `R-5 R-3`.
[[nodiscard]] QString textOfRules(const progression::RuleList& rules);
[[nodiscard]] progression::RuleList rulesOf(const QString& text);

/// Everything of an event but an exposure's sets and its pain, which have columns of their own.
[[nodiscard]] QString textOfBody(const progression::EventBody& body);
/// The event again; `type` as in the open format, an exposure comes back without its sets.
[[nodiscard]] std::optional<progression::EventBody> bodyOf(const QString& type, const QString& text, int pain);

[[nodiscard]] base::MassUnit unitOf(const QString& text);
[[nodiscard]] QString textOfUnit(base::MassUnit unit);
[[nodiscard]] QString qstringOf(std::string_view text);

}  // namespace chalk::store
