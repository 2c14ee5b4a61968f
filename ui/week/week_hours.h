#pragma once

#include "ui/week/week_scene.h"

namespace chalk::ui::week {

/// Chooses the days and the hours on show and folds what is closed on every day. The blocks are there already.
void addHours(WeekScene& scene, const chalk::week::WeekFacts& facts);
/// Adds what is hatched: closed hours of a day, hours that a coach is not there.
void addHatched(WeekScene& scene, const chalk::week::WeekFacts& facts);

}  // namespace chalk::ui::week
