#include "ui/common/dials.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

namespace chalk::ui::common {

namespace {

constexpr double kDialsHeight = 50;
constexpr double kDialsRadius = 6;
constexpr double kDialPadding = 4;

/// The font of a text made small enough for `width`, by half pixels.
QFont fittingFont(const QString& text, double px, QFont::Weight weight, double width, const Theme& theme)
{
    QFont font = theme.font(px, weight);
    for (double size = px; size > 8 && QFontMetricsF(font).horizontalAdvance(text) > width; size -= 0.5) {
        font = theme.font(size, weight);
    }
    return font;
}

void paintDialText(QPainter& painter, const QRectF& cell, const Dial& dial, const QColor& captionInk, const QColor& valueInk,
                   const Theme& theme)
{
    const double width = cell.width() - 2 * theme.scaled(kDialPadding);
    const double middle = cell.center().y();
    painter.setFont(fittingFont(dial.caption, 13, dial.isMoving ? QFont::DemiBold : QFont::Normal, width, theme));
    painter.setPen(captionInk);
    painter.drawText(QRectF(cell.left(), middle - theme.scaled(20), cell.width(), theme.scaled(18)), Qt::AlignCenter, dial.caption);
    painter.setFont(fittingFont(dial.value, 15, dial.isMoving ? QFont::Bold : QFont::DemiBold, width, theme));
    painter.setPen(valueInk);
    painter.drawText(QRectF(cell.left(), middle - theme.scaled(1), cell.width(), theme.scaled(20)), Qt::AlignCenter, dial.value);
}

}  // namespace

double dialsHeight(const Theme& theme)
{
    return theme.scaled(kDialsHeight);
}

void paintDials(QPainter& painter, const QRectF& rect, const DialsView& view, const Theme& theme)
{
    if (view.dials.empty()) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = rect.adjusted(0.5, 0.5, -0.5, -0.5);
    QPainterPath outline;
    outline.addRoundedRect(frame, kDialsRadius, kDialsRadius);
    painter.fillPath(outline, theme.raised);
    const double width = frame.width() / static_cast<double>(view.dials.size());
    for (std::size_t i = 0; i < view.dials.size(); ++i) {
        const Dial& dial = view.dials[i];
        const QRectF cell(frame.left() + static_cast<double>(i) * width, frame.top(), width, frame.height());
        if (dial.isMoving) {
            QPainterPath block;
            block.addRect(cell);
            painter.fillPath(block.intersected(outline), theme.stage(view.stage));
        } else if (i > 0 && !view.dials[i - 1].isMoving) {
            painter.setPen(QPen(theme.line, 1));
            painter.drawLine(cell.topLeft(), cell.bottomLeft());
        }
        const QColor onFill = theme.onStage(view.stage);
        paintDialText(painter, cell, dial, dial.isMoving ? onFill : theme.ink2, dial.isMoving ? onFill : theme.ink, theme);
    }
    painter.setPen(QPen(theme.ctl, 1));
    painter.drawPath(outline);
    painter.restore();
}

}  // namespace chalk::ui::common
