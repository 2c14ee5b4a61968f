#pragma once

#include "core/exchange/json_reading.h"
#include "core/planning/rotation.h"

#include <QJsonObject>

namespace chalk::exchange {

/// Reads a group that shares one slot, strictly; the figures are those of planning::RotationRequest, times in whole seconds.
/// `clients` (1 to 6) must be there: each with `name` and `lifts` (1 to 8). A lift must have `name`, `pattern`, `sets` and `work_seconds`, and may
/// have `rest_seconds` after each set (0 where left out), `set_up_seconds` (0), `station` (none) and `block` (0).
/// `stations` may be there: each with `key`, which the lifts name, and `units` (1 where left out). What is read is sound.
[[nodiscard]] JsonResult<planning::RotationRequest> readRotationRequest(const QJsonValue& value);

/// The same again; read back it is equal. A figure that is what a missing one stands for is left out, but for `units`.
[[nodiscard]] QJsonObject toJson(const planning::RotationRequest& request);

/// Who does what when, times in seconds from the start of the slot: `clients` in the order of the request, each with `name`, `turns`,
/// `waited_seconds`, `end_seconds` and `pattern_repeated`; `waited_seconds` and `end_seconds` of all; `proved`. A turn has `lift` (its place among the
/// lifts of the client, counted from 0), `name`, `begin_seconds`, `end_seconds`, `waited_seconds` before it, and `station` with `unit` (counted
/// from 1) or null for both. The rotation is one of the request.
[[nodiscard]] QJsonObject toJson(const planning::Rotation& rotation, const planning::RotationRequest& request);

}  // namespace chalk::exchange
