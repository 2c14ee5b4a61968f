#include "ui/trends/line_charts.h"

#include "core/checkin/trend_figures.h"
#include "ui/common/formats.h"
#include "ui/trends/chart_axis.h"
#include "ui/trends/trend_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <numeric>

namespace chalk::ui::trends {

namespace {

using checkin::LiftTrend;
using common::TextStyle;
using common::Theme;

constexpr int kLineTicks = 5;
constexpr double kLineWidth = 2.25;
constexpr double kEndRadius = 4;
constexpr double kPointRadius = 3.5;
constexpr double kSpotRadius = 10;
constexpr double kLabelShare = 0.38;  // of the width, for the names at the ends
constexpr double kEndLabelGap = 10;
constexpr double kLowestMonotony = 1;
constexpr double kHighestMonotony = 2.5;

QString lineWords(const char* text)
{
    return QCoreApplication::translate("Trends", text);
}

QRectF around(const QPointF& place)
{
    return {place.x() - kSpotRadius, place.y() - kSpotRadius, 2 * kSpotRadius, 2 * kSpotRadius};
}

double xOfDay(const ChartFrame& frame, base::Date from, base::Date day)
{
    return frame.plot.left() + (day - from + 0.5) / 7.0 * frame.weekWidth();
}

/// One lift's line.
struct SingleLine {
    const LiftTrend* lift = nullptr;
    std::vector<QPointF> points;
};

QPen linePen(const LiftTrend& lift, const Theme& theme)
{
    const common::PatternFill& fill = theme.pattern(lift.pattern);
    QPen pen(fill.edge.isValid() ? fill.edge : fill.fill, kLineWidth, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    if (fill.texture != Qt::SolidPattern) {
        pen.setDashPattern({3, 2.5});
    }
    return pen;
}

QString singleWords(const LiftTrend& lift, const checkin::EstimatePoint& point)
{
    const auto text = [&lift](base::Mass mass) { return wholeText(checkin::massIn(mass, lift.unit)); };
    return lineWords("%1, %2: about %3 %4 (%5 to %6), an estimate")
        .arg(common::qstring(lift.name), common::dayText(point.date), text(point.median), common::unitText(lift.unit), text(point.lowest), text(point.highest));
}

std::vector<SingleLine> linesOf(const checkin::Trends& trends, const ChartFrame& frame, HotSpots& spots)
{
    std::vector<SingleLine> lines;
    for (const LiftTrend& lift : trends.lifts) {
        SingleLine line{&lift, {}};
        for (const checkin::EstimatePoint& point : lift.singles) {
            line.points.emplace_back(xOfDay(frame, trends.days.from, point.date), frame.yOf(checkin::massIn(point.median, lift.unit)));
            spots.push_back({around(line.points.back()), singleWords(lift, point)});
        }
        if (!line.points.empty()) {
            lines.push_back(line);
        }
    }
    return lines;
}

Ticks singleTicks(const checkin::Trends& trends)
{
    double low = 1e9;
    double high = 0;
    for (const LiftTrend& lift : trends.lifts) {
        for (const checkin::EstimatePoint& point : lift.singles) {
            const double value = checkin::massIn(point.median, lift.unit);
            low = std::min(low, value);
            high = std::max(high, value);
        }
    }
    return ticksFor(low, high, kLineTicks);
}

void paintEndLabels(QPainter& painter, const std::vector<SingleLine>& lines, const QRectF& room, const Theme& theme)
{
    const QFontMetricsF plain(theme.font(TextStyle::Micro));
    std::vector<double> places;
    for (const SingleLine& line : lines) {
        places.push_back(line.points.back().y());
    }
    const std::vector<double> middles = placedApart(places, plain.height(), room.top(), room.bottom());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const LiftTrend& lift = *lines[i].lift;
        const QString value = wholeText(checkin::massIn(lift.singles.back().median, lift.unit));
        QFont bold = theme.font(TextStyle::Micro);
        bold.setWeight(QFont::DemiBold);
        const double valueWidth = QFontMetricsF(bold).horizontalAdvance(value) + 4;
        const QString name = plain.elidedText(common::qstring(lift.name), Qt::ElideRight, room.width() - valueWidth - 6);
        const QRectF line(room.left(), middles[i] - plain.height() / 2, room.width(), plain.height());
        painter.setPen(theme.ink2);
        painter.setFont(theme.font(TextStyle::Micro));
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, name);
        painter.setPen(theme.ink);
        painter.setFont(bold);
        painter.drawText(line.adjusted(plain.horizontalAdvance(name) + 6, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, value);
    }
}

void paintLine(QPainter& painter, const SingleLine& line, const Theme& theme)
{
    const QPen pen = linePen(*line.lift, theme);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen);
    if (line.lift->hasLine()) {
        painter.drawPolyline(line.points.data(), static_cast<int>(line.points.size()));
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(pen.color());
    for (const QPointF& point : line.points) {
        if (!line.lift->hasLine() || point == line.points.back()) {
            painter.drawEllipse(point, kEndRadius, kEndRadius);
        }
    }
}

/// The grid with the band behind it.
void paintBand(QPainter& painter, const ChartFrame& frame, const Theme& theme)
{
    const double y = frame.yOf(checkin::kTooMuchAlike);
    const QRectF band(frame.plot.left(), frame.plot.top() - theme.scaled(6), frame.plot.width(), y - frame.plot.top() + theme.scaled(6));
    painter.fillRect(band, theme.warnBg);
    paintGrid(painter, frame, theme);
    painter.setPen(QPen(theme.warn, 1.5, Qt::DashLine));
    painter.drawLine(QPointF(band.left(), y), QPointF(band.right(), y));
    QFont bold = theme.font(TextStyle::Micro);
    bold.setWeight(QFont::DemiBold);
    painter.setFont(bold);
    painter.setPen(theme.warn);
    const QString text = lineWords("too much alike");
    const QFontMetricsF metrics(bold);
    const QRectF label(band.left() + 6, band.top() + 2, metrics.horizontalAdvance(text) + 6, metrics.height());
    painter.fillRect(label, theme.warnBg);
    painter.drawText(label, Qt::AlignLeft | Qt::AlignVCenter, text);
}

Ticks monotonyTicks(const checkin::Trends& trends)
{
    double low = kLowestMonotony;
    double high = kHighestMonotony;
    for (const checkin::TrendWeek& week : trends.weeks) {
        low = std::min(low, week.load.monotony.value_or(low));
        high = std::max(high, week.load.monotony.value_or(high));
    }
    return ticksFor(low, high, kLineTicks);
}

}  // namespace

std::vector<double> placedApart(const std::vector<double>& places, double height, double top, double bottom)
{
    std::vector<std::size_t> order(places.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&places](std::size_t a, std::size_t b) { return places[a] < places[b]; });
    std::vector<double> middles(places.size());
    double free = top;
    for (const std::size_t one : order) {
        middles[one] = std::max(places[one], free + height / 2);
        free = middles[one] + height / 2;
    }
    double limit = bottom;
    for (auto one = order.rbegin(); one != order.rend(); ++one) {
        middles[*one] = std::min(middles[*one], limit - height / 2);
        limit = middles[*one] - height / 2;
    }
    return middles;
}

HotSpots paintSingles(QPainter& painter, const QRectF& area, const checkin::Trends& trends, const Theme& theme)
{
    const double labels = kLabelShare * area.width();
    const ChartFrame frame = frameIn(area.adjusted(0, 0, -labels, 0), singleTicks(trends), static_cast<int>(trends.weeks.size()), theme);
    paintGrid(painter, frame, theme);
    paintWeeks(painter, frame, trends.weeks, theme);
    HotSpots spots;
    const std::vector<SingleLine> lines = linesOf(trends, frame, spots);
    for (const SingleLine& line : lines) {
        paintLine(painter, line, theme);
    }
    paintEndLabels(painter, lines, {frame.plot.right() + kEndLabelGap, area.top(), labels - kEndLabelGap, area.height()}, theme);
    return spots;
}

HotSpots paintMonotony(QPainter& painter, const QRectF& area, const checkin::Trends& trends, const Theme& theme)
{
    const ChartFrame frame = frameIn(area, monotonyTicks(trends), static_cast<int>(trends.weeks.size()), theme);
    paintBand(painter, frame, theme);
    paintWeeks(painter, frame, trends.weeks, theme);
    HotSpots spots;
    std::optional<QPointF> before;
    for (std::size_t i = 0; i < trends.weeks.size(); ++i) {
        const checkin::WeekLoad& load = trends.weeks[i].load;
        if (!load.monotony) {
            before.reset();
            continue;
        }
        const QPointF place(frame.middleOf(static_cast<int>(i)), frame.yOf(*load.monotony));
        painter.setPen(QPen(theme.ink2, kLineWidth, Qt::SolidLine, Qt::RoundCap));
        if (before) {
            painter.drawLine(*before, place);
        }
        before = place;
        spots.push_back({around(place), lineWords("Week of %1: monotony %2, strain %3")
                                            .arg(common::longDayText(trends.weeks[i].monday), QString::number(*load.monotony, 'f', 2), wholeText(*load.strain))});
    }
    for (const HotSpot& spot : spots) {
        const bool isOver = spot.area.center().y() <= frame.yOf(checkin::kTooMuchAlike);
        painter.setPen(QPen(isOver ? theme.warn : theme.ink2, 2));
        painter.setBrush(isOver ? theme.warn : theme.surface);
        painter.drawEllipse(spot.area.center(), kPointRadius, kPointRadius);
    }
    return spots;
}

}  // namespace chalk::ui::trends
