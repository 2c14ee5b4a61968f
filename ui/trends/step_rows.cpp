#include "ui/trends/step_rows.h"

#include "ui/common/formats.h"
#include "ui/trends/trend_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>

namespace chalk::ui::trends {

namespace {

using checkin::LiftTrend;
using checkin::TargetStep;
using common::TextStyle;
using common::Theme;

constexpr double kHeadHeight = 22;
constexpr double kLeastRow = 27;
constexpr double kMostRow = 56;
constexpr double kRepsTextWidth = 60;  // `10→12`
constexpr double kRestTextWidth = 40;
constexpr double kStepInset = 7;
constexpr double kStepWidth = 2;
constexpr double kStepEnd = 3.5;

QString stepWords(const char* text)
{
    return QCoreApplication::translate("Trends", text);
}

/// The columns of a row, from the left.
struct StepColumns {
    QRectF name;
    QRectF reps;
    QRectF repsText;
    QRectF rest;
    QRectF restText;
};

StepColumns columnsIn(const QRectF& row, const Theme& theme)
{
    const double repsText = theme.scaled(kRepsTextWidth);
    const double name = row.width() * 0.31;
    const double chart = (row.width() - name - repsText - theme.scaled(kRestTextWidth)) / 2 - 8;
    double left = row.left();
    const auto take = [&](double width) {
        const QRectF box(left, row.top(), width, row.height());
        left += width;
        return box;
    };
    StepColumns columns;
    columns.name = take(name);
    columns.reps = take(chart);
    columns.repsText = take(repsText).adjusted(8, 0, 0, 0);
    left += 8;
    columns.rest = take(chart);
    columns.restText = QRectF(left, row.top(), row.right() - left, row.height());
    return columns;
}

/// The steps of one number over the days, with a dot at the end; a flat line where it never moved.
void paintStepLine(QPainter& painter, const QRectF& box, const LiftTrend& lift, const checkin::DayRange& days, int (*of)(const TargetStep&), const QColor& colour)
{
    const auto [low, high] = std::minmax_element(lift.targets.begin(), lift.targets.end(), [of](const TargetStep& a, const TargetStep& b) { return of(a) < of(b); });
    const double range = of(*high) - of(*low);
    const QRectF plot = box.adjusted(2, kStepInset, -kStepEnd - 2, -kStepInset);
    const auto y = [&](const TargetStep& step) { return range == 0 ? plot.center().y() : plot.bottom() - (of(step) - of(*low)) / range * plot.height(); };
    const auto x = [&](base::Date day) { return plot.left() + static_cast<double>(day - days.from) / (days.to - days.from) * plot.width(); };
    QPolygonF line;
    for (const TargetStep& step : lift.targets) {
        if (!line.isEmpty()) {
            line.append(QPointF(x(step.from), line.back().y()));
        }
        line.append(QPointF(x(step.from), y(step)));
    }
    line.append(QPointF(plot.right(), line.back().y()));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, kStepWidth, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPolyline(line);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawEllipse(line.back(), kStepEnd, kStepEnd);
}

QString rowWords(const LiftTrend& lift)
{
    QStringList lines{common::qstring(lift.name)};
    for (const TargetStep& step : lift.targets) {
        lines.append(stepWords("from %1: %2, rest %3").arg(common::shortDayText(step.from), targetText(step), common::restText(step.rest)));
    }
    return lines.join(QLatin1Char('\n'));
}

void paintRow(QPainter& painter, const QRectF& row, const LiftTrend& lift, const checkin::DayRange& days, const Theme& theme)
{
    const StepColumns columns = columnsIn(row, theme);
    painter.setPen(QPen(theme.line, 1));
    painter.drawLine(row.topLeft(), row.topRight());
    painter.setFont(theme.font(TextStyle::Small));
    painter.setPen(theme.ink);
    painter.drawText(columns.name, Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetricsF(painter.font()).elidedText(common::qstring(lift.name), Qt::ElideRight, columns.name.width() - 8));
    paintStepLine(painter, columns.reps, lift, days, [](const TargetStep& step) { return int{step.repsLow.value()}; }, theme.stage(progression::Stage::RepBuild));
    paintStepLine(painter, columns.rest, lift, days, [](const TargetStep& step) { return int{step.rest.value()}; }, theme.stage(progression::Stage::RestCut));
    QFont bold = theme.font(TextStyle::Small);
    bold.setWeight(QFont::DemiBold);
    painter.setFont(bold);
    painter.setPen(theme.ink);
    painter.drawText(columns.repsText, Qt::AlignLeft | Qt::AlignVCenter, repsCourse(lift));
    painter.drawText(columns.restText, Qt::AlignRight | Qt::AlignVCenter, common::restText(lift.targets.back().rest));
}

void paintHead(QPainter& painter, const QRectF& head, const Theme& theme)
{
    const StepColumns columns = columnsIn(head, theme);
    QFont bold = theme.font(TextStyle::Micro);
    bold.setWeight(QFont::DemiBold);
    painter.setFont(bold);
    painter.setPen(theme.ink2);
    painter.drawText(columns.reps, Qt::AlignLeft | Qt::AlignVCenter, stepWords("Reps"));
    painter.drawText(columns.rest, Qt::AlignLeft | Qt::AlignVCenter, stepWords("Rest"));
}

}  // namespace

std::vector<const LiftTrend*> liftsWithSteps(const checkin::Trends& trends)
{
    std::vector<const LiftTrend*> lifts;
    for (const LiftTrend& lift : trends.lifts) {
        if (lift.buildSince && !lift.targets.empty()) {
            lifts.push_back(&lift);
        }
    }
    return lifts;
}

HotSpots paintSteps(QPainter& painter, const QRectF& area, const checkin::Trends& trends, const Theme& theme)
{
    const auto lifts = liftsWithSteps(trends);
    const double head = theme.scaled(kHeadHeight);
    paintHead(painter, QRectF(area.left(), area.top(), area.width(), head), theme);
    const double room = area.height() - head;
    const auto most = std::max<std::size_t>(1, static_cast<std::size_t>(room / theme.scaled(kLeastRow)));
    const bool isCut = lifts.size() > most;
    const std::size_t shown = isCut ? most - 1 : lifts.size();
    const double height = std::min(theme.scaled(kMostRow), room / static_cast<double>(isCut ? most : std::max<std::size_t>(1, lifts.size())));
    HotSpots spots;
    for (std::size_t i = 0; i < shown; ++i) {
        const QRectF row(area.left(), area.top() + head + static_cast<double>(i) * height, area.width(), height);
        paintRow(painter, row, *lifts[i], trends.days, theme);
        spots.push_back({row, rowWords(*lifts[i])});
    }
    if (isCut) {
        painter.setFont(theme.font(TextStyle::Micro));
        painter.setPen(theme.ink3);
        painter.drawText(QRectF(area.left(), area.top() + head + static_cast<double>(shown) * height, area.width(), height), Qt::AlignLeft | Qt::AlignVCenter,
                         stepWords("and %1 more in the table (T)").arg(lifts.size() - shown));
    }
    return spots;
}

}  // namespace chalk::ui::trends
