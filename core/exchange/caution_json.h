#pragma once

#include "core/clients/client.h"
#include "core/exchange/json_reading.h"

namespace chalk::exchange {

/// Reads a caution: `body_part`, `text`, `short`, `tags`, and `until` where it ends. What is wrong becomes the fault of the reader.
[[nodiscard]] clients::Caution cautionOf(ObjectReader& reader);

}  // namespace chalk::exchange
