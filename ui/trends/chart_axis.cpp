#include "ui/trends/chart_axis.h"

#include "ui/common/formats.h"
#include "ui/trends/trend_words.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace chalk::ui::trends {

namespace {

constexpr double kLabelGap = 8;
constexpr double kWidestLabel = 200;
constexpr double kFootHeight = 26;
constexpr double kHeadRoom = 10;
constexpr double kDateGap = 10;
constexpr std::array kTickSteps{1.0, 2.0, 2.5, 5.0, 10.0};
constexpr double kAlmost = 1e-9;

/// The smallest round step of at least `least`.
double roundStep(double least)
{
    const double power = std::pow(10, std::floor(std::log10(least)));
    for (const double step : kTickSteps) {
        if (step * power >= least * (1 - kAlmost)) {
            return step * power;
        }
    }
    return 10 * power;
}

bool isNewMonth(const std::vector<checkin::TrendWeek>& weeks, std::size_t week, std::size_t shownBefore)
{
    return week == 0 || weeks[week].monday.ymd().month() != weeks[shownBefore].monday.ymd().month();
}

QString dateLabel(base::Date monday, bool hasMonth)
{
    return hasMonth ? common::shortDayText(monday) : QString::number(static_cast<unsigned>(monday.ymd().day()));
}

}  // namespace

int Ticks::digits() const
{
    int digits = 0;
    for (double rest = step; digits < 3 && std::abs(rest - std::round(rest)) > kAlmost; rest *= 10) {
        ++digits;
    }
    return digits;
}

Ticks ticksFor(double lowest, double highest, int most)
{
    if (highest - lowest < kAlmost) {
        const double room = std::max(1.0, std::abs(highest) / 10);
        return ticksFor(lowest - room, highest + room, most);
    }
    double step = roundStep((highest - lowest) / most);
    while (std::ceil(highest / step - kAlmost) - std::floor(lowest / step + kAlmost) > most) {
        step = roundStep(step * 1.01);
    }
    const double first = std::floor(lowest / step + kAlmost) * step;
    return {first, step, std::max(2, static_cast<int>(std::lround((std::ceil(highest / step - kAlmost) * step - first) / step)) + 1)};
}

double ChartFrame::yOf(double value) const
{
    return plot.bottom() - (value - ticks.first) / (ticks.last() - ticks.first) * plot.height();
}

ChartFrame frameIn(const QRectF& area, const Ticks& ticks, int weeks, const common::Theme& theme)
{
    const QFontMetricsF metrics(theme.font(common::TextStyle::Micro));
    double width = 0;
    for (int tick = 0; tick < ticks.count; ++tick) {
        width = std::max(width, metrics.horizontalAdvance(tickText(ticks, tick)));
    }
    return {area.adjusted(width + kLabelGap, theme.scaled(kHeadRoom), 0, -theme.scaled(kFootHeight)), ticks, weeks};
}

void paintGrid(QPainter& painter, const ChartFrame& frame, const common::Theme& theme)
{
    painter.setFont(theme.font(common::TextStyle::Micro));
    const double half = QFontMetricsF(painter.font()).height() / 2;
    for (int tick = 0; tick < frame.ticks.count; ++tick) {
        const double y = std::round(frame.yOf(frame.ticks.at(tick))) + 0.5;
        painter.setPen(QPen(tick == 0 ? theme.line2 : theme.grid, 1));
        painter.drawLine(QPointF(frame.plot.left(), y), QPointF(frame.plot.right(), y));
        painter.setPen(theme.ink3);
        painter.drawText(QRectF(frame.plot.left() - kLabelGap - kWidestLabel, y - half, kWidestLabel, 2 * half), Qt::AlignRight | Qt::AlignVCenter, tickText(frame.ticks, tick));
    }
}

void paintWeeks(QPainter& painter, const ChartFrame& frame, const std::vector<checkin::TrendWeek>& weeks, const common::Theme& theme)
{
    painter.setFont(theme.font(common::TextStyle::Micro));
    painter.setPen(theme.ink3);
    const QFontMetricsF metrics(painter.font());
    const double top = frame.plot.bottom() + theme.scaled(kLabelGap) / 2;
    double freeFrom = frame.plot.left() - frame.weekWidth();
    std::size_t shownBefore = 0;
    for (std::size_t week = 0; week < weeks.size(); ++week) {
        const QString text = dateLabel(weeks[week].monday, isNewMonth(weeks, week, shownBefore));
        const double width = metrics.horizontalAdvance(text);
        const double left = frame.middleOf(static_cast<int>(week)) - width / 2;
        if (left < freeFrom || left + width > frame.plot.right() + frame.weekWidth()) {
            continue;
        }
        painter.drawText(QRectF(left - 1, top, width + 2, metrics.height()), Qt::AlignCenter, text);
        freeFrom = left + width + theme.scaled(kDateGap);
        shownBefore = week;
    }
}

QString tickText(const Ticks& ticks, int tick)
{
    const int digits = ticks.digits();
    return digits == 0 ? wholeText(ticks.at(tick)) : QString::number(ticks.at(tick), 'f', digits);
}

}  // namespace chalk::ui::trends
