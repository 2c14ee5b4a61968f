#pragma once

#include "ui/week/week_painter.h"

#include <optional>

namespace chalk::ui::week {

/// Where the first conflict is said: below its block; nothing where there is none, or where something else lies.
[[nodiscard]] std::optional<QRectF> balloonRect(const WeekPicture& picture);
/// The conflict in words, and what would help as a link.
void paintBalloon(QPainter& painter, const WeekPicture& picture);

}  // namespace chalk::ui::week
