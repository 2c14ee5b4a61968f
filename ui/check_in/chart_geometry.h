#pragma once

#include "ui/check_in/chart_scene.h"
#include "ui/common/theme.h"

#include <QRectF>
#include <QSizeF>

#include <optional>
#include <vector>

namespace chalk::ui::check_in {

/// A point of a chart: its series and its place in it.
struct PointIndex {
    std::size_t series = 0;
    std::size_t point = 0;

    bool operator==(const PointIndex&) const = default;
};

/// Where everything of a chart is, in pixels.
struct ChartFrame {
    QRectF plot;
    checkin::DayRange days;
    ValueAxis axis;
    ChartStyle style = ChartStyle::Band;
    std::size_t rows = 0;

    /// The left edge of a day.
    [[nodiscard]] double xOf(base::Date date) const;
    [[nodiscard]] double yOf(double value) const;
    /// From the first day's left edge to the last one's right edge, kept inside the plot; the plot's height.
    [[nodiscard]] QRectF rectOf(const checkin::DayRange& days) const;
    [[nodiscard]] QRectF rowRect(std::size_t row) const;
    /// The middle of a point: of its day, of a bar's week, of a row's stretch. Marks lie in two rows, those of Wednesday, Thursday and
    /// Sunday in the lower one, so that sessions of one week do not cover each other.
    [[nodiscard]] QPointF at(const ChartPoint& point, std::size_t series) const;
};

/// The frame of a scene in a room of `size`.
[[nodiscard]] ChartFrame chartFrame(const ChartScene& scene, const QSizeF& size, const common::Theme& theme);
/// The Mondays that have a label: every one, every second or every fourth, as many as have room.
[[nodiscard]] std::vector<base::Date> labelledDays(const ChartFrame& frame, const common::Theme& theme);

/// The point nearest to a place, by days first; nothing where there is none within `reach` pixels beside it.
[[nodiscard]] std::optional<PointIndex> nearestPoint(const ChartScene& scene, const ChartFrame& frame, const QPointF& at, double reach);
/// The point `by` further in its series; the first where there was none. Stays at the ends.
[[nodiscard]] std::optional<PointIndex> steppedPoint(const ChartScene& scene, std::optional<PointIndex> from, int by);
/// The point of the next series nearest in days; nothing where the chart has no points.
[[nodiscard]] std::optional<PointIndex> otherSeriesPoint(const ChartScene& scene, std::optional<PointIndex> from, int by);
[[nodiscard]] const ChartPoint* pointAt(const ChartScene& scene, const std::optional<PointIndex>& index);

}  // namespace chalk::ui::check_in
