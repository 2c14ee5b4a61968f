#pragma once

#include <QString>

namespace chalk::ui::board {

class Painted;

/// Makes a picture the tile of a client who is open: 40 px square in chalk, with the initials.
void setInitials(Painted& tile, const QString& initials);

}  // namespace chalk::ui::board
