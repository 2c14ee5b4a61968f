#include "ui/print/sheet_preview.h"

#include <QPainter>

namespace chalk::ui::print {

SheetPreview::SheetPreview(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Page"));
}

void SheetPreview::setSheet(const Sheet& sheet)
{
    m_sheet = sheet;
    QStringList spoken;
    for (const SheetText& text : sheet.texts) {
        spoken.append(text.text);
    }
    setAccessibleDescription(spoken.join(QLatin1Char(' ')));
    update();
}

QSize SheetPreview::sizeHint() const
{
    return {420, 594};
}

void SheetPreview::paintEvent(QPaintEvent* /*event*/)
{
    if (m_sheet.size.isEmpty()) {
        return;
    }
    const QSizeF paper = m_sheet.size.scaled(size(), Qt::KeepAspectRatio);
    const QRectF page(QPointF((width() - paper.width()) / 2, (height() - paper.height()) / 2), paper);
    QPainter painter(this);
    painter.fillRect(page, Qt::white);
    painter.translate(page.topLeft());
    const double scale = paper.width() / m_sheet.size.width();
    painter.scale(scale, scale);
    paintSheet(painter, m_sheet, {0, 0});
}

}  // namespace chalk::ui::print
