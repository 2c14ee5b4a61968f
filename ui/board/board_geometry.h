#pragma once

#include "ui/board/board_column.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>

#include <cstdint>
#include <vector>

namespace chalk::ui::board {

/// A part of the board that can be pointed at.
enum class BoardPart : std::uint8_t { Nothing, Head, Block, Need, Date, Screen, Column };

/// A part and where it lies, in the widget's coordinates.
struct BoardBox {
    BoardPart part = BoardPart::Nothing;
    int column = -1;
    progression::Stage stage = progression::Stage::Pattern;
    QRectF rect;
};

/// Where everything on the stage board lies. Painting, pointing and screen readers all ask here, so they always agree.
/// Lengths are pixels at `textScale` 1 and grow with it.
class BoardGeometry {
public:
    /// Below this width of the board everything is set a little tighter.
    static constexpr double kNarrow = 860;

    BoardGeometry(QSizeF size, int columns, double textScale, double scroll);

    [[nodiscard]] bool isNarrow() const { return m_isNarrow; }
    [[nodiscard]] double scale() const { return m_scale; }
    [[nodiscard]] QSizeF size() const { return m_size; }
    [[nodiscard]] int columns() const { return m_columns; }
    [[nodiscard]] double columnWidth() const { return m_columnWidth; }
    /// Whether a rung has room for one line of text only: a low window at a large text size.
    [[nodiscard]] bool isTight() const { return m_rungHeight < 44 * m_scale; }
    [[nodiscard]] double rungHeight() const { return m_rungHeight; }
    [[nodiscard]] double headHeight() const { return m_head; }
    /// The gap between a box and the text in it.
    [[nodiscard]] double padding() const { return (m_isNarrow ? 7 : 9) * m_scale; }
    /// How far the columns can be moved to the left; 0 where all are seen.
    [[nodiscard]] double scrollRange() const;
    /// The scroll position nearest to the present one at which the whole column is seen.
    [[nodiscard]] double scrollToShow(int column) const;

    /// The strip that the columns are seen through; they are clipped to it.
    [[nodiscard]] QRectF columnsArea() const;
    /// The left and the right post.
    [[nodiscard]] double leftPost() const { return m_labels - 6 * m_scale; }
    [[nodiscard]] double rightPost() const { return columnsArea().right() + 6 * m_scale; }
    [[nodiscard]] QRectF columnRect(int column) const;
    [[nodiscard]] QRectF headRect(int column) const;
    /// One rung of one column.
    [[nodiscard]] QRectF cellRect(int column, progression::Stage stage) const;
    /// One rung across the labels at the left.
    [[nodiscard]] QRectF labelRect(progression::Stage stage) const;
    /// The margin right of the posts, where the way back to Load build is drawn, from rung 7 to rung 4.
    [[nodiscard]] QRectF returnRect() const;
    [[nodiscard]] double rungTop(progression::Stage stage) const;
    [[nodiscard]] double rungMiddle(progression::Stage stage) const { return rungTop(stage) + m_rungHeight / 2; }
    /// Where the trail of a column runs.
    [[nodiscard]] double trailX(int column) const;
    [[nodiscard]] QRectF blockRect(int column, progression::Stage stage) const;
    [[nodiscard]] QRectF needRect(int column, progression::Stage stage) const;
    /// The words beside a dot on the trail.
    [[nodiscard]] QRectF dateRect(int column, progression::Stage stage) const;
    [[nodiscard]] QRectF tagRect(int column, progression::Stage stage) const;

    /// All that can be pointed at in a column; no two overlap.
    [[nodiscard]] std::vector<BoardBox> boxesOf(int index, const BoardColumn& column) const;
    /// What lies at a point: a box, else the column, else nothing.
    [[nodiscard]] BoardBox boxAt(QPointF point, const BoardColumns& columns) const;

private:
    QSizeF m_size;
    int m_columns;
    double m_scale;
    bool m_isNarrow;
    double m_scroll;
    double m_labels;
    double m_right;
    double m_head;
    double m_columnWidth;
    double m_rungHeight;
};

}  // namespace chalk::ui::board
