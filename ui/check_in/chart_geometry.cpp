#include "ui/check_in/chart_geometry.h"

#include <algorithm>
#include <cmath>

namespace chalk::ui::check_in {

namespace {

// Pixels at a text size of 100 %.
constexpr double kTitleRoom = 38;
constexpr double kDayRoom = 26;
constexpr double kValueRoom = 52;
constexpr double kRowNameRoom = 66;
constexpr double kEdge = 16;
constexpr double kMarksEdge = 28;
constexpr double kEndRoom = 106;
constexpr double kMarksHeight = 34;
constexpr double kDayLabel = 52;

double leftRoom(const ChartScene& scene)
{
    return scene.style == ChartStyle::Stages ? kRowNameRoom : scene.style == ChartStyle::Marks ? kMarksEdge : kValueRoom;
}

double rightRoom(const ChartScene& scene)
{
    const bool hasEnd = (scene.style == ChartStyle::Band && !scene.last.isEmpty()) || (scene.style == ChartStyle::Lines && !scene.series.empty());
    return hasEnd ? kEndRoom : kEdge;
}

bool hasPoints(const ChartScene& scene)
{
    return std::ranges::any_of(scene.series, [](const ChartSeries& series) { return !series.points.empty(); });
}

}  // namespace

double ChartFrame::xOf(base::Date date) const
{
    const int span = std::max(1, days.to - days.from + 1);
    return plot.left() + plot.width() * (date - days.from) / span;
}

double ChartFrame::yOf(double value) const
{
    return plot.bottom() - plot.height() * (value - axis.low) / (axis.high - axis.low);
}

QRectF ChartFrame::rectOf(const checkin::DayRange& range) const
{
    const double left = std::clamp(xOf(range.from), plot.left(), plot.right());
    const double right = std::clamp(xOf(range.to + 1), plot.left(), plot.right());
    return {left, plot.top(), right - left, plot.height()};
}

QRectF ChartFrame::rowRect(std::size_t row) const
{
    const double height = plot.height() / static_cast<double>(std::max<std::size_t>(rows, 1));
    return {plot.left(), plot.top() + height * static_cast<double>(row), plot.width(), height};
}

QPointF ChartFrame::at(const ChartPoint& point, std::size_t series) const
{
    const double day = xOf(point.date + 1) - xOf(point.date);
    const double x = xOf(point.date) + (style == ChartStyle::Bars ? 3.5 * day : day / 2);
    switch (style) {
    case ChartStyle::Stages:
        return {x, rowRect(series).center().y()};
    case ChartStyle::Marks:
        return {x, plot.center().y() + (point.date.weekday() / 2 % 2 == 0 ? -0.25 : 0.25) * plot.height()};
    case ChartStyle::Band:
    case ChartStyle::Bars:
    case ChartStyle::Lines:
        break;
    }
    return {x, yOf(point.value)};
}

ChartFrame chartFrame(const ChartScene& scene, const QSizeF& size, const common::Theme& theme)
{
    ChartFrame frame;
    frame.days = scene.days;
    frame.axis = scene.axis;
    frame.style = scene.style;
    frame.rows = scene.rows.size();
    const double left = theme.scaled(leftRoom(scene));
    const double top = theme.scaled(kTitleRoom);
    const double width = std::max(10.0, size.width() - left - theme.scaled(rightRoom(scene)));
    const double height = scene.style == ChartStyle::Marks ? theme.scaled(kMarksHeight) : size.height() - top - theme.scaled(kDayRoom);
    frame.plot = QRectF(left, top, width, std::max(10.0, height));
    return frame;
}

std::vector<base::Date> labelledDays(const ChartFrame& frame, const common::Theme& theme)
{
    const double week = frame.xOf(frame.days.from + 7) - frame.plot.left();
    int every = 1;
    while (every < 8 && week * every < theme.scaled(kDayLabel)) {
        every *= 2;
    }
    std::vector<base::Date> days;
    for (base::Date day = frame.days.from; day <= frame.days.to; day = day + 7 * every) {
        days.push_back(day);
    }
    return days;
}

std::optional<PointIndex> nearestPoint(const ChartScene& scene, const ChartFrame& frame, const QPointF& at, double reach)
{
    std::optional<PointIndex> best;
    double least = reach;
    for (std::size_t series = 0; series < scene.series.size(); ++series) {
        for (std::size_t point = 0; point < scene.series[series].points.size(); ++point) {
            const QPointF place = frame.at(scene.series[series].points[point], series);
            const double away = std::abs(place.x() - at.x()) + 0.1 * std::abs(place.y() - at.y());
            if (away <= least) {
                least = away;
                best = PointIndex{series, point};
            }
        }
    }
    return best;
}

std::optional<PointIndex> steppedPoint(const ChartScene& scene, std::optional<PointIndex> from, int by)
{
    if (!hasPoints(scene)) {
        return std::nullopt;
    }
    if (!from || pointAt(scene, from) == nullptr) {
        const auto first = std::ranges::find_if(scene.series, [](const ChartSeries& series) { return !series.points.empty(); });
        return PointIndex{static_cast<std::size_t>(first - scene.series.begin()), by < 0 ? first->points.size() - 1 : 0};
    }
    const auto last = static_cast<long>(scene.series[from->series].points.size()) - 1;
    return PointIndex{from->series, static_cast<std::size_t>(std::clamp(static_cast<long>(from->point) + by, 0L, last))};
}

std::optional<PointIndex> otherSeriesPoint(const ChartScene& scene, std::optional<PointIndex> from, int by)
{
    const ChartPoint* here = pointAt(scene, from);
    if (here == nullptr) {
        return steppedPoint(scene, std::nullopt, 1);
    }
    for (long series = static_cast<long>(from->series) + by; series >= 0 && series < static_cast<long>(scene.series.size()); series += by) {
        const auto& points = scene.series[static_cast<std::size_t>(series)].points;
        if (!points.empty()) {
            const auto nearest = std::ranges::min_element(points, {}, [here](const ChartPoint& one) { return std::abs(one.date - here->date); });
            return PointIndex{static_cast<std::size_t>(series), static_cast<std::size_t>(nearest - points.begin())};
        }
    }
    return from;
}

const ChartPoint* pointAt(const ChartScene& scene, const std::optional<PointIndex>& index)
{
    return index && index->series < scene.series.size() && index->point < scene.series[index->series].points.size()
               ? &scene.series[index->series].points[index->point]
               : nullptr;
}

}  // namespace chalk::ui::check_in
