#pragma once

#include "ui/print/sheet.h"

#include <QPainterPath>

namespace chalk::ui::print {

/// A dashed line to cut along.
void addCutLine(Sheet& sheet, const QLineF& line);

/// A line along `path`, `stroke` millimetres thick, as a black shape. `dashes` are millimetres of black and white in turn; none for a whole
/// line.
[[nodiscard]] QPainterPath strokedPath(const QPainterPath& path, double stroke, const QList<double>& dashes);

}  // namespace chalk::ui::print
