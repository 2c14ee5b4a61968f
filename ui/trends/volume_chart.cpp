#include "ui/trends/volume_chart.h"

#include "core/checkin/trend_figures.h"
#include "ui/common/formats.h"
#include "ui/trends/chart_axis.h"
#include "ui/trends/trend_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace chalk::ui::trends {

namespace {

using common::TextStyle;
using common::Theme;

constexpr int kVolumeTicks = 5;
constexpr double kBarShare = 0.66;    // of a week's column
constexpr double kWidestBar = 64;
constexpr double kHatchPitch = 6;
constexpr double kDotPitch = 6;
constexpr double kDotSide = 2;
constexpr double kKeySide = 12;
constexpr double kValueRow = 25;
constexpr double kNoteGap = 16;
constexpr double kNoteShare = 1.3;  // of a week's column

QString volumeWords(const char* text)
{
    return QCoreApplication::translate("Trends", text);
}

double volumeIn(const checkin::TrendWeek& week, lifts::Pattern pattern, base::MassUnit unit)
{
    return checkin::massIn(week.work[static_cast<std::size_t>(pattern)].volume, unit);
}

double totalIn(const checkin::TrendWeek& week, base::MassUnit unit)
{
    return checkin::massIn(week.together().volume, unit);
}

void paintHatch(QPainter& painter, const QRectF& box, const QColor& colour)
{
    painter.setPen(QPen(colour, 1.5));
    for (double x = box.left() - box.height(); x < box.right(); x += kHatchPitch) {
        painter.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
    }
}

void paintDots(QPainter& painter, const QRectF& box, const QColor& colour)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    for (double y = box.top() + kDotPitch / 2; y < box.bottom(); y += kDotPitch) {
        for (double x = box.left() + kDotPitch / 2; x < box.right(); x += kDotPitch) {
            painter.drawEllipse(QPointF(x, y), kDotSide / 2, kDotSide / 2);
        }
    }
}

/// A box in the colour and the texture of a pattern.
void paintPatternBox(QPainter& painter, const QRectF& box, lifts::Pattern pattern, const Theme& theme)
{
    const common::PatternFill& fill = theme.pattern(pattern);
    painter.save();
    painter.fillRect(box, fill.fill);
    painter.setClipRect(box, Qt::IntersectClip);
    if (fill.texture == Qt::BDiagPattern) {
        paintHatch(painter, box, theme.surface);
    } else if (fill.texture != Qt::SolidPattern) {
        paintDots(painter, box, theme.tone == common::Tone::Slate ? theme.surface : theme.ink);
    }
    painter.restore();
    if (fill.edge.isValid()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(fill.edge, 1));
        painter.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

void paintBar(QPainter& painter, const ChartFrame& frame, const QRectF& column, const checkin::TrendWeek& week, base::MassUnit unit, const Theme& theme)
{
    double below = 0;
    for (const lifts::Pattern pattern : kStackOrder) {
        const double volume = volumeIn(week, pattern, unit);
        if (volume > 0) {
            const double top = frame.yOf(below + volume);
            paintPatternBox(painter, QRectF(column.left(), top, column.width(), std::max(1.0, frame.yOf(below) - top - 1)), pattern, theme);
            below += volume;
        }
    }
}

QString weekWords(const checkin::TrendWeek& week, base::MassUnit unit)
{
    QString text = volumeWords("Week of %1: %2 %3 × reps").arg(common::longDayText(week.monday), wholeText(totalIn(week, unit)), common::unitText(unit));
    if (week.lighterLifts > 0) {
        text += QStringLiteral("\n") + volumeWords("lighter week");
    }
    for (const lifts::Pattern pattern : kStackOrder) {
        if (const double volume = volumeIn(week, pattern, unit); volume > 0) {
            text += QStringLiteral("\n%1 %2").arg(common::patternName(pattern), wholeText(volume));
        }
    }
    return text;
}

void paintSelection(QPainter& painter, const QRectF& column, double top, double bottom, const Theme& theme)
{
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.mark, 2));
    painter.drawRoundedRect(QRectF(column.left() - 4, top - 4, column.width() + 8, bottom - top + 6), 3, 3);
}

/// Rows give way before the note at the foot is cut.
double valueRowHeight(const QRectF& area, const QString& note, const Theme& theme)
{
    const QFontMetricsF metrics(theme.font(TextStyle::Small));
    const double noteHeight = metrics.boundingRect(QRectF(0, 0, area.width(), area.height()), Qt::AlignLeft | Qt::TextWordWrap, note).height();
    const double room = (area.height() - noteHeight - kNoteGap) / static_cast<double>(kStackOrder.size() + 1);
    return std::clamp(room, metrics.height(), theme.scaled(kValueRow));
}

/// Above a bar that is low for a reason, where there is room beside its neighbours.
void paintLighterNote(QPainter& painter, const QRectF& column, double top, double weekWidth, const Theme& theme)
{
    QFont bold = theme.font(TextStyle::Micro);
    bold.setWeight(QFont::DemiBold);
    const QFontMetricsF metrics(bold);
    const QString text = volumeWords("lighter week");
    const double width = metrics.horizontalAdvance(text) + 2;
    if (width > kNoteShare * weekWidth) {
        return;
    }
    painter.setFont(bold);
    painter.setPen(theme.ink2);
    painter.drawText(QRectF(column.center().x() - width / 2, top - metrics.height() - 8, width, metrics.height()), Qt::AlignCenter, text);
}

}  // namespace

HotSpots paintVolume(QPainter& painter, const QRectF& area, const VolumeScene& scene, const Theme& theme)
{
    double most = 1;
    for (const checkin::TrendWeek& week : scene.weeks) {
        most = std::max(most, totalIn(week, scene.unit));
    }
    const ChartFrame frame = frameIn(area, ticksFor(0, most, kVolumeTicks), static_cast<int>(scene.weeks.size()), theme);
    paintGrid(painter, frame, theme);
    paintWeeks(painter, frame, scene.weeks, theme);
    HotSpots spots;
    const double width = std::floor(std::min(theme.scaled(kWidestBar), kBarShare * frame.weekWidth()));
    for (std::size_t i = 0; i < scene.weeks.size(); ++i) {
        const auto index = static_cast<int>(i);
        const QRectF column(std::round(frame.middleOf(index) - width / 2), frame.plot.top(), width, frame.plot.height());
        paintBar(painter, frame, column, scene.weeks[i], scene.unit, theme);
        const double top = frame.yOf(totalIn(scene.weeks[i], scene.unit));
        if (index == scene.selected) {
            paintSelection(painter, column, top, frame.plot.bottom(), theme);
        }
        if (scene.weeks[i].lighterLifts > 0) {
            paintLighterNote(painter, column, top, frame.weekWidth(), theme);
        }
        spots.push_back({QRectF(frame.plot.left() + index * frame.weekWidth(), frame.plot.top(), frame.weekWidth(), area.bottom() - frame.plot.top()),
                         weekWords(scene.weeks[i], scene.unit)});
    }
    return spots;
}

HotSpots paintWeekValues(QPainter& painter, const QRectF& area, const VolumeScene& scene, const QString& note, const Theme& theme)
{
    const checkin::TrendWeek& week = scene.weeks[static_cast<std::size_t>(scene.selected)];
    const double row = valueRowHeight(area, note, theme);
    QRectF line(area.left(), area.top(), area.width(), row);
    painter.setFont(theme.font(TextStyle::Small));
    painter.setPen(theme.ink2);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                     volumeWords("Week %1, from %2").arg(week.monday.isoWeek().week).arg(common::shortDayText(week.monday)));
    for (auto pattern = kStackOrder.rbegin(); pattern != kStackOrder.rend(); ++pattern) {
        line.translate(0, row);
        const double side = theme.scaled(kKeySide);
        paintPatternBox(painter, QRectF(line.left(), line.center().y() - side / 2, side, side), *pattern, theme);
        painter.setPen(theme.ink);
        painter.setFont(theme.font(TextStyle::Small));
        painter.drawText(line.adjusted(side + 10, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, common::patternName(*pattern));
        painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, wholeText(volumeIn(week, *pattern, scene.unit)));
    }
    painter.setPen(QPen(theme.line, 1));
    const double top = line.bottom() + kNoteGap / 2;
    painter.drawLine(QPointF(area.left(), top), QPointF(area.right(), top));
    painter.setPen(theme.ink2);
    painter.drawText(QRectF(area.left(), top + kNoteGap / 2, area.width(), area.bottom() - top - kNoteGap / 2), Qt::AlignLeft | Qt::TextWordWrap, note);
    return {};
}

QString spokenVolume(const VolumeScene& scene)
{
    const checkin::TrendWeek& week = scene.weeks[static_cast<std::size_t>(scene.selected)];
    return volumeWords("Load-volume by week. %1").arg(weekWords(week, scene.unit).replace(QLatin1Char('\n'), QStringLiteral(", ")));
}

}  // namespace chalk::ui::trends
