#include "ui/board/board_geometry.h"

#include <algorithm>

namespace chalk::ui::board {

namespace {

using progression::Stage;

constexpr double kLeastColumn = 84;
constexpr double kLeastColumnNarrow = 78;
constexpr double kMostColumn = 168;
constexpr double kFoot = 6;

double boxInset(bool isNarrow, double scale)
{
    return (isNarrow ? 3 : 5) * scale;
}

}  // namespace

BoardGeometry::BoardGeometry(QSizeF size, int columns, double textScale, double scroll)
    : m_size(size), m_columns(std::max(columns, 0)), m_scale(textScale), m_isNarrow(size.width() < kNarrow * textScale)
{
    m_labels = (m_isNarrow ? 138 : 148) * m_scale;
    m_right = (m_isNarrow ? 44 : 64) * m_scale;
    m_head = 86 * m_scale;
    const double least = (m_isNarrow ? kLeastColumnNarrow : kLeastColumn) * m_scale;
    const double room = m_size.width() - m_labels - m_right;
    m_columnWidth = m_columns == 0 ? least : std::clamp(room / m_columns, least, kMostColumn * m_scale);
    m_rungHeight = (m_size.height() - m_head - kFoot) / static_cast<double>(progression::kStages.size());
    m_scroll = std::clamp(scroll, 0.0, scrollRange());
}

double BoardGeometry::scrollRange() const
{
    const double room = m_size.width() - m_labels - m_right;
    // A column may be wider than its share by a rounding error only: that is nothing to scroll for.
    const double over = m_columns * m_columnWidth - room;
    return over < 0.5 ? 0 : over;
}

double BoardGeometry::scrollToShow(int column) const
{
    const double left = column * m_columnWidth;
    const double room = m_size.width() - m_labels - m_right;
    const double atLeast = std::max(m_scroll, left + m_columnWidth - room);
    return std::clamp(std::min(atLeast, left), 0.0, scrollRange());
}

QRectF BoardGeometry::columnsArea() const
{
    return {m_labels, 0, std::max(0.0, std::min(m_size.width() - m_labels - m_right, m_columns * m_columnWidth)), m_size.height()};
}

QRectF BoardGeometry::columnRect(int column) const
{
    return {m_labels + column * m_columnWidth - m_scroll, 0, m_columnWidth, m_size.height()};
}

QRectF BoardGeometry::headRect(int column) const
{
    QRectF rect = columnRect(column);
    rect.setHeight(m_head);
    return rect;
}

double BoardGeometry::rungTop(Stage stage) const
{
    return m_head + (progression::numberOf(Stage::RestCut) - progression::numberOf(stage)) * m_rungHeight;
}

QRectF BoardGeometry::cellRect(int column, Stage stage) const
{
    const QRectF whole = columnRect(column);
    return {whole.x(), rungTop(stage), whole.width(), m_rungHeight};
}

QRectF BoardGeometry::labelRect(Stage stage) const
{
    return {0, rungTop(stage), leftPost(), m_rungHeight};
}

QRectF BoardGeometry::returnRect() const
{
    return {rightPost(), rungTop(Stage::RestCut), m_right - 7 * m_scale, rungTop(Stage::BaseLoad) - rungTop(Stage::RestCut)};
}

double BoardGeometry::trailX(int column) const
{
    return columnRect(column).x() + 13 * m_scale;
}

QRectF BoardGeometry::blockRect(int column, Stage stage) const
{
    const double inset = boxInset(m_isNarrow, m_scale);
    return cellRect(column, stage).adjusted(inset, 5, -inset, -3);
}

QRectF BoardGeometry::needRect(int column, Stage stage) const
{
    const double inset = boxInset(m_isNarrow, m_scale);
    return cellRect(column, stage).adjusted(inset, 6, -inset, -7);
}

QRectF BoardGeometry::dateRect(int column, Stage stage) const
{
    const QRectF cell = cellRect(column, stage);
    const double half = 10 * m_scale;
    const double left = trailX(column) - 6 * m_scale;
    return {left, cell.center().y() - half, cell.right() - 2 - left, 2 * half};
}

QRectF BoardGeometry::tagRect(int column, Stage stage) const
{
    const QRectF block = blockRect(column, stage);
    return {block.right() - 25 * m_scale, block.top() - 10, 31 * m_scale, (m_isNarrow ? 18 : 20) * m_scale};
}

std::vector<BoardBox> BoardGeometry::boxesOf(int index, const BoardColumn& column) const
{
    std::vector<BoardBox> boxes{{BoardPart::Head, index, column.stage, headRect(index)}};
    if (column.isEmpty()) {
        if (column.canScreen) {
            boxes.push_back({BoardPart::Screen, index, Stage::Pattern, blockRect(index, Stage::Pattern)});
        }
        return boxes;
    }
    boxes.push_back({BoardPart::Block, index, column.stage, blockRect(index, column.stage)});
    if (column.need) {
        boxes.push_back({BoardPart::Need, index, column.need->stage, needRect(index, column.need->stage)});
    }
    for (const Stage stage : progression::kStages) {
        if (column.isDateShown(stage)) {
            boxes.push_back({BoardPart::Date, index, stage, dateRect(index, stage)});
        }
    }
    return boxes;
}

BoardBox BoardGeometry::boxAt(QPointF point, const BoardColumns& columns) const
{
    if (!columnsArea().contains(point)) {
        return {};
    }
    const int index = static_cast<int>((point.x() - m_labels + m_scroll) / m_columnWidth);
    if (index < 0 || index >= static_cast<int>(columns.size())) {
        return {};
    }
    const BoardColumn& column = columns[static_cast<std::size_t>(index)];
    for (const BoardBox& box : boxesOf(index, column)) {
        if (box.rect.contains(point)) {
            return box;
        }
    }
    return {BoardPart::Column, index, column.stage, columnRect(index)};
}

}  // namespace chalk::ui::board
