#include "ui/board/column_paint.h"

#include "ui/board/fitted_text.h"
#include "ui/common/icon_store.h"
#include "ui/common/stage_glyph.h"

#include <QPainter>
#include <QPainterPath>

namespace chalk::ui::board {

namespace {

using common::Theme;
using progression::Stage;

QString iconNameOf(lifts::Pattern pattern)
{
    QString key = QString::fromLatin1(keyOf(pattern).data(), static_cast<qsizetype>(keyOf(pattern).size()));
    return QLatin1String("move-") + key.replace(QLatin1Char('_'), QLatin1Char('-'));
}

void paintHead(const ColumnPaint& c)
{
    const QRectF head = c.geometry.headRect(c.index);
    const double side = c.px(34);
    common::paintIcon(c.painter, QRectF(head.center().x() - side / 2, c.px(6), side, side), iconNameOf(c.column.pattern),
                      c.column.isEmpty() ? c.theme.ink3
                      : c.isSelected     ? c.theme.ink
                                         : c.theme.ink2,
                      c.theme);
    const FittedLines name = fittedLines(c.column.name, head.width() - c.px(4), 3, c.theme, {13, 12}, QFont::DemiBold);
    const QColor ink = c.column.isEmpty() ? c.theme.ink3 : c.theme.ink;
    const double pitch = c.px(name.lines.size() == 3 ? 14 : 15);
    double y = c.px(name.lines.size() == 1 ? 60 : name.lines.size() == 2 ? 54 : 52);
    for (const QString& line : name.lines) {
        c.text({head.center().x() - QFontMetricsF(name.font).horizontalAdvance(line) / 2, y}, line, name.font, ink);
        y += pitch;
    }
}

/// The highest rung above the present one that the lift has stood on.
Stage highestReached(const BoardColumn& column)
{
    Stage highest = column.stage;
    for (const Stage stage : progression::kStages) {
        if (stage > highest && column.dateOf(stage).isReached) {
            highest = stage;
        }
    }
    return highest;
}

/// What the lift has been through above its present rung: a thin line, and from an earlier cycle the way back down.
void paintEarlierLap(const ColumnPaint& c)
{
    const Stage highest = highestReached(c.column);
    if (highest == c.column.stage) {
        return;
    }
    const double x = c.geometry.trailX(c.index);
    const double top = c.geometry.rungMiddle(highest);
    c.painter.setBrush(Qt::NoBrush);
    c.painter.setPen(QPen(c.theme.line2, 1.5));
    c.painter.drawLine(QPointF(x, c.geometry.rungTop(c.column.stage)), QPointF(x, top));
    if (c.column.cycle < 2 || highest != Stage::RestCut) {
        return;
    }
    const double back = x - c.px(8);
    const double foot = c.geometry.rungMiddle(Stage::LoadBuild);
    QPainterPath way(QPointF(x, top));
    way.cubicTo(x, top - 10, back, top - 10, back, top);
    way.lineTo(back, foot - 4);
    c.painter.setPen(dashedPen(c.theme.line2, 3, 3));
    c.painter.drawPath(way);
    c.painter.setPen(QPen(c.theme.line2, 1.5));
    c.painter.drawPolyline(QPolygonF({{back - 3.5, foot - 8}, {back, foot - 3}, {back + 3.5, foot - 8}}));
}

void paintTrail(const ColumnPaint& c)
{
    const double x = c.geometry.trailX(c.index);
    c.painter.setPen(QPen(c.theme.rungPast, 3, Qt::SolidLine, Qt::RoundCap));
    const double foot = c.geometry.size().height() - 14;
    const double head = c.geometry.blockRect(c.index, c.column.stage).bottom();
    if (foot > head) {
        c.painter.drawLine(QPointF(x, foot), QPointF(x, head));
    }
    const QFont font = c.theme.font(kLeastTextPx, QFont::Normal);
    for (const Stage stage : progression::kStages) {
        if (!c.column.isDateShown(stage)) {
            continue;
        }
        const bool isBelow = stage < c.column.stage;
        const double y = c.geometry.rungMiddle(stage);
        const double radius = isBelow ? 4.5 : 3;
        c.painter.setPen(Qt::NoPen);
        c.painter.setBrush(isBelow ? c.theme.rungPast : c.theme.line2);
        c.painter.drawEllipse(QPointF(x, y), radius, radius);
        c.text({x + c.px(11), y + c.px(4)}, c.column.dateOf(stage).text, font, c.theme.ink3);
    }
}

/// A pattern without a lift: a box at the foot of the ladder offers the screen.
void paintScreenOffer(const ColumnPaint& c)
{
    const QRectF box = c.geometry.blockRect(c.index, Stage::Pattern);
    c.painter.setPen(dashedPen(c.theme.line2, 4, 3.5));
    c.painter.setBrush(c.ground());
    c.painter.drawRoundedRect(box, 6, 6);
    const FittedLines offer = fittedLines(c.column.title, box.width() - c.geometry.padding(), 3, c.theme, {13, 12}, QFont::Medium);
    const double pitch = c.px(17);
    double y = box.center().y() - pitch * (static_cast<double>(offer.lines.size()) / 2 - 1) - c.px(4);
    for (const QString& line : offer.lines) {
        c.text({box.center().x() - QFontMetricsF(offer.font).horizontalAdvance(line) / 2, y}, line, offer.font,
               c.column.canScreen ? c.theme.link : c.theme.ink3);
        y += pitch;
    }
}

}  // namespace

void paintColumn(QPainter& painter, const BoardGeometry& geometry, int index, const BoardColumn& column, bool isSelected,
                 const Theme& theme)
{
    const ColumnPaint c{painter, geometry, index, column, isSelected, theme};
    paintHead(c);
    if (column.isEmpty()) {
        paintScreenOffer(c);
        return;
    }
    paintEarlierLap(c);
    paintTrail(c);
    if (column.need) {
        paintNeed(c, *column.need);
        if (column.need->isNextCycle) {
            paintWayRound(c, *column.need);
        }
    }
    paintBlock(c);
    paintTag(c);
}

}  // namespace chalk::ui::board
