#pragma once

#include "ui/trends/chart_view.h"

#include <QByteArray>
#include <QSizeF>

namespace chalk::ui::trends {

/// A chart with what it is called.
struct NamedChart {
    QString name;      ///< `Load-volume by week`
    QString title;     ///< `Load-volume by week, kg × reps`, above the picture
    QString fileName;  ///< `load-volume`, without a suffix
    ChartPaint paint;
    QSizeF size;       ///< in pixels, without the title
};

/// The chart in the colours of the theme, twice as many pixels as its size for sharp print.
[[nodiscard]] QByteArray pngOf(const NamedChart& chart, const common::Theme& theme);
/// The same as lines and letters.
[[nodiscard]] QByteArray svgOf(const NamedChart& chart, const common::Theme& theme);

}  // namespace chalk::ui::trends
