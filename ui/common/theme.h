#pragma once

#include "core/lifts/pattern.h"
#include "core/progression/stage.h"

#include <QBrush>
#include <QColor>
#include <QFont>
#include <QString>

#include <array>
#include <cstdint>
#include <memory>

namespace chalk::ui::common {

class IconStore;

/// Paper is light, Slate is dark, Print is black on white and nothing else.
enum class Tone : std::uint8_t { Paper, Slate, Print };

/// The steps of the type scale, in pixels at a text size of 100 %.
enum class TextStyle : std::uint8_t {
    Micro,    ///< 12, medium: tags, axis text, column captions
    Small,    ///< 13
    Body,     ///< 14
    Strong,   ///< 14, semi-bold
    Section,  ///< 15, semi-bold
    Title,    ///< 22, the display face: its digits are not tabular
    Figure,   ///< 28
    Load      ///< 44, bold
};
inline constexpr int kTextStyleCount = 8;

/// What a banner, a flag or a message is about. Red is only pain, clearance and conflicts; amber only cautions and plateaus.
enum class Signal : std::uint8_t { Pain, Warn, Ok, Info, Muted };

/// The three colours of a signal: text on `fill`, the fill, and the line around it.
struct SignalColours {
    QColor ink;
    QColor fill;
    QColor line;
};

/// How a pattern's area is filled in charts; `edge` is the 1 px line around a pale fill, not valid where none is needed.
struct PatternFill {
    QColor fill;
    QColor edge;
    Qt::BrushStyle texture = Qt::SolidPattern;
};

/// A step of the type scale.
struct TypeStep {
    int px = 14;
    int weight = 400;
};

/// All that a painter needs to know of the look: colours by role, the type scale and the icons. A value; cheap to copy.
/// The names of the colours are those of resources/tokens.json.
struct Theme {
    Tone tone = Tone::Paper;
    int textPercent = 100;  ///< 90 to 150

    QColor win, surface, raised, sunken, hover;               ///< grounds, from the window to what lies on top
    QColor line, line2, ctl;                                  ///< hairline, stronger line, edge of a control
    QColor ink, ink2, ink3;                                   ///< text, secondary, least
    QColor rail, rail2, railInk, railOn, railLine;            ///< the frame, dark in both themes
    QColor chalk, chalkInk, wash, wash2, mark;                ///< "here, now" and nothing else
    QColor pri, priInk, priHover, link, focus;                ///< primary button, link, focus ring
    QColor pain, painBg, painLine, warn, warnBg, warnLine, ok, okBg, okLine, info, infoBg, infoLine;
    QColor rungPast, attDot, grid, axis;

    std::array<QColor, 7> stages;
    std::array<QColor, 7> onStages;
    std::array<PatternFill, 8> patterns;
    std::array<TypeStep, kTextStyleCount> type;
    std::shared_ptr<const IconStore> icons;

    /// The colour of a stage. Never alone: its shape is drawn with it.
    [[nodiscard]] QColor stage(progression::Stage stage) const;
    /// Text and shapes on a fill of the stage's colour.
    [[nodiscard]] QColor onStage(progression::Stage stage) const;
    [[nodiscard]] const PatternFill& pattern(lifts::Pattern pattern) const;
    [[nodiscard]] SignalColours signal(Signal signal) const;

    /// A length in pixels that grows with the text: heights of rows and controls, widths of columns of text.
    [[nodiscard]] double scaled(double px) const { return px * textPercent / 100.0; }
    [[nodiscard]] QFont font(TextStyle style) const;
    /// A size between the steps, in pixels at 100 %; `isDisplay` for titles and lone figures only.
    [[nodiscard]] QFont font(double px, QFont::Weight weight, bool isDisplay = false) const;
};

/// The theme of a tone, read from the tokens in the program. Throws std::logic_error where they are not complete: that
/// is a fault of the build. `icons` is shared, not copied.
[[nodiscard]] Theme readTheme(Tone tone, int textPercent, std::shared_ptr<const IconStore> icons);

/// Makes the faces of the type scale known to Qt; once, before the first window. False where one is missing.
bool loadFonts();

/// The contrast of two opaque colours, 1 to 21 (WCAG 2.2, definition of contrast ratio).
[[nodiscard]] double contrastOf(const QColor& a, const QColor& b);

}  // namespace chalk::ui::common
