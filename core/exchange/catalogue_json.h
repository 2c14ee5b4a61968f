#pragma once

#include "core/exchange/json_reading.h"
#include "core/lifts/catalogue.h"

#include <QByteArray>

namespace chalk::exchange {

/// Reads a catalogue of lifts; a fault names the exercise by its index and key.
[[nodiscard]] JsonResult<lifts::Catalogue> readCatalogue(const QByteArray& text);

/// The catalogue that comes with the program. It is sound: a test reads it.
[[nodiscard]] lifts::Catalogue builtInCatalogue();

}  // namespace chalk::exchange
