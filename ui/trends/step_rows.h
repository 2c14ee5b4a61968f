#pragma once

#include "ui/trends/chart_view.h"

#include "core/checkin/trends.h"

namespace chalk::ui::trends {

/// Target reps and rest as small step lines, a lift a row; lifts that did not leave Base load have none. Where there is no room for all, the last row
/// says how many more the table has. Answers a spot for each row.
HotSpots paintSteps(QPainter& painter, const QRectF& area, const checkin::Trends& trends, const common::Theme& theme);

/// The lifts that have a row.
[[nodiscard]] std::vector<const checkin::LiftTrend*> liftsWithSteps(const checkin::Trends& trends);

}  // namespace chalk::ui::trends
