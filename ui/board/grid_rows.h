#pragma once

#include <QString>

class QGridLayout;
class QLabel;
class QWidget;

namespace chalk::ui::board {

/// A label of a role of the style sheet; plain text.
[[nodiscard]] QLabel* rowLabel(const QString& text, const char* role, bool isWrapped, QWidget* parent);
/// Takes every widget out of a grid and deletes it.
void clearRows(QGridLayout& grid);

}  // namespace chalk::ui::board
