#pragma once

#include "core/progression/stage.h"
#include "ui/common/theme.h"

#include <QRectF>

#include <vector>

class QPainter;

namespace chalk::ui::common {

/// One number of a prescription.
struct Dial {
    QString caption;  ///< `Reps`
    QString value;    ///< `7 → 8`
    bool isMoving = false;

    bool operator==(const Dial&) const = default;
};

/// The numbers of a prescription side by side; the one that moves is filled with the stage's colour.
struct DialsView {
    progression::Stage stage = progression::Stage::Pattern;
    std::vector<Dial> dials;

    bool operator==(const DialsView&) const = default;
};

/// The height of the dials: 50 px at a text size of 100 %.
[[nodiscard]] double dialsHeight(const Theme& theme);
/// Fills `rect` with dials of equal width. A value too wide for its dial is drawn smaller, never cut.
void paintDials(QPainter& painter, const QRectF& rect, const DialsView& view, const Theme& theme);

}  // namespace chalk::ui::common
