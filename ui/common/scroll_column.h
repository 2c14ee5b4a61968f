#pragma once

#include <QScrollArea>

namespace chalk::ui::common {

/// Puts a column of things into a scroll area as panels have it: as wide as the area, on the panel's own ground, out of the chain of
/// focus. What is wider than the area can be scrolled to. `contents` becomes the area's.
void holdColumn(QScrollArea& area, QWidget* contents);

}  // namespace chalk::ui::common
