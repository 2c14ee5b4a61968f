#pragma once

#include "core/exchange/json_reading.h"
#include "core/week/week_problem.h"

#include <QJsonObject>

namespace chalk::exchange {

/// A plan: `instance`, the name of its problem; `objective`, what it costs in all; `plan`, one entry a session in the order of the problem, with
/// `session`, `coach` (ids) and `start` in minutes since Monday, both null where it is left over. The plan is one of the problem.
[[nodiscard]] QJsonObject toJson(const week::WeekPlan& plan, const week::WeekProblem& problem, long objective);

/// Reads a plan of a problem, in any order of sessions; one that is not there is left over. `instance` and `objective` may be left out and
/// are not judged. Refused are ids that the problem does not have, a session that is there twice, and a coach without a start.
[[nodiscard]] JsonResult<week::WeekPlan> readWeekPlan(const QJsonValue& value, const week::WeekProblem& problem);

}  // namespace chalk::exchange
