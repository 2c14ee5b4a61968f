#pragma once

#include "ui/trends/chart_view.h"

#include "core/checkin/trends.h"

namespace chalk::ui::trends {

/// Estimated best singles by lift over the weeks, named at the line's end. A lift with too few estimates for a line has points. Answers a spot for each
/// estimate. The values are in each lift's own unit.
HotSpots paintSingles(QPainter& painter, const QRectF& area, const checkin::Trends& trends, const common::Theme& theme);

/// Monotony by week with the band of days that are too much alike. Weeks without a number break the line. Answers a spot for each number.
HotSpots paintMonotony(QPainter& painter, const QRectF& area, const checkin::Trends& trends, const common::Theme& theme);

/// Moves labels apart that stand at `places`, from the top, so that each has `height`, within `top` and `bottom` as far as there is room. Answers their
/// middles in the order given.
[[nodiscard]] std::vector<double> placedApart(const std::vector<double>& places, double height, double top, double bottom);

}  // namespace chalk::ui::trends
