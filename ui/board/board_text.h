#pragma once

#include <QCoreApplication>

namespace chalk::ui::board {

/// The context in which the words of the client page are translated where they are not said by a widget.
class BoardText {
    Q_DECLARE_TR_FUNCTIONS(BoardText)
};

}  // namespace chalk::ui::board
