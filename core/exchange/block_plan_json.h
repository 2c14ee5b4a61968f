#pragma once

#include "core/direction/block_plan.h"
#include "core/exchange/json_reading.h"

#include <QJsonObject>

namespace chalk::exchange {

/// A plan after the beginner months: `direction`, `wave`, `weeks`, `sessions`, `ends_with_test`, `start`, `lifts` (`lift`, `role`, `exposures`), and
/// `plan`: for each week `monday`, `phase`, `kind` and `work`, for each lift a list of exposures (`aim`, `sets`, `reps`, `reps_most`, `percent` with
/// one decimal, `rest_s`, `reserve`, `pause`, `test`). All of it is checked: ranges, rising Mondays, one list of exposures for each lift.
[[nodiscard]] JsonResult<direction::BlockPlan> readBlockPlan(const QJsonValue& value, const std::string& path);

/// The same again; read back it is equal.
[[nodiscard]] QJsonObject toJson(const direction::BlockPlan& plan);

}  // namespace chalk::exchange
