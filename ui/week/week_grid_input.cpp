#include "ui/week/week_grid.h"

#include <QApplication>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QToolTip>

// The mouse, the keys and what is dropped.

namespace chalk::ui::week {

using chalk::week::kDayMinutes;
using chalk::week::Slot;

namespace {

constexpr int kUsualLength = 60;
constexpr int kGridMinutes = 15;

QString namesOf(const WeekBlock& block)
{
    QStringList names;
    for (const BlockMember& member : block.members) {
        if (member.wish) {
            names.append(member.firstName);
        }
    }
    return names.join(QStringLiteral(", "));
}

std::optional<std::size_t> wishIn(const QMimeData& mime)
{
    bool isNumber = false;
    const qulonglong wish = mime.data(QLatin1String(kWishMime)).toULongLong(&isNumber);
    return isNumber ? std::optional(static_cast<std::size_t>(wish)) : std::nullopt;
}

}  // namespace

bool WeekGrid::event(QEvent* event)
{
    // While something moves, Enter and Esc are of the move, whatever the page does with them otherwise.
    if (event->type() == QEvent::ShortcutOverride) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (m_isMoving && (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape)) {
            event->accept();
            return true;
        }
    }
    return QAbstractScrollArea::event(event);
}

bool WeekGrid::viewportEvent(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        QToolTip::showText(help->globalPos(), toolTipAt(help->pos()), this);
        return true;
    }
    return QAbstractScrollArea::viewportEvent(event);
}

void WeekGrid::keyPressEvent(QKeyEvent* event)
{
    const auto go = [this](int x, int y) { m_isMoving ? stepGhost(x, y) : step(x, y); };
    switch (event->key()) {
    case Qt::Key_Left:
        return go(-1, 0);
    case Qt::Key_Right:
        return go(1, 0);
    case Qt::Key_Up:
        return go(0, -1);
    case Qt::Key_Down:
        return go(0, 1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return m_isMoving ? putDown() : openSelected();
    case Qt::Key_Escape:
        if (m_isMoving) {
            return cancelMove();
        }
        break;
    default:
        break;
    }
    QAbstractScrollArea::keyPressEvent(event);
}

void WeekGrid::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) {
        return;
    }
    const int index = blockAtPoint(event->position());
    if (m_isMoving) {
        if (const auto slot = m_geometry.slotAt(toContents(event->position()))) {
            moveGhost(*slot);
            putDown();
        }
        return;
    }
    m_place.reset();
    if (index < 0 && isOfferAt(event->position())) {
        Q_EMIT offerTaken(firstConflict());
        return;
    }
    if (index < 0) {
        m_place = m_geometry.slotAt(toContents(event->position()));
        return;
    }
    select(index);
    m_pressed = event->position().toPoint();
    const auto slot = m_geometry.slotAt(toContents(event->position()));
    m_grabMinutes = slot ? slot->start - selectedBlock()->start() : 0;
}

void WeekGrid::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_pressed && !m_isMoving) {
        viewport()->setCursor(isOfferAt(event->position()) && blockAtPoint(event->position()) < 0 ? Qt::PointingHandCursor : Qt::ArrowCursor);
        return;
    }
    const WeekBlock* block = selectedBlock();
    const bool isFar = m_pressed && (event->position().toPoint() - *m_pressed).manhattanLength() >= QApplication::startDragDistance();
    if (!m_isMoving && isFar && block != nullptr) {
        beginMove(block->wishes(), Slot{block->coach, block->start()}, block->to - block->from, namesOf(*block));
    }
    const auto slot = m_geometry.slotAt(toContents(event->position()));
    if (m_isMoving && slot) {
        const int grab = m_pressed ? m_grabMinutes : 0;
        const int minute = std::max(0, slot->start % kDayMinutes - grab) / kGridMinutes * kGridMinutes;
        moveGhost({slot->coach, slot->start / kDayMinutes * kDayMinutes + minute});
    }
}

void WeekGrid::mouseReleaseEvent(QMouseEvent* event)
{
    const bool wasPressed = m_pressed.has_value();
    m_pressed.reset();
    if (event->button() != Qt::LeftButton || !wasPressed) {
        return;
    }
    if (!m_isMoving) {
        Q_EMIT blockClicked(m_selected);
    } else if (m_ghost.isLegal) {
        putDown();
    } else {
        cancelMove();
    }
}

void WeekGrid::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (blockAtPoint(event->position()) >= 0) {
        Q_EMIT blockOpened(m_selected, viewport()->mapToGlobal(event->position().toPoint()));
    } else if ((m_place = m_geometry.slotAt(toContents(event->position())))) {
        Q_EMIT emptyOpened();
    }
}

void WeekGrid::contextMenuEvent(QContextMenuEvent* event)
{
    if (event->reason() == QContextMenuEvent::Keyboard) {
        openSelected();
        return;
    }
    if (const int index = blockAtPoint(event->pos()); index >= 0) {
        select(index);
        Q_EMIT blockOpened(index, event->globalPos());
    }
}

void WeekGrid::dragEnterEvent(QDragEnterEvent* event)
{
    if (const auto wish = wishIn(*event->mimeData())) {
        beginMove({*wish}, m_geometry.slotAt(toContents(event->position())), kUsualLength, event->mimeData()->text());
        event->acceptProposedAction();
    }
}

void WeekGrid::dragMoveEvent(QDragMoveEvent* event)
{
    const auto slot = m_geometry.slotAt(toContents(event->position()));
    if (m_isMoving && slot && *slot != m_ghost.slot) {
        moveGhost(*slot);
    }
    event->setAccepted(m_isMoving && slot && m_ghost.isLegal);
}

void WeekGrid::dragLeaveEvent(QDragLeaveEvent* /*event*/)
{
    cancelMove();
}

void WeekGrid::dropEvent(QDropEvent* event)
{
    const auto slot = m_geometry.slotAt(toContents(event->position()));
    if (m_isMoving && slot) {
        moveGhost(*slot);
        if (m_ghost.isLegal) {
            event->acceptProposedAction();
            putDown();
            return;
        }
    }
    cancelMove();
}

void WeekGrid::focusInEvent(QFocusEvent* event)
{
    QAbstractScrollArea::focusInEvent(event);
    viewport()->update();
}

void WeekGrid::focusOutEvent(QFocusEvent* event)
{
    QAbstractScrollArea::focusOutEvent(event);
    viewport()->update();
}

}  // namespace chalk::ui::week
