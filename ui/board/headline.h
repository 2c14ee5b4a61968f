#pragma once

#include "ui/common/theme.h"

#include <QRectF>
#include <QString>

class QPainter;

namespace chalk::ui::board {

/// What is next, large: `77.5 kg  3 × 8` and when.
struct HeadlineView {
    QString number;  ///< `77.5`, `2 × 12`, `bodyweight`, `On hold`
    QString unit;    ///< `kg`; empty where the number is words
    QString sets;    ///< `3 × 8`
    QString when;    ///< `today`; at the right end
    bool isPain = false;

    bool operator==(const HeadlineView&) const = default;
};

[[nodiscard]] double headlineHeight(const common::Theme& theme);
/// Fills the width of `rect`; what would not fit is drawn smaller.
void paintHeadline(QPainter& painter, const QRectF& rect, const HeadlineView& view, const common::Theme& theme);

}  // namespace chalk::ui::board
