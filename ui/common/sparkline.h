#pragma once

#include "ui/common/theme.h"

#include <QRectF>

#include <optional>
#include <vector>

class QPainter;

namespace chalk::ui::common {

/// A small line over equal steps of time and what it comes to.
struct SparklineView {
    std::vector<std::optional<double>> values;  ///< oldest first; nothing leaves a gap. Fewer than two: no line
    QString change;                             ///< `+12 %`, `new`; drawn at the right of the line
    bool isFall = false;                        ///< a fall worth a look: the change is drawn in amber and bold

    bool operator==(const SparklineView&) const = default;
};

/// Draws the line, 60 px wide at 100 %, at the left of `rect`, and the change beside it.
void paintSparkline(QPainter& painter, const QRectF& rect, const SparklineView& view, const Theme& theme);

}  // namespace chalk::ui::common
