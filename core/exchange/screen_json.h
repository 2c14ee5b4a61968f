#pragma once

#include "core/exchange/json_reading.h"
#include "core/screens/screen_catalogue.h"

namespace chalk::exchange {

/// Reads how the patterns are screened, strictly. A fault names the place: `patterns[2].points[4].key`, or line and column where the
/// text is no JSON.
[[nodiscard]] JsonResult<screens::ScreenCatalogue> readScreenCatalogue(const QByteArray& text, const lifts::Catalogue& lifts);

/// The one that comes with the program. It is sound: a test reads it.
[[nodiscard]] screens::ScreenCatalogue builtInScreenCatalogue(const lifts::Catalogue& lifts);

}  // namespace chalk::exchange
