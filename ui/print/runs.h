#pragma once

#include "ui/print/print_text.h"
#include "ui/print/sheet.h"

#include <vector>

namespace chalk::ui::print {

/// A piece of a line in one face.
struct Run {
    QString text;
    double points = 9.5;
    QFont::Weight weight = QFont::Medium;
    bool isDisplay = false;
    bool isFramed = false;  ///< the number that moves today
    double gap = 0;         ///< millimetres before it
};
using Runs = std::vector<Run>;

/// How wide a line is with all its sizes and gaps multiplied by `scale`, none below the least size, in millimetres.
[[nodiscard]] double widthOf(const Runs& runs, double scale = 1);
/// The largest scale, at most 1, at which the line fits `width` millimetres.
[[nodiscard]] double scaleToFit(const Runs& runs, double width);
/// The first of several ways to say a thing that fits `width`; where none does, the first that does at `leastScale`, else the
/// last one. At least one way must be given.
[[nodiscard]] const Runs& bestFit(const std::vector<Runs>& ways, double width, double leastScale);
/// The line with its last piece cut by an ellipsis where it does not fit `width` at `scale`.
[[nodiscard]] Runs elided(Runs runs, double width, double scale);

/// Puts a line of small print into `cell`: the best of the ways to say it, as large as it fits down to 8 pt, cut at the end
/// where even that does not fit. Nothing where there is no way.
void placeBest(Sheet& sheet, const std::vector<Runs>& ways, const QRectF& cell);

/// Puts the line at the left of `cell`, its capitals in the middle of the cell's height, and draws the frames.
void place(Sheet& sheet, const Runs& runs, const QRectF& cell, double scale = 1);
/// The same in the middle of the cell's width.
void placeCentred(Sheet& sheet, const Runs& runs, const QRectF& cell, double scale = 1);

}  // namespace chalk::ui::print
