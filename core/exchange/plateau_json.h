#pragma once

#include "core/exchange/plateau_csv.h"

#include <QJsonObject>

namespace chalk::exchange {

/// A verdict and why: `client`, `lift`, `check_date`, `verdict`, `reason` and `strength` (null where there is none), `watch`; `slow` and `stopped`, how
/// likely it is that the gain is below 0.5 % a week and that there is none (null where it is not judged); and `evidence`, the figures of
/// plateau::PlateauEvidence, changes in per cent a training week. With `hasTrace` also `trace`, by the names of traceCsvOf; what was not worked out
/// is null.
[[nodiscard]] QJsonObject toJson(const JudgedCheck& judged, bool hasTrace);

}  // namespace chalk::exchange
