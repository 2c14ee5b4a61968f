#pragma once

#include "core/progression/stage.h"
#include "ui/common/theme.h"

#include <QPointF>
#include <QRectF>
#include <QStringList>

class QPainter;

namespace chalk::ui::common {

/// Little squares for what is counted: filled as far as it is done.
struct PipsView {
    int done = 0;
    int needed = 0;
    QColor colour;  ///< of the stage that they lead to, or of a signal

    bool operator==(const PipsView&) const = default;
};

/// The width of `needed` pips without a number.
[[nodiscard]] double pipsWidth(int needed, const Theme& theme);
/// Draws the pips from the left of `rect`, in the middle of its height; as many as fit.
void paintPips(QPainter& painter, const QRectF& rect, const PipsView& view, const Theme& theme);

/// A stage's shape, number and name on its colour: `5 Rep build · cycle 2`.
struct StageTagView {
    progression::Stage stage = progression::Stage::Pattern;
    int cycle = 1;
    bool hasName = true;

    bool operator==(const StageTagView&) const = default;
};

/// What draws the eye to a client, by kind; each has an icon, a word and a signal.
enum class FlagKind : std::uint8_t { Pain, Clearance, Plateau, Missed, Rescreen, Ready, Away, New };

/// An icon and a word on a signal's ground. `Plateau`.
struct FlagTagView {
    QString icon;
    QString text;
    Signal signal = Signal::Muted;

    bool operator==(const FlagTagView&) const = default;
};

[[nodiscard]] FlagTagView flagTagOf(FlagKind kind);

/// Tags are 24 px high at a text size of 100 %.
[[nodiscard]] double tagHeight(const Theme& theme);
[[nodiscard]] double stageTagWidth(const StageTagView& view, const Theme& theme);
[[nodiscard]] double flagTagWidth(const FlagTagView& view, const Theme& theme);
/// Each draws its tag at the left of `rect`, in the middle of its height; a text that does not fit is elided.
void paintStageTag(QPainter& painter, const QRectF& rect, const StageTagView& view, const Theme& theme);
void paintFlagTag(QPainter& painter, const QRectF& rect, const FlagTagView& view, const Theme& theme);
[[nodiscard]] QString stageTagText(const StageTagView& view);

/// What a key cap lies on.
enum class KeyCapGround : std::uint8_t { Page, Rail, Primary };

/// One key: `Ctrl K`.
struct KeyCapView {
    QString text;
    KeyCapGround ground = KeyCapGround::Page;

    bool operator==(const KeyCapView&) const = default;
};

/// The caps of keys that are written `Ctrl+K` or, where several do the same, `↑ ↓`: `Ctrl K`; `↑`, `↓`.
[[nodiscard]] QStringList keyCapTexts(const QString& keys);

[[nodiscard]] double keyCapWidth(const KeyCapView& view, const Theme& theme);
[[nodiscard]] double keyCapHeight(const Theme& theme);
/// Draws the cap at the left of `rect`, in the middle of its height.
void paintKeyCap(QPainter& painter, const QRectF& rect, const KeyCapView& view, const Theme& theme);

}  // namespace chalk::ui::common
