#pragma once

#include "core/base/load.h"
#include "ui/common/theme.h"

#include <QRectF>
#include <QSizeF>

#include <vector>

class QPainter;

namespace chalk::ui::common {

/// The plates on one side of a bar.
struct PlateStackView {
    std::vector<base::Load> plates;  ///< from the collar outwards, heaviest first; empty for the bare bar
    base::MassUnit unit = base::MassUnit::Kilogram;
    bool isLabelled = true;          ///< each plate's mass below it

    bool operator==(const PlateStackView&) const = default;
};

/// The size that the picture takes at the theme's text size: 52 px high at 100 %.
[[nodiscard]] QSizeF plateStackSize(const PlateStackView& view, const Theme& theme);
/// Draws the bar's sleeve and its plates at the left of `rect`, shrunk where `rect` is smaller than the size above.
void paintPlateStack(QPainter& painter, const QRectF& rect, const PlateStackView& view, const Theme& theme);
/// `25 + 2.5 + 1.25`; `no plates` for the bare bar.
[[nodiscard]] QString plateStackText(const PlateStackView& view);

}  // namespace chalk::ui::common
