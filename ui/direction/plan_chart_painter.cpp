#include "ui/direction/plan_chart_painter.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace chalk::ui::direction {

namespace {

using chalk::direction::Phase;

constexpr double kAxisLeft = 44;
constexpr double kAxisRight = 34;
constexpr double kPhaseTop = 4;
constexpr double kPhaseHeight = 30;
constexpr double kPlotTop = 40;
constexpr double kLinesInset = 12;
constexpr double kDatesHeight = 24;
constexpr double kBarShare = 0.52;
constexpr double kHatchPitch = 8;
constexpr double kDotRadius = 4;
constexpr int kTen = 10;
constexpr double kReadingHeight = 26;
constexpr double kLeastNumberPitch = 18;

struct PlanPaintText {
    Q_DECLARE_TR_FUNCTIONS(PlanChart)
};

/// The steps of the axis of sets, so that three to five lines carry a number.
int setsStepFor(int most)
{
    for (const int step : {2, 5, 10, 20, 50}) {
        if (most <= 4 * step) {
            return step;
        }
    }
    return 100;
}

QColor phaseFill(Phase phase, const common::Theme& theme)
{
    switch (phase) {
    case Phase::Base:
        return theme.sunken;
    case Phase::Build:
        return theme.line;
    case Phase::Peak:
        return theme.line2;
    case Phase::Test:
        return theme.pri;
    }
    return theme.sunken;
}

void paintPhases(QPainter& painter, const PlanChartFrame& frame, const PlanChartScene& scene, const common::Theme& theme)
{
    const QFont strong = theme.font(13, QFont::DemiBold);
    const QFont small = theme.font(12, QFont::Normal);
    for (const PlanChartPhase& phase : scene.phases) {
        const double left = frame.left(static_cast<double>(phase.first)) + 2;
        const QRectF box(left, frame.phases.top(), static_cast<double>(phase.count) * frame.weekWidth - 4, frame.phases.height());
        painter.setPen(Qt::NoPen);
        painter.setBrush(phaseFill(phase.phase, theme));
        painter.drawRoundedRect(box, 5, 5);
        const double pad = std::min(10.0, box.width() / 8);
        const QRectF inner = box.adjusted(pad, 0, -pad, 0);
        const QFontMetricsF name(strong);
        painter.setPen(phase.phase == Phase::Test ? theme.priInk : theme.ink);
        painter.setFont(strong);
        painter.drawText(inner, Qt::AlignLeft | Qt::AlignVCenter, name.elidedText(phase.name, Qt::ElideRight, inner.width()));
        const QFontMetricsF note(small);
        if (phase.count > 1 && name.horizontalAdvance(phase.name) + note.horizontalAdvance(phase.note) + 2 * pad < inner.width()) {
            painter.setPen(theme.ink2);
            painter.setFont(small);
            painter.drawText(inner, Qt::AlignRight | Qt::AlignVCenter, phase.note);
        }
    }
}

void paintAxes(QPainter& painter, const PlanChartFrame& frame, const common::Theme& theme)
{
    painter.setFont(theme.font(12, QFont::Normal));
    const double half = theme.scaled(10);
    const double side = theme.scaled(8);
    for (int share = frame.lowest + kTen; share <= frame.highest; share += kTen) {
        const double y = frame.yOfIntensity(share / 100.0);
        painter.setPen(QPen(theme.grid, 1));
        painter.drawLine(QPointF(frame.plot.left(), y), QPointF(frame.plot.right(), y));
        painter.setPen(theme.ink3);
        painter.drawText(QRectF(0, y - half, frame.plot.left() - side, 2 * half), Qt::AlignRight | Qt::AlignVCenter, QStringLiteral("%1%").arg(share));
    }
    painter.setPen(theme.ink3);
    const double pitch = frame.yOfSets(0) - frame.yOfSets(frame.setsStep);
    const int step = pitch < theme.scaled(kLeastNumberPitch) ? 2 * frame.setsStep : frame.setsStep;
    for (int sets = 0; sets <= frame.setsTop; sets += step) {
        const double y = frame.yOfSets(sets);
        painter.drawText(QRectF(frame.plot.right() + side, y - half, theme.scaled(kAxisRight) - side, 2 * half), Qt::AlignLeft | Qt::AlignVCenter,
                         QString::number(sets));
    }
}

void paintClosures(QPainter& painter, const PlanChartFrame& frame, const PlanChartScene& scene, const common::Theme& theme)
{
    for (const PlanChartClosure& closure : scene.closures) {
        const QRectF box(QPointF(frame.left(closure.from), frame.plot.top()), QPointF(frame.left(closure.to), frame.plot.bottom()));
        painter.save();
        painter.setClipRect(box);
        painter.setPen(QPen(theme.line2, 1.6));
        for (double x = box.left() - box.height(); x < box.right(); x += kHatchPitch) {
            painter.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
        }
        painter.restore();
    }
}

/// The word stands over the bars, on a ground of its own, where it has room.
void paintClosedWords(QPainter& painter, const PlanChartFrame& frame, const PlanChartScene& scene, const common::Theme& theme)
{
    const QString word = PlanPaintText::tr("closed");
    painter.setFont(theme.font(12, QFont::DemiBold));
    const QFontMetricsF metrics(painter.font());
    const double width = metrics.horizontalAdvance(word) + 8;
    for (const PlanChartClosure& closure : scene.closures) {
        if (frame.left(closure.to) - frame.left(closure.from) < width / 2) {
            continue;
        }
        const double middle = std::clamp(frame.left((closure.from + closure.to) / 2), frame.plot.left() + width / 2, frame.plot.right() - width / 2);
        const QRectF box(middle - width / 2, frame.plot.top() + 2, width, metrics.height());
        painter.fillRect(box, theme.surface);
        painter.setPen(theme.ink2);
        painter.drawText(box, Qt::AlignCenter, word);
    }
}

void paintBars(QPainter& painter, const PlanChartFrame& frame, const PlanChartScene& scene, const common::Theme& theme)
{
    painter.setPen(Qt::NoPen);
    QColor fill = theme.rungPast;
    fill.setAlphaF(0.8F);
    for (std::size_t i = 0; i < scene.weeks.size(); ++i) {
        const double top = frame.yOfSets(scene.weeks[i].hardSets);
        const double width = kBarShare * frame.weekWidth;
        painter.setBrush(fill);
        painter.drawRoundedRect(QRectF(frame.centre(i) - width / 2, top, width, frame.plot.bottom() - top), 3, 3);
    }
    painter.setPen(QPen(theme.line2, 1, Qt::DashLine));
    for (const PlanChartPhase& phase : scene.phases) {
        const double x = frame.left(static_cast<double>(phase.first + phase.count));
        painter.drawLine(QPointF(x, frame.plot.top()), QPointF(x, frame.plot.bottom()));
    }
}

void paintIntensity(QPainter& painter, const PlanChartFrame& frame, const PlanChartScene& scene, const common::Theme& theme)
{
    const QColor colour = theme.pattern(lifts::Pattern::HorizontalPush).fill;
    QPolygonF line;
    for (std::size_t i = 0; i < scene.weeks.size(); ++i) {
        line.append(QPointF(frame.centre(i), frame.yOfIntensity(scene.weeks[i].intensity)));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.surface, 6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(line);
    painter.setPen(QPen(colour, 2.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(line);
    painter.setPen(QPen(colour, 2.25));
    for (std::size_t i = 0; i < scene.weeks.size(); ++i) {
        const bool isLighter = scene.weeks[i].kind == chalk::direction::WeekKind::Lighter;
        painter.setBrush(isLighter ? colour : theme.surface);
        painter.drawEllipse(line[static_cast<qsizetype>(i)], kDotRadius, kDotRadius);
    }
}

void paintDates(QPainter& painter, const PlanChartFrame& frame, const PlanChartScene& scene, const common::Theme& theme)
{
    const double top = frame.plot.bottom() + 2;
    const double height = theme.scaled(kDatesHeight) - 2;
    for (std::size_t i = 0; i < scene.weeks.size(); ++i) {
        const bool isPresent = scene.present == i;
        painter.setFont(theme.font(12, isPresent ? QFont::Bold : QFont::Normal));
        const double width = std::max(frame.weekWidth, QFontMetricsF(painter.font()).horizontalAdvance(scene.weeks[i].label) + 2);
        const QRectF box(frame.centre(i) - width / 2, top, width, height);
        if (isPresent) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(theme.chalk);
            painter.drawRoundedRect(box.adjusted(2, 1, -2, -1), 4, 4);
        }
        painter.setPen(isPresent ? theme.chalkInk : theme.ink3);
        painter.drawText(box, Qt::AlignCenter, scene.weeks[i].label);
    }
}

/// The week under the pointer, or the one that the keys went to: a band, and its words on top of the plot.
void paintReading(QPainter& painter, const PlanChartFrame& frame, const PlanChartScene& scene, std::size_t week, const common::Theme& theme)
{
    painter.setPen(QPen(theme.ink2, 1));
    painter.drawLine(QPointF(frame.centre(week), frame.plot.top()), QPointF(frame.centre(week), frame.plot.bottom()));
    painter.setFont(theme.font(13, QFont::Medium));
    const QFontMetricsF metrics(painter.font());
    const double room = frame.plot.width();
    const QString text = metrics.elidedText(scene.weeks[week].spoken, Qt::ElideRight, room - 20);
    const double width = metrics.horizontalAdvance(text) + 20;
    const double left = std::clamp(frame.centre(week) - width / 2, frame.plot.left(), frame.plot.right() - width);
    const QRectF box(left, frame.plot.top(), width, theme.scaled(kReadingHeight));
    painter.setPen(QPen(theme.line2, 1));
    painter.setBrush(theme.raised);
    painter.drawRoundedRect(box, 4, 4);
    painter.setPen(theme.ink);
    painter.drawText(box, Qt::AlignCenter, text);
}

}  // namespace

double PlanChartFrame::yOfIntensity(double share) const
{
    const double part = (100.0 * share - lowest) / (highest - lowest);
    return plot.bottom() - part * (plot.bottom() - linesTop);
}

double PlanChartFrame::yOfSets(int sets) const
{
    return plot.bottom() - static_cast<double>(sets) / setsTop * (plot.bottom() - linesTop);
}

std::optional<std::size_t> PlanChartFrame::weekAt(const QPointF& point, std::size_t weeks) const
{
    const double week = std::floor((point.x() - plot.left()) / weekWidth);
    if (week < 0 || week >= static_cast<double>(weeks) || point.y() < phases.top()) {
        return std::nullopt;
    }
    return static_cast<std::size_t>(week);
}

PlanChartFrame planChartFrame(const PlanChartScene& scene, const QRectF& area, const common::Theme& theme)
{
    PlanChartFrame frame;
    const double left = area.left() + theme.scaled(kAxisLeft);
    const double right = area.right() - theme.scaled(kAxisRight);
    frame.phases = QRectF(left, area.top() + kPhaseTop, right - left, theme.scaled(kPhaseHeight));
    frame.plot = QRectF(QPointF(left, area.top() + theme.scaled(kPlotTop)), QPointF(right, area.bottom() - theme.scaled(kDatesHeight)));
    frame.weekWidth = frame.plot.width() / static_cast<double>(std::max<std::size_t>(1, scene.weeks.size()));
    frame.linesTop = frame.plot.top() + theme.scaled(kLinesInset);
    double least = 1;
    double most = 0;
    int sets = 0;
    for (const PlanChartWeek& week : scene.weeks) {
        least = std::min(least, week.intensity);
        most = std::max(most, week.intensity);
        sets = std::max(sets, week.hardSets);
    }
    frame.lowest = std::max(0, static_cast<int>(std::floor((100 * least - 5) / kTen)) * kTen);
    frame.highest = std::max(frame.lowest + 2 * kTen, static_cast<int>(std::ceil(100 * most / kTen)) * kTen);
    frame.setsStep = setsStepFor(sets);
    // A step more than is needed keeps the bars below the line, as far as that goes.
    frame.setsTop = std::max(1, (sets + frame.setsStep) / frame.setsStep + 1) * frame.setsStep;
    return frame;
}

void paintPlanChart(QPainter& painter, const PlanChartFrame& frame, const PlanChartScene& scene, const std::optional<std::size_t>& chosen,
                    const common::Theme& theme)
{
    paintPhases(painter, frame, scene, theme);
    if (frame.plot.height() <= theme.scaled(kLinesInset)) {
        return;
    }
    if (scene.present) {
        painter.fillRect(QRectF(frame.left(static_cast<double>(*scene.present)), frame.plot.top(), frame.weekWidth, frame.plot.height()), theme.wash);
    }
    paintAxes(painter, frame, theme);
    paintClosures(painter, frame, scene, theme);
    paintBars(painter, frame, scene, theme);
    paintIntensity(painter, frame, scene, theme);
    paintClosedWords(painter, frame, scene, theme);
    paintDates(painter, frame, scene, theme);
    if (chosen && *chosen < scene.weeks.size()) {
        paintReading(painter, frame, scene, *chosen, theme);
    }
}

}  // namespace chalk::ui::direction
