#include "ui/common/flow_layout.h"

#include <QWidget>

#include <algorithm>

namespace chalk::ui::common {

FlowLayout::FlowLayout(int gapAcross, int gapDown, QWidget* parent) : QLayout(parent), m_gapAcross(gapAcross), m_gapDown(gapDown)
{
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout()
{
    qDeleteAll(m_items);
}

void FlowLayout::addItem(QLayoutItem* item)
{
    m_items.append(item);
}

QLayoutItem* FlowLayout::itemAt(int index) const
{
    return m_items.value(index, nullptr);
}

QLayoutItem* FlowLayout::takeAt(int index)
{
    return index >= 0 && index < m_items.size() ? m_items.takeAt(index) : nullptr;
}

std::pair<QList<QRect>, int> FlowLayout::placesIn(const QRect& rect) const
{
    const QRect room = rect.marginsRemoved(contentsMargins());
    QList<QRect> places;
    int x = room.left();
    int y = room.top();
    int lineHeight = 0;
    for (const QLayoutItem* item : m_items) {
        if (item->isEmpty()) {
            places.append(QRect());
            continue;
        }
        const QSize size = item->sizeHint().boundedTo({std::max(room.width(), item->minimumSize().width()), QWIDGETSIZE_MAX});
        if (x > room.left() && x + size.width() > room.right() + 1) {
            x = room.left();
            y += lineHeight + m_gapDown;
            lineHeight = 0;
        }
        places.append(QRect(QPoint(x, y), size));
        x += size.width() + m_gapAcross;
        lineHeight = std::max(lineHeight, size.height());
    }
    return {places, y + lineHeight + contentsMargins().bottom()};
}

int FlowLayout::heightForWidth(int width) const
{
    return placesIn(QRect(0, 0, width, 0)).second;
}

QSize FlowLayout::minimumSize() const
{
    QSize size;
    for (const QLayoutItem* item : m_items) {
        if (!item->isEmpty()) {
            size = size.expandedTo(item->minimumSize());
        }
    }
    const QMargins margins = contentsMargins();
    return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void FlowLayout::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    const QList<QRect> places = placesIn(rect).first;
    for (qsizetype i = 0; i < m_items.size(); ++i) {
        if (places[i].isValid()) {
            m_items[i]->setGeometry(places[i]);
        }
    }
}

}  // namespace chalk::ui::common
