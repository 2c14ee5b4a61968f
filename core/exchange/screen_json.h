#pragma once

#include "core/exchange/json_reading.h"
#include "core/screens/screen_catalogue.h"

namespace chalk::exchange {

/// Reads how the patterns are screened, strictly. A fault names the place: `patterns[2].points[4].key`, or line and column where the
/// text is no JSON.
[[nodiscard]] JsonResult<screens::ScreenCatalogue> readScreenCatalogue(const QByteArray& text, const lifts::Catalogue& lifts);

/// The one that comes with the program. It is sound: a test reads it.
[[nodiscard]] screens::ScreenCatalogue builtInScreenCatalogue(const lifts::Catalogue& lifts);

/// What a coach marked, as JSON; read back it is the same. `path` names it in faults.
[[nodiscard]] QJsonObject toJson(const screens::MovementScreen& screen);
[[nodiscard]] QJsonObject toJson(const screens::PatternScreen& screen);
[[nodiscard]] JsonResult<screens::MovementScreen> readMovementScreen(const QJsonValue& value, const std::string& path);
[[nodiscard]] JsonResult<screens::PatternScreen> readPatternScreen(const QJsonValue& value, const std::string& path);

}  // namespace chalk::exchange
