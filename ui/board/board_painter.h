#pragma once

#include "ui/board/board_column.h"
#include "ui/board/board_geometry.h"
#include "ui/common/theme.h"

#include <optional>

class QPainter;

namespace chalk::ui::board {

/// What of a board is picked out at the moment.
struct BoardFocus {
    int selected = -1;
    double washAt = 0;  ///< where the wash of the selected column is on its way: a column number, whole when it is there
    std::optional<progression::Stage> rung;  ///< the rung of the selected column that is being read
    bool hasRing = false;                    ///< the board has the keyboard
};

/// Draws a whole stage board.
void paintBoard(QPainter& painter, const BoardGeometry& geometry, const BoardColumns& columns, const BoardFocus& focus,
                const common::Theme& theme);

/// Draws one column without its ground: head, trail, dates, dashed box, block.
void paintColumn(QPainter& painter, const BoardGeometry& geometry, int index, const BoardColumn& column, bool isSelected,
                 const common::Theme& theme);

}  // namespace chalk::ui::board
