#include "ui/roster/roster_table.h"

#include "ui/common/look.h"
#include "ui/roster/roster_delegate.h"
#include "ui/roster/roster_header.h"
#include "ui/roster/roster_layout.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>

namespace chalk::ui::roster {

RosterTable::RosterTable(const common::Look& look, RosterModel& model, RosterFilter& filter, QWidget* parent)
    : QTableView(parent), m_look(look), m_model(model), m_filter(filter), m_delegate(new RosterDelegate(look, this))
{
    setHorizontalHeader(new RosterHeader(look, this));
    setModel(&filter);
    setItemDelegate(m_delegate);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setMinimumSectionSize(1);
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setMouseTracking(true);
    setAccessibleName(tr("Clients"));
    connect(&look, &common::Look::changed, this, &RosterTable::dress);
    dress();
}

void RosterTable::dress()
{
    verticalHeader()->setDefaultSectionSize(rosterRowHeight(m_look.theme()));
    layOut();
    viewport()->update();
    horizontalHeader()->viewport()->update();
}

void RosterTable::layOut()
{
    const RosterWidths widths = rosterWidths(viewport()->width(), m_look.theme());
    for (int column = 0; column < kRosterColumns; ++column) {
        const int width = widths.columns[static_cast<std::size_t>(column)];
        setColumnHidden(column, width == 0);
        if (width > 0) {
            setColumnWidth(column, width);
        }
    }
    m_model.setSessionsShown(widths.sessionsShown);
}

const RosterRow* RosterTable::selectedRow() const
{
    return RosterModel::rowAt(currentIndex());
}

bool RosterTable::selectClient(base::ClientId client)
{
    const QModelIndex index = m_filter.mapFromSource(m_model.index(m_model.rowOf(client), 0));
    if (!index.isValid()) {
        return false;
    }
    setCurrentIndex(index);
    scrollTo(index);
    return true;
}

void RosterTable::moveSelection(int lines)
{
    const int last = m_filter.rowCount() - 1;
    if (last >= 0) {
        setCurrentIndex(m_filter.index(std::clamp(currentIndex().row() + lines, 0, last), 0));
    }
}

QRect RosterTable::selectedRectangle() const
{
    const QRect cell = visualRect(currentIndex());
    return cell.isEmpty() ? QRect() : QRect(viewport()->mapToGlobal(QPoint(0, cell.top())), QSize(viewport()->width(), cell.height()));
}

void RosterTable::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Up:
        moveSelection(-1);
        return;
    case Qt::Key_Down:
        moveSelection(1);
        return;
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
        QTableView::keyPressEvent(event);
        return;
    case Qt::Key_Home:
        moveSelection(-m_filter.rowCount());
        return;
    case Qt::Key_End:
        moveSelection(m_filter.rowCount());
        return;
    default:
        event->ignore();
    }
}

void RosterTable::mouseMoveEvent(QMouseEvent* event)
{
    QTableView::mouseMoveEvent(event);
    hover(indexAt(event->position().toPoint()).row());
}

void RosterTable::leaveEvent(QEvent* event)
{
    QTableView::leaveEvent(event);
    hover(-1);
}

void RosterTable::hover(int row)
{
    if (row != m_hoveredRow) {
        m_hoveredRow = row;
        m_delegate->setHoveredRow(row);
        viewport()->update();
    }
}

void RosterTable::mouseReleaseEvent(QMouseEvent* event)
{
    QTableView::mouseReleaseEvent(event);
    const QPoint point = event->position().toPoint();
    const QModelIndex index = indexAt(point);
    if (event->button() == Qt::LeftButton && index.isValid() && index.row() == currentIndex().row()) {
        choose(index, point);
    }
}

void RosterTable::choose(const QModelIndex& index, const QPoint& point)
{
    const base::ClientId client = RosterModel::rowAt(index)->client;
    if (const auto lift = liftAt(index, point)) {
        Q_EMIT liftChosen(client, *lift);
    } else if (const auto flag = flagAt(index, point)) {
        Q_EMIT flagChosen(client, *flag);
    } else if (index.column() == static_cast<int>(RosterColumn::Load)) {
        Q_EMIT loadChosen(client);
    } else {
        Q_EMIT clientChosen(client);
    }
}

QRectF RosterTable::contentsOf(const QModelIndex& index) const
{
    return QRectF(visualRect(index)).adjusted(rosterCellLeft(static_cast<RosterColumn>(index.column()), m_look.theme()), 0, 0, 0);
}

std::optional<lifts::Pattern> RosterTable::liftAt(const QModelIndex& index, const QPoint& point) const
{
    if (index.column() != static_cast<int>(RosterColumn::Lifts)) {
        return std::nullopt;
    }
    const auto pattern = common::liftStripHit(contentsOf(index), point.x(), m_look.theme());
    const bool isThere = pattern && RosterModel::rowAt(index)->strip.lifts[static_cast<std::size_t>(*pattern)].stage;
    return isThere ? pattern : std::nullopt;
}

std::optional<checkin::ClientFlag> RosterTable::flagAt(const QModelIndex& index, const QPoint& point) const
{
    if (index.column() != static_cast<int>(RosterColumn::Flags)) {
        return std::nullopt;
    }
    return rosterFlagAt(RosterModel::rowAt(index)->flags, contentsOf(index), point.x(), m_look.theme());
}

QString RosterTable::tipAt(const QPoint& point) const
{
    const QModelIndex index = indexAt(point);
    const RosterRow* row = RosterModel::rowAt(index);
    if (row == nullptr) {
        return {};
    }
    if (static_cast<RosterColumn>(index.column()) != RosterColumn::Lifts) {
        return index.data().toString();
    }
    const auto pattern = common::liftStripHit(contentsOf(index), point.x(), m_look.theme());
    return pattern ? common::liftStripColumnText(*pattern, row->strip.lifts[static_cast<std::size_t>(*pattern)]) : QString();
}

bool RosterTable::viewportEvent(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        QToolTip::showText(help->globalPos(), tipAt(help->pos()), viewport());
        return true;
    }
    return QTableView::viewportEvent(event);
}

void RosterTable::focusInEvent(QFocusEvent* event)
{
    QTableView::focusInEvent(event);
    m_delegate->setRingShown(event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason);
    if (!currentIndex().isValid()) {
        moveSelection(0);
    }
    viewport()->update();
}

void RosterTable::focusOutEvent(QFocusEvent* event)
{
    QTableView::focusOutEvent(event);
    m_delegate->setRingShown(false);
    viewport()->update();
}

void RosterTable::resizeEvent(QResizeEvent* event)
{
    QTableView::resizeEvent(event);
    layOut();
}

void RosterTable::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QTableView::currentChanged(current, previous);
    if (current.row() != previous.row() || current.isValid() != previous.isValid()) {
        Q_EMIT selectedClientChanged();
    }
}

}  // namespace chalk::ui::roster
