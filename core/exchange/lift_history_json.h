#pragma once

#include "core/exchange/json_reading.h"
#include "core/progression/event.h"
#include "core/progression/lift_machine.h"

#include <QByteArray>

#include <optional>
#include <vector>

namespace chalk::exchange {

/// One lift's history as it is traced: where it starts, what happened, and the day to prescribe for.
struct LiftHistory {
    progression::LiftSetup setup;
    std::vector<progression::Event> events;
    std::optional<base::Date> asOf;
};

/// Reads a history; the reason of a fault names line and column where the text is no JSON. What depends on the state (a `set`
/// in a stage that has no use for a field) is found by the replay.
[[nodiscard]] JsonResult<LiftHistory> readLiftHistory(const QByteArray& text);

/// A prescription as the trace writes it; `why` is the sentence for people.
[[nodiscard]] QJsonObject toJson(const progression::Prescription& prescription, const QString& why);

/// The names of the rules that fired.
[[nodiscard]] QJsonArray toJson(const progression::RuleList& rules);

}  // namespace chalk::exchange
