#include "ui/common/wrapped_text.h"

#include <QPainter>
#include <QTextLayout>

namespace chalk::ui::common {

namespace {

int breakIntoLines(QTextLayout& layout, double width)
{
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, 0});  // all at the top: each is placed when it is drawn
    }
    layout.endLayout();
    return layout.lineCount();
}

}  // namespace

double wrappedTextHeight(const QString& text, const QFont& font, double width, double lineHeight)
{
    QTextLayout layout(text, font);
    return text.isEmpty() ? 0 : breakIntoLines(layout, width) * lineHeight;
}

void paintWrappedText(QPainter& painter, const QPointF& topLeft, const QString& text, const QFont& font, double width, double lineHeight)
{
    QTextLayout layout(text, font);
    breakIntoLines(layout, width);
    for (int i = 0; i < layout.lineCount(); ++i) {
        const QTextLine line = layout.lineAt(i);
        line.draw(&painter, topLeft + QPointF(0, i * lineHeight + (lineHeight - line.height()) / 2));
    }
}

}  // namespace chalk::ui::common
