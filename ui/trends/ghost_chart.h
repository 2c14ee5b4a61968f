#pragma once

#include "ui/trends/chart_view.h"
#include "ui/trends/trend_words.h"

#include <cstdint>

namespace chalk::ui::trends {

/// What will be here once there are enough numbers.
enum class GhostShape : std::uint8_t { Bars, Line, Steps, Wave };

/// The coming chart, dotted, with what starts it and when under it.
HotSpots paintGhost(QPainter& painter, const QRectF& area, GhostShape shape, const GapWords& words, const common::Theme& theme);

}  // namespace chalk::ui::trends
