#include "ui/direction/plan_comparison_chart.h"

#include "core/checkin/trends.h"
#include "ui/direction/plan_comparison_figures.h"
#include "ui/trends/chart_axis.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace chalk::ui::direction {

namespace {

using chalk::direction::WeekReview;
using common::TextStyle;
using common::Theme;

constexpr double kKeyHeight = 26;
constexpr double kCaptionHeight = 20;
constexpr double kSharePart = 0.42;  // of the height for both plots
constexpr int kShareTicks = 3;
constexpr int kSetTicks = 4;
constexpr double kPlannedPart = 0.6;  // of a week's column
constexpr double kDoneInset = 3;
constexpr double kWidestWeek = 56;
constexpr double kShareDotRadius = 4;
constexpr double kShareInPercent = 100;

QString comparisonWords(const char* text)
{
    return QCoreApplication::translate("PlanComparison", text);
}

struct ComparisonFrames {
    trends::ChartFrame share;
    trends::ChartFrame sets;
};

trends::Ticks shareTicks(const std::vector<WeekReview>& weeks)
{
    double lowest = 1;
    double highest = 0;
    for (const WeekReview& week : weeks) {
        for (const double share : {week.plannedShare, week.doneShare}) {
            if (share > 0) {
                lowest = std::min(lowest, share);
                highest = std::max(highest, share);
            }
        }
    }
    return highest <= 0 ? trends::ticksFor(0, kShareInPercent, kShareTicks) : trends::ticksFor(lowest * kShareInPercent, highest * kShareInPercent, kShareTicks);
}

/// Sets are whole.
trends::Ticks setTicks(int most)
{
    trends::Ticks ticks = trends::ticksFor(0, most, kSetTicks);
    for (int fewer = kSetTicks - 1; ticks.digits() > 0 && fewer > 0; --fewer) {
        ticks = trends::ticksFor(0, most, fewer);
    }
    return ticks;
}

ComparisonFrames comparisonFrames(const QRectF& area, const std::vector<WeekReview>& weeks, const Theme& theme)
{
    int most = 1;
    for (const WeekReview& week : weeks) {
        most = std::max({most, week.plannedSets, week.doneSets});
    }
    const int count = static_cast<int>(weeks.size());
    const double caption = theme.scaled(kCaptionHeight);
    const QRectF both = area.adjusted(0, theme.scaled(kKeyHeight), 0, 0);
    QRectF upper = both;
    upper.setHeight(both.height() * kSharePart);
    QRectF lower = both;
    lower.setTop(upper.bottom());
    ComparisonFrames frames{trends::frameIn(upper.adjusted(0, caption, 0, 0), shareTicks(weeks), count, theme),
                            trends::frameIn(lower.adjusted(0, caption, 0, 0), setTicks(most), count, theme)};
    const double left = std::max(frames.share.plot.left(), frames.sets.plot.left());
    frames.share.plot.setLeft(left);
    frames.sets.plot.setLeft(left);
    return frames;
}

void paintCaption(QPainter& painter, const trends::ChartFrame& frame, const QRectF& area, const QString& text, const Theme& theme)
{
    painter.setFont(theme.font(TextStyle::Micro));
    painter.setPen(theme.ink2);
    const double height = theme.scaled(kCaptionHeight);
    painter.drawText(QRectF(area.left(), frame.plot.top() - height - QFontMetricsF(painter.font()).height() / 2, area.width(), height), Qt::AlignLeft | Qt::AlignVCenter, text);
}

void paintShares(QPainter& painter, const trends::ChartFrame& frame, const std::vector<WeekReview>& weeks, bool isDone, const Theme& theme)
{
    QPolygonF line;
    for (std::size_t i = 0; i < weeks.size(); ++i) {
        const double share = isDone ? weeks[i].doneShare : weeks[i].plannedShare;
        if (share > 0) {
            line.append(QPointF(frame.middleOf(static_cast<int>(i)), frame.yOf(share * kShareInPercent)));
        }
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(isDone ? QPen(theme.pri, 2) : QPen(theme.ink2, 1.5, Qt::DashLine));
    painter.drawPolyline(line);
    painter.setPen(QPen(isDone ? theme.pri : theme.ink2, 1.5));
    painter.setBrush(isDone ? theme.pri : theme.surface);
    for (const QPointF& point : line) {
        painter.drawEllipse(point, kShareDotRadius, kShareDotRadius);
    }
}

void paintSets(QPainter& painter, const trends::ChartFrame& frame, const std::vector<WeekReview>& weeks, const Theme& theme)
{
    const double width = std::floor(std::min(theme.scaled(kWidestWeek), kPlannedPart * frame.weekWidth()));
    for (std::size_t i = 0; i < weeks.size(); ++i) {
        const double left = std::round(frame.middleOf(static_cast<int>(i)) - width / 2);
        const double done = frame.yOf(weeks[i].doneSets);
        const double planned = frame.yOf(weeks[i].plannedSets);
        painter.fillRect(QRectF(left + kDoneInset, done, width - 2 * kDoneInset, frame.plot.bottom() - done), theme.pri);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.ink2, 1.5));
        painter.drawRect(QRectF(left, planned, width, frame.plot.bottom() - planned));
    }
}

void paintPresent(QPainter& painter, const ComparisonFrames& frames, std::size_t week, const Theme& theme)
{
    const double left = frames.sets.plot.left() + static_cast<double>(week) * frames.sets.weekWidth();
    painter.fillRect(QRectF(left, frames.share.plot.top(), frames.sets.weekWidth(), frames.sets.plot.bottom() - frames.share.plot.top()), theme.wash);
    painter.setPen(QPen(theme.mark, 2));
    painter.drawLine(QPointF(left, frames.sets.plot.bottom() + 1), QPointF(left + frames.sets.weekWidth(), frames.sets.plot.bottom() + 1));
}

/// `planned` as an outline, `done` filled, `this week` where there is one.
void paintKey(QPainter& painter, const QRectF& area, bool hasPresent, const Theme& theme)
{
    painter.setFont(theme.font(TextStyle::Micro));
    const QFontMetricsF metrics(painter.font());
    const double side = theme.scaled(12);
    double left = area.left();
    const auto entry = [&](const QString& text, const QColor& fill, const QColor& edge) {
        const QRectF box(left, area.top() + (metrics.height() - side) / 2, side, side);
        painter.setBrush(fill.isValid() ? QBrush(fill) : QBrush(Qt::NoBrush));
        painter.setPen(QPen(edge, 1.5));
        painter.drawRect(box);
        painter.setPen(theme.ink);
        painter.drawText(QPointF(box.right() + 6, area.top() + metrics.ascent()), text);
        left = box.right() + 6 + metrics.horizontalAdvance(text) + theme.scaled(18);
    };
    entry(comparisonWords("planned"), {}, theme.ink2);
    entry(comparisonWords("done"), theme.pri, theme.pri);
    if (hasPresent) {
        entry(comparisonWords("this week"), theme.wash, theme.mark);
    }
}

}  // namespace

trends::HotSpots paintPlanComparison(QPainter& painter, const QRectF& area, const PlanComparisonScene& scene, const Theme& theme)
{
    const ComparisonFrames frames = comparisonFrames(area, scene.weeks, theme);
    std::vector<checkin::TrendWeek> mondays(scene.weeks.size());
    for (std::size_t i = 0; i < mondays.size(); ++i) {
        mondays[i].monday = scene.weeks[i].monday;
    }
    if (scene.present) {
        paintPresent(painter, frames, *scene.present, theme);
    }
    paintKey(painter, area, scene.present.has_value(), theme);
    paintCaption(painter, frames.share, area, comparisonWords("Mean intensity, % of the single"), theme);
    paintCaption(painter, frames.sets, area, comparisonWords("Sets"), theme);
    trends::paintGrid(painter, frames.share, theme);
    trends::paintGrid(painter, frames.sets, theme);
    trends::paintWeeks(painter, frames.sets, mondays, theme);
    paintShares(painter, frames.share, scene.weeks, false, theme);
    paintShares(painter, frames.share, scene.weeks, true, theme);
    paintSets(painter, frames.sets, scene.weeks, theme);
    trends::HotSpots spots;
    for (std::size_t i = 0; i < scene.weeks.size(); ++i) {
        const double left = frames.sets.plot.left() + static_cast<double>(i) * frames.sets.weekWidth();
        spots.push_back({QRectF(left, frames.share.plot.top(), frames.sets.weekWidth(), area.bottom() - frames.share.plot.top()),
                         comparedText(i, scene.weeks[i], scene.today)});
    }
    return spots;
}

}  // namespace chalk::ui::direction
