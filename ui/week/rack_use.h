#pragma once

#include "ui/week/week_scene.h"

namespace chalk::ui::week {

/// Adds how many racks there are and when each is in use, by the quarter of an hour. The blocks are there already.
void addRackUse(WeekScene& scene, const WeekInput& input);

}  // namespace chalk::ui::week
