#include "ui/board/grid_rows.h"

#include <QGridLayout>
#include <QLabel>

namespace chalk::ui::board {

QLabel* rowLabel(const QString& text, const char* role, bool isWrapped, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setProperty("role", QLatin1String(role));
    label->setWordWrap(isWrapped);
    return label;
}

void clearRows(QGridLayout& grid)
{
    while (QLayoutItem* item = grid.takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();  // deleteLater alone would leave it on the page until the event loop turns
            widget->deleteLater();
        }
        delete item;
    }
}

}  // namespace chalk::ui::board
