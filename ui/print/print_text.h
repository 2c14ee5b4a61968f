#pragma once

#include <QFont>
#include <QString>
#include <QStringList>

#include <initializer_list>

namespace chalk::ui::print {

/// No text on paper is smaller than this.
inline constexpr double kLeastPoints = 8;
/// Pixels of a print font to the millimetre.
inline constexpr double kFontUnitsPerMm = 100;
inline constexpr double kMmPerPoint = 25.4 / 72;

/// A face of the program for paper, `points` high on a sheet (1 pt = 1/72 in). Without shaping: contextual glyphs would not
/// come out as text from a PDF. `isDisplay` for names and lone figures only: its digits are not tabular.
[[nodiscard]] QFont printFont(double points, QFont::Weight weight, bool isDisplay = false);
/// The size that a print font was made with.
[[nodiscard]] double pointsOf(const QFont& font);

/// How far a line of text goes, in millimetres.
[[nodiscard]] double widthOf(const QString& text, const QFont& font);
/// Height of a capital or a digit, in millimetres.
[[nodiscard]] double capHeightOf(const QFont& font);

/// A text and the largest of some sizes at which it fits a width.
struct FittedPrint {
    QString text;
    QFont font;
};

/// `points`, the largest first. What does not fit at the last one is cut with an ellipsis. `width` in millimetres.
[[nodiscard]] FittedPrint fitted(const QString& text, double width, std::initializer_list<double> points, QFont::Weight weight,
                                 bool isDisplay = false);

/// Breaks a text at spaces into lines that fit `width` millimetres; a word that is too long for one line is broken inside. At
/// least one line.
[[nodiscard]] QStringList wrapped(const QString& text, const QFont& font, double width);

}  // namespace chalk::ui::print
