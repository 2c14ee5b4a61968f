#pragma once

#include "core/exchange/lift_history_json.h"

#include <QString>

#include <functional>

namespace chalk::exchange {

/// The sentence for people about a prescription, after the rules that were decided by last. `machine` knows the lift as it is now.
using TraceWords = std::function<QString(const progression::RuleList& decided, const progression::Prescription& next, const progression::LiftMachine& machine)>;

/// Runs one lift's history through the rules: `decisions`, one for each event in the order judged, and `next`, what is due on the
/// history's `as_of`, or on the last event's day. A fault names the event by its index, where it is in one, and the field.
[[nodiscard]] JsonResult<QJsonObject> traceOf(const QByteArray& history, const TraceWords& words);

}  // namespace chalk::exchange
