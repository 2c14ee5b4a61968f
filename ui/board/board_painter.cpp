#include "ui/board/board_painter.h"

#include "ui/board/board_text.h"
#include "ui/board/fitted_text.h"
#include "ui/common/formats.h"
#include "ui/common/stage_glyph.h"

#include <QPainter>
#include <QPainterPath>

namespace chalk::ui::board {

namespace {

using common::Theme;
using progression::Stage;

QPen roundPen(const QColor& colour, double width)
{
    return {colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

QString moverOf(Stage stage)
{
    switch (stage) {
    case Stage::Pattern:
        return BoardText::tr("no load");
    case Stage::Control:
        return BoardText::tr("pauses");
    case Stage::BaseLoad:
        return BoardText::tr("first load");
    case Stage::LoadBuild:
        return BoardText::tr("load moves");
    case Stage::RepBuild:
        return BoardText::tr("reps move");
    case Stage::SetBuild:
        return BoardText::tr("sets move");
    case Stage::RestCut:
        return BoardText::tr("rest moves");
    }
    return {};
}

void paintWash(QPainter& painter, const BoardGeometry& geometry, const BoardFocus& focus, const Theme& theme)
{
    if (focus.selected < 0) {
        return;
    }
    QRectF column = geometry.columnRect(0);
    column.translate(focus.washAt * geometry.columnWidth(), 0);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.wash);
    painter.drawRoundedRect(column.adjusted(1, 0, -1, -2), 8, 8);
    painter.setBrush(theme.mark);
    painter.drawRoundedRect(QRectF(column.x() + 10, column.bottom() - 5, column.width() - 20, 4), 2, 2);
    if (focus.hasRing) {
        painter.setPen(QPen(theme.focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(column.adjusted(2, 1, -2, -3), 7, 7);
    }
}

/// `Learn` and `Build` at the far left, each beside its rungs.
void paintBand(QPainter& painter, const BoardGeometry& geometry, Stage low, Stage high, const QString& text, const Theme& theme)
{
    const double x = theme.scaled(9);
    const double top = geometry.rungTop(high);
    const double bottom = geometry.rungTop(low) + geometry.rungHeight();
    const QFont font = theme.font(kLeastTextPx, QFont::DemiBold);
    const double width = QFontMetricsF(font).horizontalAdvance(text);
    painter.setPen(roundPen(theme.line2, 2));
    painter.drawLine(QPointF(x, top + 10), QPointF(x, bottom - 8));
    painter.save();
    painter.translate(x, (top + bottom) / 2);
    painter.rotate(-90);
    const QRectF ground(-width / 2 - 6, -theme.scaled(9), width + 12, theme.scaled(18));
    painter.fillRect(ground, theme.surface);
    painter.setFont(font);
    painter.setPen(theme.ink3);
    painter.drawText(ground, Qt::AlignCenter, text);
    painter.restore();
}

void paintLabel(QPainter& painter, const BoardGeometry& geometry, Stage stage, const Theme& theme)
{
    const double middle = geometry.rungMiddle(stage);
    const double left = theme.scaled(48);
    const double room = geometry.leftPost() - left - 2;
    const double up = geometry.isTight() ? theme.scaled(9) : 0;  // one line stands in the middle
    painter.fillPath(common::stageGlyph(stage, QRectF(theme.scaled(26), middle - theme.scaled(17) + up, theme.scaled(16), theme.scaled(16))),
                     theme.stage(stage));
    const QString name = QStringLiteral("%1 %2").arg(progression::numberOf(stage)).arg(common::stageName(stage));
    const FittedText text = fitted(name, room, theme, {14, 13, 12}, QFont::DemiBold);
    painter.setFont(text.font);
    painter.setPen(theme.ink);
    painter.drawText(QPointF(left, middle - theme.scaled(4) + up), text.text);
    if (geometry.isTight()) {
        return;
    }
    painter.setFont(theme.font(kLeastTextPx, QFont::Normal));
    painter.setPen(theme.ink3);
    painter.drawText(QPointF(left, middle + theme.scaled(13)), moverOf(stage));
}

void paintLadder(QPainter& painter, const BoardGeometry& geometry, const Theme& theme)
{
    const double left = geometry.leftPost();
    const double right = geometry.rightPost();
    for (const Stage stage : progression::kStages) {
        const double y = geometry.rungTop(stage) + geometry.rungHeight() - 1;
        const bool isBorder = stage == Stage::LoadBuild;
        painter.setPen(roundPen(isBorder ? theme.line2 : theme.line, isBorder ? 2.5 : 2));
        painter.drawLine(QPointF(left, y), QPointF(right, y));
        paintLabel(painter, geometry, stage, theme);
    }
    painter.setPen(roundPen(theme.line2, 2.5));
    for (const double x : {left, right}) {
        painter.drawLine(QPointF(x, geometry.headHeight() - 2), QPointF(x, geometry.size().height() - 4));
    }
}

/// The way from Rest cut round to Load build.
void paintReturn(QPainter& painter, const BoardGeometry& geometry, const Theme& theme)
{
    const double x = geometry.rightPost() + 2;
    const double top = geometry.rungMiddle(Stage::RestCut);
    const double bottom = geometry.rungMiddle(Stage::LoadBuild);
    const double bend = std::min(44.0, (bottom - top) / 2);
    const double out = x + theme.scaled(geometry.isNarrow() ? 18 : 24);
    QPainterPath way(QPointF(x, top));
    way.cubicTo(out + 4, top, out, top + bend * 0.45, out, top + bend);
    way.lineTo(out, bottom - bend);
    way.cubicTo(out, bottom - bend * 0.45, out + 4, bottom, x + 8, bottom);
    painter.setPen(roundPen(theme.ink3, 2.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(way);
    painter.drawPolyline(QPolygonF({{x + 13, bottom - 6}, {x + 5, bottom}, {x + 13, bottom + 6}}));

    const FittedText text = fitted(BoardText::tr("round again, heavier"), bottom - top - 8, theme, {12}, QFont::Medium);
    painter.save();
    painter.translate(out + theme.scaled(geometry.isNarrow() ? 11 : 12), (top + bottom) / 2);
    painter.rotate(90);
    painter.setFont(text.font);
    painter.setPen(theme.ink2);
    painter.drawText(QPointF(-QFontMetricsF(text.font).horizontalAdvance(text.text) / 2, theme.scaled(2)), text.text);
    painter.restore();
}

void paintRungCursor(QPainter& painter, const BoardGeometry& geometry, const BoardFocus& focus, const Theme& theme)
{
    if (focus.selected >= 0 && focus.rung) {
        painter.setPen(QPen(theme.mark, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(geometry.cellRect(focus.selected, *focus.rung).adjusted(2, 3, -2, -2), 8, 8);
    }
}

}  // namespace

void paintBoard(QPainter& painter, const BoardGeometry& geometry, const BoardColumns& columns, const BoardFocus& focus, const Theme& theme)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.save();
    painter.setClipRect(geometry.columnsArea());
    paintWash(painter, geometry, focus, theme);
    painter.restore();

    paintBand(painter, geometry, Stage::Pattern, Stage::BaseLoad, BoardText::tr("Learn"), theme);
    paintBand(painter, geometry, Stage::LoadBuild, Stage::RestCut, BoardText::tr("Build"), theme);
    paintLadder(painter, geometry, theme);
    paintReturn(painter, geometry, theme);

    painter.setClipRect(geometry.columnsArea());
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const int index = static_cast<int>(i);
        if (geometry.columnRect(index).intersects(geometry.columnsArea())) {
            paintColumn(painter, geometry, index, columns[i], index == focus.selected, theme);
        }
    }
    paintRungCursor(painter, geometry, focus, theme);
}

}  // namespace chalk::ui::board
