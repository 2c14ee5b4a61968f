#include "ui/check_in/queue_list.h"

#include "ui/check_in/queue_model.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/wrapped_text.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace chalk::ui::check_in {

namespace {

using common::Theme;

// Pixels at a text size of 100 %.
constexpr double kRowTop = 10;
constexpr double kRowIconLeft = 14;
constexpr double kRowIcon = 18;
constexpr double kRowText = 42;
constexpr double kRowRight = 10;
constexpr double kRowName = 20;
constexpr double kRowLine = 17;

QString whyOf(const QueueRow& row)
{
    return QStringLiteral("%1: %2").arg(row.finding, row.why);
}

double textWidth(double width, const Theme& theme)
{
    return std::max(20.0, width - theme.scaled(kRowText + kRowRight));
}

void paintGround(QPainter& painter, const QStyleOptionViewItem& option, const Theme& theme)
{
    const QRectF cell(option.rect);
    const bool isOpen = option.state.testFlag(QStyle::State_Selected);
    const bool isUnder = option.state.testFlag(QStyle::State_MouseOver);
    painter.fillRect(cell, isOpen ? theme.wash : isUnder ? theme.hover : theme.surface);
    painter.fillRect(QRectF(cell.left(), cell.bottom() - 1, cell.width(), 1), theme.line);
    if (isOpen) {
        painter.fillRect(QRectF(cell.left(), cell.top(), 3, cell.height() - 1), theme.mark);
    }
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter.setPen(QPen(theme.focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(cell.adjusted(1, 1, -1, -2));
    }
}

}  // namespace

QueueDelegate::QueueDelegate(const common::Look& look, const QueueModel& model, QObject* parent) : QStyledItemDelegate(parent), m_look(look), m_model(model)
{
}

QSize QueueDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const auto* view = qobject_cast<const QListView*>(option.widget);
    const Theme& theme = m_look.theme();
    const int width = view == nullptr ? option.rect.width() : view->viewport()->width();
    const QString why = whyOf(m_model.rows()[static_cast<std::size_t>(index.row())]);
    const double text = common::wrappedTextHeight(why, theme.font(common::TextStyle::Micro), textWidth(width, theme), theme.scaled(kRowLine));
    return {width, static_cast<int>(std::ceil(theme.scaled(kRowTop + kRowName + kRowTop) + text))};
}

void QueueDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Theme& theme = m_look.theme();
    const QueueRow& row = m_model.rows()[static_cast<std::size_t>(index.row())];
    const QRectF cell(option.rect);
    painter->save();
    paintGround(*painter, option, theme);
    const double icon = theme.scaled(kRowIcon);
    const QString iconName = row.isDecided ? QStringLiteral("check") : row.isSkipped ? QStringLiteral("go-on") : row.icon;
    const QColor iconInk = row.isDecided ? theme.ok : row.isSkipped ? theme.ink3 : theme.signal(row.signal).ink;
    common::paintIcon(*painter, QRectF(cell.left() + theme.scaled(kRowIconLeft), cell.top() + theme.scaled(kRowTop), icon, icon), iconName, iconInk, theme);
    const double left = cell.left() + theme.scaled(kRowText);
    const double width = textWidth(cell.width(), theme);
    const bool isDone = row.isDecided || row.isSkipped;
    const QFont font = theme.font(isDone ? common::TextStyle::Body : common::TextStyle::Strong);
    painter->setFont(font);
    painter->setPen(isDone ? theme.ink2 : theme.ink);
    painter->drawText(QRectF(left, cell.top() + theme.scaled(kRowTop), width, theme.scaled(kRowName)), Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetricsF(font).elidedText(row.name, Qt::ElideRight, width));
    painter->setPen(theme.ink2);
    common::paintWrappedText(*painter, {left, cell.top() + theme.scaled(kRowTop + kRowName)}, whyOf(row), theme.font(common::TextStyle::Micro), width,
                             theme.scaled(kRowLine));
    painter->restore();
}

QueueList::QueueList(const common::Look& look, QueueModel& model, QWidget* parent) : QListView(parent), m_model(model)
{
    setModel(&model);
    setItemDelegate(new QueueDelegate(look, model, this));
    setFrameShape(QFrame::NoFrame);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setResizeMode(QListView::Adjust);
    setMouseTracking(true);
    setAccessibleName(tr("Queue of the check-in"));
    connect(&look, &common::Look::changed, this, &QueueList::scheduleDelayedItemsLayout);
}

void QueueList::showClient(base::ClientId client)
{
    m_isTelling = false;
    const int row = m_model.rowOf(client);
    if (row >= 0) {
        setCurrentIndex(m_model.index(row));
    } else {
        clearSelection();
        setCurrentIndex({});
    }
    m_isTelling = true;
}

void QueueList::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QListView::currentChanged(current, previous);
    if (m_isTelling && current.isValid() && hasFocus()) {
        Q_EMIT clientChosen(m_model.rows()[static_cast<std::size_t>(current.row())].client);
    }
}

void QueueList::resizeEvent(QResizeEvent* event)
{
    QListView::resizeEvent(event);
    scheduleDelayedItemsLayout();
}

}  // namespace chalk::ui::check_in
