#pragma once

#include "ui/common/theme.h"

#include <QByteArray>

#include <span>

namespace chalk::ui::common {

/// One colour of a theme by its name in the tokens.
struct NamedColour {
    const char* name;
    QColor Theme::*member;
};

/// Every colour that the tokens must name, in the order of theme.h. The style sheet knows them as `@name`.
[[nodiscard]] std::span<const NamedColour> namedColours();

/// A theme from the text of the tokens, without icons. Throws std::logic_error that names what is missing.
[[nodiscard]] Theme themeFromTokens(const QByteArray& json, Tone tone);

}  // namespace chalk::ui::common
