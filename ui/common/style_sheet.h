#pragma once

#include "ui/common/theme.h"

#include <QString>

namespace chalk::ui::common {

// What the style sheet (resources/style.qss) reads off a widget. Set by setProperty, mostly before it is shown; after a
// later change call `restyle`.
//
//   QPushButton, QToolButton   kind: primary | plain (no edge) | link | danger; nothing for the normal button
//                              sizing: small (32 px) | large (44 px); nothing for 36 px
//   QLabel                     role: title | section | figure | load | strong | small | secondary | muted | caption
//   QFrame                     panel: true   the white card with a line around it
//                              rule: true    a 1 px line; set a fixed height or width of 1
//   QWidget                    ground: win | surface | raised | sunken   a filled background
//   QLineEdit, QSpinBox …      invalid: true   a red edge; the reason stands beside it
//                              sizing: large (44 px)
//   QTabBar                    underlined tabs as on the client page, always

/// The style sheet of a theme: the template in the resources with `@name` replaced by colours and `@px(n)` by lengths that grow
/// with the text.
[[nodiscard]] QString styleSheetFor(const Theme& theme);

/// Fills in a template. An unknown @name stays as it is, for a test to find.
[[nodiscard]] QString filledIn(QString styleTemplate, const Theme& theme);

/// Makes a widget read its properties again.
void restyle(QWidget& widget);

}  // namespace chalk::ui::common
