#pragma once

#include "core/progression/stage.h"

#include <QPainterPath>
#include <QRectF>

namespace chalk::ui::common {

/// The shape of a stage, to be filled with one colour: ring, two bars, block, wedge, three dots, three stacked bars, disc with a
/// slice cut out. `square` is the 16-unit square that the shape is drawn in.
[[nodiscard]] QPainterPath stageGlyph(progression::Stage stage, const QRectF& square);

}  // namespace chalk::ui::common
