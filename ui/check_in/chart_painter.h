#pragma once

#include "ui/check_in/chart_geometry.h"

class QPainter;

namespace chalk::ui::check_in {

/// What lies behind the series: the ground of lighter weeks, layoffs, pain and the flat stretch. Each has a texture, a colour and, where it has
/// room, a word.
void paintBehind(QPainter& painter, const ChartScene& scene, const ChartFrame& frame, const common::Theme& theme);
/// What lies before them: titles, days, the bracket, rows of stages, squares of sessions, words at the ends; and the chosen point with its value.
void paintBefore(QPainter& painter, const ChartScene& scene, const ChartFrame& frame, const QSizeF& size, const std::optional<PointIndex>& chosen,
                 const common::Theme& theme);

}  // namespace chalk::ui::check_in
