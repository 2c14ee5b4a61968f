#include "ui/roster/attention_list.h"

#include "ui/common/look.h"
#include "ui/roster/attention_delegate.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

namespace chalk::ui::roster {

AttentionList::AttentionList(const common::Look& look, AttentionModel& model, QWidget* parent)
    : QListView(parent), m_look(look), m_model(model)
{
    setModel(&model);
    setItemDelegate(new AttentionDelegate(look, this));
    setFrameShape(QFrame::NoFrame);
    setSelectionMode(QAbstractItemView::NoSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setResizeMode(QListView::Adjust);
    setMouseTracking(true);
    setAccessibleName(tr("Needs attention today"));
    connect(&look, &common::Look::changed, this, &AttentionList::scheduleDelayedItemsLayout);
}

void AttentionList::setEmptyText(const QString& text)
{
    m_emptyText = text;
    viewport()->update();
}

bool AttentionList::run(int row)
{
    if (row < 0 || row >= m_model.rowCount()) {
        return false;
    }
    setCurrentIndex(m_model.index(row));
    const AttentionItem item = m_model.items()[static_cast<std::size_t>(row)];  // whoever hears of it may change the model
    Q_EMIT itemChosen(item);
    return true;
}

void AttentionList::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
    case Qt::Key_Home:
    case Qt::Key_End:
        QListView::keyPressEvent(event);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        run(currentIndex().row());
        return;
    default:
        event->ignore();
    }
}

void AttentionList::mouseReleaseEvent(QMouseEvent* event)
{
    QListView::mouseReleaseEvent(event);
    const QModelIndex index = indexAt(event->position().toPoint());
    if (event->button() == Qt::LeftButton && index.isValid() && index == currentIndex()) {
        run(index.row());
    }
}

void AttentionList::focusInEvent(QFocusEvent* event)
{
    QListView::focusInEvent(event);
    if (!currentIndex().isValid() && m_model.rowCount() > 0) {
        setCurrentIndex(m_model.index(0));
    }
    viewport()->update();
}

void AttentionList::focusOutEvent(QFocusEvent* event)
{
    QListView::focusOutEvent(event);
    viewport()->update();
}

void AttentionList::paintEvent(QPaintEvent* event)
{
    QListView::paintEvent(event);
    if (m_model.rowCount() == 0) {
        const common::Theme& theme = m_look.theme();
        QPainter painter(viewport());
        painter.setFont(theme.font(common::TextStyle::Small));
        painter.setPen(theme.ink2);
        const int edge = qRound(theme.scaled(16));
        painter.drawText(viewport()->rect().adjusted(edge, edge, -edge, -edge), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, m_emptyText);
    }
}

void AttentionList::resizeEvent(QResizeEvent* event)
{
    QListView::resizeEvent(event);
    scheduleDelayedItemsLayout();
}

}  // namespace chalk::ui::roster
