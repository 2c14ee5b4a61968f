#include "ui/board/column_paint.h"
#include "ui/board/fitted_text.h"
#include "ui/common/icon_store.h"
#include "ui/common/stage_glyph.h"

#include <QFontMetricsF>

#include <algorithm>

namespace chalk::ui::board {

namespace {

/// More than this many steps are drawn as a bar, not as pips.
constexpr int kMostPips = 5;

void paintPips(const ColumnPaint& c, const BoardNeed& need, QPointF at, double room, const QColor& colour)
{
    const QString count = QStringLiteral("%1/%2").arg(need.done).arg(need.needed);
    const QFont font = c.theme.font(kLeastTextPx, QFont::Normal);
    double x = at.x();
    if (need.needed <= kMostPips) {
        const double pitch = std::min(c.px(12), (room - QFontMetricsF(font).horizontalAdvance(count) - 3) / need.needed);
        const double side = std::min(c.px(9), pitch - 2);
        for (int i = 0; i < need.needed; ++i) {
            c.painter.setPen(QPen(colour, 1.5));
            c.painter.setBrush(i < need.done ? QBrush(colour) : QBrush(Qt::NoBrush));
            c.painter.drawRoundedRect(QRectF(x, at.y() - side, side, side), side / 4.5, side / 4.5);
            x += pitch;
        }
        x += 3;
    } else {
        const double width = room - QFontMetricsF(font).horizontalAdvance(count) - c.px(6);
        const QRectF bar(x, at.y() - c.px(8), width, c.px(7));
        c.painter.setPen(Qt::NoPen);
        c.painter.setBrush(colour);
        c.painter.drawRoundedRect(QRectF(bar.topLeft(), QSizeF(bar.width() * need.done / need.needed, bar.height())), 2, 2);
        c.painter.setPen(QPen(colour, 1.5));
        c.painter.setBrush(Qt::NoBrush);
        c.painter.drawRoundedRect(bar, 2, 2);
        x += width + c.px(6);
    }
    c.text({x, at.y()}, count, font, c.theme.ink2);
}

struct TagLook {
    common::Signal signal;
    QString icon;
};

TagLook lookOf(BoardTag tag)
{
    switch (tag) {
    case BoardTag::Pain:
        return {common::Signal::Pain, QStringLiteral("pain")};
    case BoardTag::LighterOption:
        return {common::Signal::Warn, QStringLiteral("swap")};
    case BoardTag::Rescreen:
        return {common::Signal::Info, QStringLiteral("rescreen")};
    case BoardTag::Plateau:
    case BoardTag::None:
        break;
    }
    return {common::Signal::Warn, QStringLiteral("plateau")};
}

}  // namespace

QPen dashedPen(const QColor& colour, double on, double off)
{
    QPen pen(colour, 1.5);
    pen.setDashPattern({on / 1.5, off / 1.5});
    return pen;
}

void paintNeed(const ColumnPaint& c, const BoardNeed& need)
{
    const QRectF box = c.geometry.needRect(c.index, need.stage);
    const QColor colour = need.isWarned ? c.theme.warn : c.theme.stage(need.stage);
    const double left = box.x() + c.geometry.padding();
    const double room = box.right() - c.geometry.padding() * 0.6 - left;
    c.painter.setPen(dashedPen(colour, 4, 3.5));
    c.painter.setBrush(c.ground());
    c.painter.drawRoundedRect(box, 6, 6);
    const FittedText title = fitted(need.title, room, c.theme, {14, 13, 12}, QFont::DemiBold);
    if (c.geometry.isTight()) {
        c.text({left, box.center().y() + c.px(5)}, title.text, title.font, colour);
        return;
    }
    c.text({left, box.center().y() - c.px(4)}, title.text, title.font, colour);
    const QPointF below(left, box.center().y() + c.px(16));
    if (need.needed > 0) {
        paintPips(c, need, below, room, colour);
    } else {
        const FittedText note = fitted(need.note, room, c.theme, {12}, QFont::Normal);
        c.text(below, note.text, note.font, c.theme.ink2);
    }
}

void paintWayRound(const ColumnPaint& c, const BoardNeed& need)
{
    const double x = c.geometry.columnRect(c.index).right() - c.px(11);
    const double foot = c.geometry.needRect(c.index, need.stage).top() - 2;
    const QColor colour = c.theme.stage(need.stage);
    c.painter.setBrush(Qt::NoBrush);
    c.painter.setPen(dashedPen(colour, 4, 3.5));
    c.painter.drawLine(QPointF(x, c.geometry.blockRect(c.index, c.column.stage).bottom() + 3), QPointF(x, foot - 2));
    c.painter.setPen(QPen(colour, 1.7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    c.painter.drawPolyline(QPolygonF({{x - 4.5, foot - 6}, {x, foot}, {x + 4.5, foot - 6}}));
}

void paintBlock(const ColumnPaint& c)
{
    const BoardColumn& column = c.column;
    const QRectF box = c.geometry.blockRect(c.index, column.stage);
    const QColor fill = column.isOutlined ? c.ground() : c.theme.stage(column.stage);
    const QColor ink = column.isOutlined ? c.theme.stage(column.stage) : c.theme.onStage(column.stage);
    c.painter.setPen(column.isOutlined ? QPen(ink, 2) : QPen(Qt::NoPen));
    c.painter.setBrush(fill);
    c.painter.drawRoundedRect(column.isOutlined ? box.adjusted(1, 1, -1, -1) : box, 6, 6);

    const double left = box.x() + c.geometry.padding();
    const double room = box.right() - c.geometry.padding() * 0.7 - left;
    const bool isTall = box.height() > c.px(62);
    const double titleSize = c.geometry.isNarrow() ? 15 : 16;
    const FittedText title = fitted(column.title, room, c.theme, {titleSize, 14, 13, 12}, QFont::Bold);
    if (c.geometry.isTight()) {
        c.text({left, box.center().y() + c.px(5)}, title.text, title.font, ink);
        return;  // sets and reps are in the inspector
    }
    c.text({left, box.y() + c.px(isTall ? 23 : 20)}, title.text, title.font, ink);
    const FittedText sub = fitted(column.sub, room, c.theme, {13, 12}, QFont::Medium);
    c.text({left, box.y() + c.px(isTall ? 41 : 36)}, sub.text, sub.font, ink);

    const double foot = box.bottom() - c.px(isTall ? 19 : 17);
    if (foot < box.y() + c.px(isTall ? 41 : 36) + 1) {
        return;  // a low window at a large text size: the shape stands at the left of the rung as well
    }
    c.painter.fillPath(common::stageGlyph(column.stage, QRectF(left, foot, c.px(11), c.px(11))), ink);
    const FittedText note = fitted(column.foot, room - c.px(16), c.theme, {12}, QFont::Medium);
    c.text({left + c.px(16), foot + c.px(9.5)}, note.text, note.font, ink);
}

void paintTag(const ColumnPaint& c)
{
    if (c.column.tag == BoardTag::None) {
        return;
    }
    const TagLook look = lookOf(c.column.tag);
    const common::SignalColours colours = c.theme.signal(look.signal);
    const QRectF box = c.geometry.tagRect(c.index, c.column.stage);
    c.painter.setPen(QPen(colours.line, 1));
    c.painter.setBrush(colours.fill);
    c.painter.drawRoundedRect(box, 4, 4);
    const double side = c.px(16);
    common::paintIcon(c.painter, QRectF(box.center() - QPointF(side, side) / 2, QSizeF(side, side)), look.icon, colours.ink, c.theme);
}

}  // namespace chalk::ui::board
