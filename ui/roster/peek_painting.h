#pragma once

#include "ui/common/theme.h"
#include "ui/roster/roster_reach.h"
#include "ui/roster/roster_row.h"

class QPainter;

namespace chalk::ui::roster {

/// Draws the peek at the top left of the painter's window; with no painter it is only measured. Answers the height, in pixels.
double paintPeek(QPainter* painter, double width, const RosterRow& row, const common::Theme& theme, RosterReach reach);

}  // namespace chalk::ui::roster
