#pragma once

#include "core/exchange/studio_document.h"

#include <string>

namespace chalk::exchange {

/// The line of a plain exposure (see isPlainExposure), the same bytes as of its object, without an object for each of its sets.
[[nodiscard]] std::string exposureLine(const DocumentEvent& entry, lifts::Measure measure);

}  // namespace chalk::exchange
