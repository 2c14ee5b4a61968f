#pragma once

#include <QString>

class QFont;

namespace chalk::ui::common {

// Running text in labels: rich text with the line height of the type scale, which Qt's labels have no property for.

/// A paragraph out of rich text; what comes from people goes through toHtmlEscaped first.
[[nodiscard]] QString proseHtml(const QString& html);
/// A link in the theme's link colour, without a line below it; `target` is what linkActivated says.
[[nodiscard]] QString linkHtml(const QString& target, const QString& text);
/// The words of a rich text, for measuring and for screen readers.
[[nodiscard]] QString plainText(const QString& html);
/// One line of rich text that is no wider than `width` pixels in `font`: where it is too long it is elided and loses its markup.
[[nodiscard]] QString fittedHtml(const QString& html, const QFont& font, double width);

}  // namespace chalk::ui::common
