#pragma once

#include "core/exchange/json_reading.h"
#include "core/planning/plan_draft.h"

#include <QJsonObject>

namespace chalk::exchange {

/// The coach's part of a starting plan: `template`, `wishes` by pattern (`stage` and `reason`, `exercise`, `equipment`, `first_load`, `left_out`),
/// `slots` (`session`, `weekday` 0 to 6, `start` as HH:MM), `first_day`. All may be absent; what is there is checked.
[[nodiscard]] JsonResult<planning::PlanDraft> readPlanDraft(const QJsonValue& value, const std::string& path);

/// The same again; read back it is equal. What the coach left as suggested is left out.
[[nodiscard]] QJsonObject toJson(const planning::PlanDraft& draft);

}  // namespace chalk::exchange
