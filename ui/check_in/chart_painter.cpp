#include "ui/check_in/chart_painter.h"

#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/stage_glyph.h"
#include "ui/common/wrapped_text.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::check_in {

namespace {

using common::TextStyle;
using common::Theme;

constexpr double kTitleTop = 10;
constexpr double kTitleLine = 20;
constexpr double kSide = 16;

QString shadeWord(ShadeKind kind)
{
    switch (kind) {
    case ShadeKind::LighterWeek:
        return QCoreApplication::translate("CheckInChart", "lighter");
    case ShadeKind::Layoff:
        return QCoreApplication::translate("CheckInChart", "away");
    case ShadeKind::Pain:
    case ShadeKind::Flat:
        break;
    }
    return {};
}

void paintShade(QPainter& painter, const ChartShade& shade, const ChartFrame& frame, const Theme& theme)
{
    QRectF rect = frame.rectOf(shade.days);
    switch (shade.kind) {
    case ShadeKind::Flat:
        painter.fillRect(rect, theme.warnBg);
        return;
    case ShadeKind::LighterWeek:
        painter.fillRect(rect, theme.okBg);
        painter.fillRect(rect, QBrush(theme.okLine, Qt::BDiagPattern));
        break;
    case ShadeKind::Layoff:
        painter.fillRect(rect, theme.sunken);
        painter.fillRect(rect, QBrush(theme.line2, Qt::HorPattern));
        break;
    case ShadeKind::Pain: {
        painter.fillRect(rect, theme.painBg);
        painter.setPen(QPen(theme.painLine, 1, Qt::DashLine));
        painter.drawLine(rect.topLeft(), rect.bottomLeft());
        const double icon = theme.scaled(12);
        common::paintIcon(painter, QRectF(rect.center().x() - icon / 2, rect.top(), icon, icon), QStringLiteral("pain"), theme.pain, theme);
        return;
    }
    }
    const QFont font = theme.font(TextStyle::Micro);
    const QString word = shadeWord(shade.kind);
    const double wide = QFontMetricsF(font).horizontalAdvance(word) + 4;
    const bool hasRoom = frame.style == ChartStyle::Band || frame.style == ChartStyle::Bars;
    if (wide <= rect.width() && hasRoom) {
        // Bars stand at the foot, a line seldom does.
        rect.setTop(frame.style == ChartStyle::Bars ? rect.top() : rect.bottom() - theme.scaled(16));
        rect.setHeight(theme.scaled(16));
        painter.fillRect(QRectF(rect.center().x() - wide / 2, rect.top(), wide, rect.height()), theme.surface);
        painter.setFont(font);
        painter.setPen(theme.ink2);
        painter.drawText(rect, Qt::AlignCenter, word);
    }
}

void paintTitle(QPainter& painter, const ChartScene& scene, const QSizeF& size, const Theme& theme)
{
    const QFont strong = theme.font(13, QFont::DemiBold);
    const QRectF line(theme.scaled(kSide), theme.scaled(kTitleTop), size.width() - theme.scaled(2 * kSide), theme.scaled(kTitleLine));
    const double wide = QFontMetricsF(strong).horizontalAdvance(scene.title);
    painter.setFont(strong);
    painter.setPen(theme.ink);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, scene.title);
    const QRectF rest = line.adjusted(wide + theme.scaled(8), 0, 0, 0);
    const QFont small = theme.font(TextStyle::Micro);
    painter.setFont(small);
    painter.setPen(theme.ink2);
    painter.drawText(rest, Qt::AlignLeft | Qt::AlignVCenter, QFontMetricsF(small).elidedText(scene.note, Qt::ElideRight, rest.width()));
}

void paintDays(QPainter& painter, const ChartFrame& frame, const Theme& theme)
{
    const QFont font = theme.font(TextStyle::Micro);
    painter.setFont(font);
    const double half = theme.scaled(40);
    unsigned month = 0;
    for (const base::Date day : labelledDays(frame, theme)) {
        const auto ymd = day.ymd();
        const bool isNewMonth = static_cast<unsigned>(ymd.month()) != month;
        month = static_cast<unsigned>(ymd.month());
        const QString text = isNewMonth ? common::shortDayText(day) : QString::number(static_cast<unsigned>(ymd.day()));
        const double x = frame.xOf(day);
        painter.setPen(theme.axis);
        painter.drawLine(QPointF(x, frame.plot.bottom()), QPointF(x, frame.plot.bottom() + 4));
        painter.setPen(theme.ink2);
        painter.drawText(QRectF(x - half, frame.plot.bottom() + theme.scaled(4), 2 * half, theme.scaled(18)), Qt::AlignHCenter | Qt::AlignVCenter, text);
    }
}

QString axisNumber(double value)
{
    return QString::number(value, 'g', 6);
}

void paintGrid(QPainter& painter, const ChartScene& scene, const ChartFrame& frame, const Theme& theme)
{
    painter.setFont(theme.font(TextStyle::Micro));
    const double half = theme.scaled(9);
    for (double value = scene.axis.low; value <= scene.axis.high + scene.axis.step / 2; value += scene.axis.step) {
        const double y = frame.yOf(value);
        painter.setPen(QPen(theme.grid, 1));
        painter.drawLine(QPointF(frame.plot.left(), y), QPointF(frame.plot.right(), y));
        painter.setPen(theme.ink2);
        painter.drawText(QRectF(0, y - half, frame.plot.left() - theme.scaled(8), 2 * half), Qt::AlignRight | Qt::AlignVCenter, axisNumber(value));
    }
}

/// A ring where a value was measured: of a band every one, of lines only one that stands alone.
void paintPoints(QPainter& painter, const ChartScene& scene, const ChartFrame& frame, const Theme& theme)
{
    for (std::size_t series = 0; series < scene.series.size(); ++series) {
        const auto& points = scene.series[series].points;
        if (scene.style != ChartStyle::Band && (scene.style != ChartStyle::Lines || points.size() > 1)) {
            continue;
        }
        painter.setPen(QPen(theme.ink, 2));
        painter.setBrush(theme.surface);
        for (const ChartPoint& point : points) {
            painter.drawEllipse(frame.at(point, series), 3.5, 3.5);
        }
    }
}

void paintBracket(QPainter& painter, const ChartScene& scene, const ChartFrame& frame, const Theme& theme)
{
    const auto flat = std::ranges::find(scene.shades, ShadeKind::Flat, &ChartShade::kind);
    if (flat == scene.shades.end() || scene.flat.isEmpty() || scene.style != ChartStyle::Band) {
        return;
    }
    const QRectF rect = frame.rectOf(flat->days);
    const double y = rect.top() + theme.scaled(8);
    const double stop = theme.scaled(5);
    painter.setPen(QPen(theme.warn, 2));
    painter.drawLine(QPointF(rect.left() + 1, y), QPointF(rect.right() - 1, y));
    painter.drawLine(QPointF(rect.left() + 1, y - stop), QPointF(rect.left() + 1, y + stop));
    painter.drawLine(QPointF(rect.right() - 1, y - stop), QPointF(rect.right() - 1, y + stop));
    const QFont font = theme.font(12, QFont::DemiBold);
    const double wide = std::max(rect.width(), QFontMetricsF(font).horizontalAdvance(scene.flat) + 4);
    const double left = std::min(rect.center().x() - wide / 2, frame.plot.right() - wide);
    painter.setFont(font);
    painter.drawText(QRectF(left, y + theme.scaled(4), wide, theme.scaled(16)), Qt::AlignCenter, scene.flat);
}

void paintStageRow(QPainter& painter, const ChartRow& row, const QRectF& place, const ChartFrame& frame, const Theme& theme)
{
    const QRectF name(theme.scaled(kSide) - 4, place.top(), place.left() - theme.scaled(kSide), place.height());
    if (row.isChosen) {
        painter.fillRect(name.adjusted(0, 1, 0, -1), theme.wash);
    }
    const QFont font = row.isChosen ? theme.font(12, QFont::Bold) : theme.font(TextStyle::Micro);
    painter.setFont(font);
    painter.setPen(row.isChosen ? theme.ink : theme.ink2);
    painter.drawText(name.adjusted(4, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, QFontMetricsF(font).elidedText(row.name, Qt::ElideRight, name.width() - 4));
    const double height = std::min(place.height() - 4, theme.scaled(16));
    for (const checkin::StageStretch& stretch : row.stages) {
        const QRectF days = frame.rectOf(stretch.days);
        const QRectF bar(days.left() + 1, place.center().y() - height / 2, days.width() - 2, height);
        if (bar.width() < 1) {
            continue;
        }
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.stage(stretch.stage));
        painter.drawRoundedRect(bar, 3, 3);
        const double side = std::min(height - 4, theme.scaled(11));
        if (bar.width() > side + 4 && side > 4) {
            painter.setBrush(theme.onStage(stretch.stage));
            painter.drawPath(common::stageGlyph(stretch.stage, QRectF(bar.center().x() - side / 2, bar.center().y() - side / 2, side, side)));
        }
    }
}

void paintMarks(QPainter& painter, const ChartScene& scene, const ChartFrame& frame, const Theme& theme)
{
    const double day = frame.xOf(frame.days.from + 1) - frame.plot.left();
    const double side = std::min(theme.scaled(13), std::max(5.0, 2.7 * day));
    for (const ChartSeries& series : scene.series) {
        for (const ChartPoint& point : series.points) {
            const QPointF at = frame.at(point, 0);
            const QRectF square(at.x() - side / 2, at.y() - side / 2, side, side);
            painter.setPen(QPen(theme.attDot, 1.5));
            painter.setBrush(point.value >= 1 ? QBrush(theme.attDot) : QBrush(Qt::NoBrush));
            painter.drawRoundedRect(square, 2, 2);
            if (point.value <= 0) {
                painter.setPen(QPen(theme.pain, 1.5));
                painter.drawLine(square.topLeft() + QPointF(2, 2), square.bottomRight() - QPointF(2, 2));
                painter.drawLine(square.topRight() + QPointF(-2, 2), square.bottomLeft() + QPointF(2, -2));
            }
        }
    }
}

void paintEnds(QPainter& painter, const ChartScene& scene, const ChartFrame& frame, const Theme& theme)
{
    const double left = frame.plot.right() + theme.scaled(8);
    const double wide = theme.scaled(96);
    if (scene.style == ChartStyle::Band && !scene.last.isEmpty()) {
        const double y = std::clamp(frame.yOf(scene.series.front().points.back().value), frame.plot.top() + 18, frame.plot.bottom() - 18);
        painter.setFont(theme.font(15, QFont::Bold));
        painter.setPen(theme.ink);
        painter.drawText(QRectF(left, y - theme.scaled(18), wide, theme.scaled(18)), Qt::AlignLeft | Qt::AlignVCenter, scene.last);
        painter.setFont(theme.font(TextStyle::Micro));
        painter.setPen(theme.ink2);
        painter.drawText(QRectF(left, y, wide, theme.scaled(18)), Qt::AlignLeft | Qt::AlignVCenter, scene.lastRange);
    }
    if (scene.style != ChartStyle::Lines) {
        return;
    }
    double taken = -1000;
    std::vector<const ChartSeries*> ends;
    for (const ChartSeries& series : scene.series) {
        ends.push_back(&series);
    }
    std::ranges::sort(ends, std::ranges::greater{}, [](const ChartSeries* one) { return one->points.back().value; });
    for (const ChartSeries* series : ends) {
        const double y = std::max(frame.yOf(series->points.back().value), taken + theme.scaled(18));
        taken = y;
        painter.setFont(theme.font(12, QFont::DemiBold));
        painter.setPen(series->isDashed ? theme.ink2 : theme.link);
        painter.drawText(QRectF(left, y - theme.scaled(9), wide, theme.scaled(18)), Qt::AlignLeft | Qt::AlignVCenter, series->name);
    }
}

void paintChosen(QPainter& painter, const ChartPoint& point, const QPointF& at, const QSizeF& size, const Theme& theme)
{
    painter.setPen(QPen(theme.focus, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(at, 6, 6);
    const QFont font = theme.font(TextStyle::Micro);
    const double most = size.width() - 8;
    const double line = theme.scaled(16);
    const double wide = std::min(most, QFontMetricsF(font).horizontalAdvance(point.spoken) + theme.scaled(16));
    const double inner = wide - theme.scaled(12);
    const double high = common::wrappedTextHeight(point.spoken, font, inner, line) + theme.scaled(8);
    const double top = at.y() - high - 12 > 2 ? at.y() - high - 12 : at.y() + 12;
    const QRectF tag(std::clamp(at.x() - wide / 2, 4.0, std::max(4.0, size.width() - wide - 4)), top, wide, high);
    painter.setPen(QPen(theme.line2, 1));
    painter.setBrush(theme.raised);
    painter.drawRoundedRect(tag, 4, 4);
    painter.setPen(theme.ink);
    common::paintWrappedText(painter, tag.topLeft() + QPointF(theme.scaled(6), theme.scaled(4)), point.spoken, font, inner, line);
}

}  // namespace

void paintBehind(QPainter& painter, const ChartScene& scene, const ChartFrame& frame, const Theme& theme)
{
    if (!scene.missing.isEmpty()) {
        return;
    }
    painter.save();
    for (const ChartShade& shade : scene.shades) {
        if (shade.days.to >= frame.days.from && shade.days.from <= frame.days.to) {
            paintShade(painter, shade, frame, theme);
        }
    }
    if (scene.style != ChartStyle::Stages && scene.style != ChartStyle::Marks) {
        paintGrid(painter, scene, frame, theme);
    }
    painter.restore();
}

void paintBefore(QPainter& painter, const ChartScene& scene, const ChartFrame& frame, const QSizeF& size, const std::optional<PointIndex>& chosen,
                 const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintTitle(painter, scene, size, theme);
    const QFont small = theme.font(TextStyle::Small);
    if (!scene.missing.isEmpty()) {
        painter.setPen(theme.ink2);
        common::paintWrappedText(painter, {theme.scaled(kSide), frame.plot.top() + theme.scaled(8)}, scene.missing, small,
                                 size.width() - theme.scaled(2 * kSide), theme.scaled(18));
        painter.restore();
        return;
    }
    paintDays(painter, frame, theme);
    paintBracket(painter, scene, frame, theme);
    for (std::size_t row = 0; row < scene.rows.size(); ++row) {
        paintStageRow(painter, scene.rows[row], frame.rowRect(row), frame, theme);
    }
    if (scene.style == ChartStyle::Marks) {
        paintMarks(painter, scene, frame, theme);
        painter.setPen(theme.ink2);
        common::paintWrappedText(painter, {theme.scaled(kSide), frame.plot.bottom() + theme.scaled(30)}, scene.text, small,
                                 size.width() - theme.scaled(2 * kSide), theme.scaled(18));
    }
    paintPoints(painter, scene, frame, theme);
    paintEnds(painter, scene, frame, theme);
    if (const ChartPoint* point = pointAt(scene, chosen)) {
        paintChosen(painter, *point, frame.at(*point, chosen->series), size, theme);
    }
    painter.restore();
}

}  // namespace chalk::ui::check_in
