#pragma once

#include "core/lifts/pattern.h"
#include "core/progression/stage.h"
#include "ui/common/theme.h"

#include <QRectF>
#include <QSizeF>

#include <array>
#include <optional>

class QPainter;

namespace chalk::ui::common {

enum class LiftMark : std::uint8_t { None, Pain, Plateau };

/// One ladder of the strip.
struct LiftStripColumn {
    std::optional<progression::Stage> stage;  ///< nothing: not screened yet
    int cycle = 1;
    LiftMark mark = LiftMark::None;

    bool operator==(const LiftStripColumn&) const = default;
};

/// A client's eight patterns as ladders, in the order of lifts::kPatterns.
struct LiftStripView {
    std::array<LiftStripColumn, 8> lifts;

    bool operator==(const LiftStripView&) const = default;
};

/// The size that the strip is drawn in: 38 px high at a text size of 100 %.
[[nodiscard]] QSizeF liftStripSize(const Theme& theme);
/// Draws the strip at the left of `rect`, in the middle of its height.
void paintLiftStrip(QPainter& painter, const QRectF& rect, const LiftStripView& view, const Theme& theme);
/// Eight ladders with every rung still to come: what stands in for a strip while it loads.
void paintUnclimbedStrip(QPainter& painter, const QRectF& rect, const Theme& theme);
/// Sq Hi HP HL … above the ladders of a strip drawn in a rectangle of the same left edge.
void paintLiftStripCaptions(QPainter& painter, const QRectF& rect, const Theme& theme);
/// The ladder at `x` of a strip drawn in `rect`; nothing beside them.
[[nodiscard]] std::optional<lifts::Pattern> liftStripHit(const QRectF& rect, double x, const Theme& theme);
/// The same in words, for screen readers and tool tips: eight short phrases.
[[nodiscard]] QString liftStripText(const LiftStripView& view);
/// One ladder in words: `Squat: 5 Rep build, cycle 2, plateau`.
[[nodiscard]] QString liftStripColumnText(lifts::Pattern pattern, const LiftStripColumn& column);

}  // namespace chalk::ui::common
