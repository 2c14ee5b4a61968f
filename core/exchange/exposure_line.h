#pragma once

#include "core/exchange/studio_document.h"

#include <QByteArray>

namespace chalk::exchange {

/// The line of a plain exposure (see isPlainExposure), the same bytes as of its object, without an object for each of its sets.
[[nodiscard]] QByteArray exposureLine(const DocumentEvent& entry, lifts::Measure measure);

}  // namespace chalk::exchange
