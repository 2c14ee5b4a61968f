#pragma once

#include "ui/board/board_painter.h"

#include <QPainter>
#include <QPen>

namespace chalk::ui::board {

/// One column on its way to the painter.
struct ColumnPaint {
    QPainter& painter;
    const BoardGeometry& geometry;
    int index;
    const BoardColumn& column;
    bool isSelected;
    const common::Theme& theme;

    [[nodiscard]] double px(double length) const { return theme.scaled(length); }
    [[nodiscard]] QColor ground() const { return isSelected ? theme.wash : theme.surface; }

    void text(QPointF baseline, const QString& words, const QFont& font, const QColor& colour) const
    {
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(baseline, words);
    }
};

/// A dashed line of 1.5 px, `on` and `off` in pixels.
[[nodiscard]] QPen dashedPen(const QColor& colour, double on, double off);

/// The dashed box: what is still needed.
void paintNeed(const ColumnPaint& c, const BoardNeed& need);
/// From the block at Rest cut down to the dashed box of the next cycle.
void paintWayRound(const ColumnPaint& c, const BoardNeed& need);
/// The next prescription at the present rung.
void paintBlock(const ColumnPaint& c);
/// The small sign at the block's corner, if there is one.
void paintTag(const ColumnPaint& c);

}  // namespace chalk::ui::board
