#pragma once

#include "core/exchange/json_reading.h"
#include "core/lifts/catalogue.h"

#include <QByteArray>

namespace chalk::exchange {

/// Reads a catalogue of lifts, strictly. A fault names the place: `exercises[12].harder`, or line and column where the text is
/// no JSON.
[[nodiscard]] JsonResult<lifts::Catalogue> readCatalogue(const QByteArray& text);

/// The catalogue that comes with the program. It is sound: a test reads it.
[[nodiscard]] lifts::Catalogue builtInCatalogue();

}  // namespace chalk::exchange
