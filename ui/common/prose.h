#pragma once

#include <QString>

namespace chalk::ui::common {

// Running text in labels: rich text with the line height of the type scale, which Qt's labels have no property for.

/// A paragraph out of rich text; what comes from people goes through toHtmlEscaped first.
[[nodiscard]] QString proseHtml(const QString& html);
/// A link in the theme's link colour, without a line below it; `target` is what linkActivated says.
[[nodiscard]] QString linkHtml(const QString& target, const QString& text);

}  // namespace chalk::ui::common
