#pragma once

#include "core/exchange/json_reading.h"
#include "core/progression/block.h"

#include <QJsonObject>

namespace chalk::exchange {

/// The block that the fields of an event say: `single` (an effective load, absent where there are no weeks), `tested`, `note` and `weeks`: for each
/// `monday`, `lighter` and `work`, its exposures (`sets`, `reps`, `reps_most`, `percent` with one decimal, `rest_s`, `reserve`, `pause`, `test`).
/// Every range is checked. The fields that all events have are the caller's.
[[nodiscard]] progression::Block readBlock(ObjectReader& reader);

/// Adds the same fields; read back it is equal.
void putBlock(QJsonObject& object, const progression::Block& block);

}  // namespace chalk::exchange
