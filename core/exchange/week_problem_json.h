#pragma once

#include "core/exchange/json_reading.h"
#include "core/week/week_problem.h"

#include <QJsonObject>

namespace chalk::exchange {

/// Reads a week to be planned, strictly; the figures are those of week::WeekProblem, times in whole minutes, and who is named is named by id.
/// Must be there: `name`, `grid` (15 or 30), `open`, `coaches` (1 to 60) with `id`, `capacity` and `windows`, `clients` with `id`, `available` and
/// `coaches` (what each accepted one costs, by id), `sessions` with `id`, `client` and `duration`; all else has the default of its type.
/// Spans are `[day, from, to]`. `level`, `holiday` and `seed`, which say how a week was made up, are passed over.
/// Refused are ids that are unknown or there twice, figures out of range and spans that end before they begin. What contradicts itself but
/// can be read (nobody's hours long enough, a locked session outside of them) is not: planning says so.
[[nodiscard]] JsonResult<week::WeekProblem> readWeekProblem(const QJsonValue& value);

/// The same again; read back it is equal, the coaches that a client accepts in the order of the problem's.
[[nodiscard]] QJsonObject toJson(const week::WeekProblem& problem);

}  // namespace chalk::exchange
