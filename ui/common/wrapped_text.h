#pragma once

#include <QFont>
#include <QPointF>
#include <QString>

class QPainter;

namespace chalk::ui::common {

// A paragraph broken into lines of one height, for what paints its own text; labels use prose.h.

/// The height that `text` takes when it is broken into lines of `width`; 0 for no text. All in pixels.
[[nodiscard]] double wrappedTextHeight(const QString& text, const QFont& font, double width, double lineHeight);
/// Draws the lines downwards from `topLeft` with the painter's pen.
void paintWrappedText(QPainter& painter, const QPointF& topLeft, const QString& text, const QFont& font, double width, double lineHeight);

}  // namespace chalk::ui::common
