#pragma once

#include "core/exchange/json_reading.h"
#include "core/screens/pattern_screen.h"

namespace chalk::exchange {

/// What a coach marked, as JSON; read back it is equal.
[[nodiscard]] QJsonObject toJson(const screens::MovementScreen& screen);
[[nodiscard]] QJsonObject toJson(const screens::PatternScreen& screen);

/// Reads it, strictly. `path` names it in faults: empty at the top. The eight patterns may stand in any order, each once.
[[nodiscard]] JsonResult<screens::MovementScreen> readMovementScreen(const QJsonValue& value, const std::string& path);
[[nodiscard]] JsonResult<screens::PatternScreen> readPatternScreen(const QJsonValue& value, const std::string& path);

}  // namespace chalk::exchange
