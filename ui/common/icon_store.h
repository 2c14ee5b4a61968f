#pragma once

#include <QColor>
#include <QHash>
#include <QPixmap>
#include <QRectF>
#include <QString>

class QPainter;

namespace chalk::ui::common {

struct Theme;

/// The icons of the program, drawn in one colour and kept by name, size, colour and device pixel ratio. Names are those of
/// resources/icons without the ending (`roster`, `move-squat`). Used from the window's thread only.
class IconStore {
public:
    /// An icon of `px` × `px` logical pixels; a null pixmap where there is no such icon.
    [[nodiscard]] QPixmap pixmap(const QString& name, int px, const QColor& colour, qreal devicePixelRatio) const;
    /// Whether there is an icon of that name.
    [[nodiscard]] static bool has(const QString& name);

private:
    mutable QHash<QString, QPixmap> m_drawn;
};

/// Draws an icon to fill `rect` (taken as a square around its centre), sharp on screens and as lines on paper.
void paintIcon(QPainter& painter, const QRectF& rect, const QString& name, const QColor& colour, const Theme& theme);

}  // namespace chalk::ui::common
