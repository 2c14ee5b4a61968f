#pragma once

#include "ui/week/week_scene.h"

#include <QString>

namespace chalk::ui::week {

/// A block for screen readers: `Thursday 17:30 to 18:30, Ines: Sefa Reid. 1 of 1 places. Locked. Proposed.`
[[nodiscard]] QString blockSpoken(const WeekScene& scene, const WeekBlock& block);

}  // namespace chalk::ui::week
