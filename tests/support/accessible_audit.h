#pragma once

#include <QStringList>

class QWidget;

namespace chalk::tests {

/// What a screen reader would find without a name among everything in `root` that can take the focus: class, role and place of
/// each. Cells of tables are left out: they are read with their text.
[[nodiscard]] QStringList unnamedFocusables(QWidget& root);

/// How many things in `root` can take the focus, so that an audit of nothing does not pass for a clean one.
[[nodiscard]] int focusableCount(QWidget& root);

}  // namespace chalk::tests
