#pragma once

#include "core/lifts/exercise.h"

#include <QString>

namespace chalk::ui::common {

/// `Barbell and plates`, `Pair of dumbbells`; `Nothing` for none.
[[nodiscard]] QString kitName(lifts::EquipmentKind kind);

}  // namespace chalk::ui::common
