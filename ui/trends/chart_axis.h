#pragma once

#include "core/checkin/trends.h"
#include "ui/common/theme.h"

#include <QRectF>
#include <QStringList>

#include <functional>
#include <vector>

class QPainter;

namespace chalk::ui::trends {

/// Round numbers for an axis, evenly apart, the first at or below the lowest value and the last at or above the highest.
struct Ticks {
    double first = 0;
    double step = 1;
    int count = 2;

    [[nodiscard]] double at(int tick) const { return first + tick * step; }
    [[nodiscard]] double last() const { return at(count - 1); }
    /// Digits behind the point that tell the ticks apart.
    [[nodiscard]] int digits() const;
};

/// Between 2 and `most` + 1 ticks, steps of 1, 2, 2.5 or 5 times a power of ten. Equal values get room around them.
[[nodiscard]] Ticks ticksFor(double lowest, double highest, int most);

/// The part of a chart that values are drawn in: weeks from left to right, values by the ticks.
struct ChartFrame {
    QRectF plot;
    Ticks ticks;
    int weeks = 1;

    [[nodiscard]] double weekWidth() const { return plot.width() / weeks; }
    /// The middle of a week's column; a day's place is `day` sevenths further from its Monday.
    [[nodiscard]] double middleOf(int week) const { return plot.left() + (week + 0.5) * weekWidth(); }
    [[nodiscard]] double yOf(double value) const;
};

/// Room for the labels of an axis around a plot in `area`.
[[nodiscard]] ChartFrame frameIn(const QRectF& area, const Ticks& ticks, int weeks, const common::Theme& theme);

/// Horizontal lines with their values at the left.
void paintGrid(QPainter& painter, const ChartFrame& frame, const common::Theme& theme);
/// `7 Sep`, then the day alone until the month changes; some are left out where there is no room.
void paintWeeks(QPainter& painter, const ChartFrame& frame, const std::vector<checkin::TrendWeek>& weeks, const common::Theme& theme);

/// How a value of an axis is written.
[[nodiscard]] QString tickText(const Ticks& ticks, int tick);

}  // namespace chalk::ui::trends
