#pragma once

#include "ui/common/theme.h"

#include <QFont>
#include <QString>
#include <QStringList>

#include <initializer_list>

class QPainter;

namespace chalk::ui::board {

/// No text on the board is smaller than this, in pixels at 100 %.
inline constexpr double kLeastTextPx = 12;

/// A text and the largest of some sizes at which it fits a width; where none does, a little narrower, and at last cut with an
/// ellipsis.
struct FittedText {
    QFont font;
    QString text;
};

/// `sizes` in pixels at 100 %, the largest first.
[[nodiscard]] FittedText fitted(const QString& text, double width, const common::Theme& theme, std::initializer_list<double> sizes,
                                QFont::Weight weight);

/// Some lines of one font.
struct FittedLines {
    QFont font;
    QStringList lines;
};

/// Breaks a text at spaces or after hyphens into the fewest lines that fit a width, as even as they go: first at the first
/// of the sizes, then at the next. What does not fit into `most` lines at the last size is cut with an ellipsis.
[[nodiscard]] FittedLines fittedLines(const QString& text, double width, int most, const common::Theme& theme,
                                      std::initializer_list<double> sizes, QFont::Weight weight);

}  // namespace chalk::ui::board
