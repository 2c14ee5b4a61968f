#include "ui/print/sheet.h"

#include "ui/print/print_text.h"

#include <QPainter>
#include <QPen>

namespace chalk::ui::print {

namespace {

void paintBox(QPainter& painter, const SheetBox& box)
{
    const double half = box.stroke / 2;
    painter.setPen(QPen(Qt::black, box.stroke));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(box.outside.adjusted(half, half, -half, -half), box.radius, box.radius);
}

/// Fonts are made in hundredths of a millimetre: a pixel size is a whole number.
void paintText(QPainter& painter, const SheetText& text)
{
    painter.setFont(text.font);
    painter.setPen(text.isWhite ? Qt::white : Qt::black);
    painter.drawText(text.baseline * kFontUnitsPerMm, text.text);
}

}  // namespace

void paintSheet(QPainter& painter, const Sheet& sheet, const QPointF& corner)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(corner);
    for (const SheetBox& box : sheet.boxes) {
        paintBox(painter, box);
    }
    for (const SheetRule& rule : sheet.rules) {
        painter.setPen(QPen(Qt::black, rule.stroke, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(rule.line);
    }
    for (const QPainterPath& shape : sheet.shapes) {
        painter.fillPath(shape, Qt::black);
    }
    painter.scale(1 / kFontUnitsPerMm, 1 / kFontUnitsPerMm);
    for (const SheetText& text : sheet.texts) {
        paintText(painter, text);
    }
    painter.restore();
}

}  // namespace chalk::ui::print
