#pragma once

#include "core/exchange/json_reading.h"
#include "core/lifts/equipment.h"

namespace chalk::exchange {

/// Reads `{"kind": "barbell", "bar": 20, "pairs": [[20, 2], …]}`, `{"kind": "fixed", "loads": […]}`,
/// `{"kind": "stack", "from": 5, "to": 100, "step": 5}` or `{"kind": "body", "loads": […]}`. `path` names it in faults. What is read
/// can give at least one load.
[[nodiscard]] JsonResult<lifts::Equipment> readEquipment(const QJsonValue& value, const std::string& path);

/// The same, written.
[[nodiscard]] QJsonObject toJson(const lifts::Equipment& equipment);

/// A load as a JSON number of its unit.
[[nodiscard]] double numberOf(base::Load load);

}  // namespace chalk::exchange
