#include "ui/common/hours_grid.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/plain_typing.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::common {

namespace {

// Pixels at a text size of 100 %.
constexpr double kTimeColumn = 48;
constexpr double kDayRow = 24;
constexpr double kLeastSlot = 13;
constexpr int kMorning = 12;  ///< 6:00
constexpr int kEvening = 44;  ///< 22:00
constexpr int kDays = 7;

QString dayName(int weekday)
{
    return QLocale::c().dayName(weekday + 1, QLocale::ShortFormat);
}

QString slotTime(int slot)
{
    return qstring(sessions::clockText(slot * clients::WeekHours::kSlotMinutes % (24 * 60)));
}

}  // namespace

HoursGrid::HoursGrid(const Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Hours of the week"));
    connect(&look, &Look::changed, this, qOverload<>(&QWidget::update));
}

void HoursGrid::setHours(const clients::WeekHours& free, const clients::WeekHours& preferred)
{
    m_free = free;
    m_preferred = preferred;
    say();
    update();
}

void HoursGrid::setWholeDay(bool isWhole)
{
    m_isWholeDay = isWhole;
    updateGeometry();
    update();
}

int HoursGrid::firstSlot() const
{
    for (int slot = 0; slot < kMorning; ++slot) {
        for (int day = 0; day < kDays; ++day) {
            if (m_isWholeDay || m_free.isSet(day, slot)) {
                return m_isWholeDay ? 0 : slot / 2 * 2;
            }
        }
    }
    return kMorning;
}

int HoursGrid::endSlot() const
{
    for (int slot = clients::WeekHours::kSlotsPerDay; slot > kEvening; --slot) {
        for (int day = 0; day < kDays; ++day) {
            if (m_isWholeDay || m_free.isSet(day, slot - 1)) {
                return m_isWholeDay ? clients::WeekHours::kSlotsPerDay : (slot + 1) / 2 * 2;
            }
        }
    }
    return kEvening;
}

QSize HoursGrid::sizeHint() const
{
    const Theme& theme = m_look.theme();
    return {qRound(theme.scaled(kTimeColumn + kDays * 72)), qRound(theme.scaled(kDayRow + (endSlot() - firstSlot()) * (kLeastSlot + 4)))};
}

QSize HoursGrid::minimumSizeHint() const
{
    const Theme& theme = m_look.theme();
    return {qRound(theme.scaled(kTimeColumn + kDays * 44)), qRound(theme.scaled(kDayRow + (endSlot() - firstSlot()) * kLeastSlot))};
}

QRectF HoursGrid::grid() const
{
    const Theme& theme = m_look.theme();
    return QRectF(rect()).adjusted(theme.scaled(kTimeColumn), theme.scaled(kDayRow), -1, -1);
}

QRectF HoursGrid::rectOf(int weekday, int slot) const
{
    const QRectF all = grid();
    const double wide = all.width() / kDays;
    const double high = all.height() / (endSlot() - firstSlot());
    return {all.left() + weekday * wide, all.top() + (slot - firstSlot()) * high, wide, high};
}

std::optional<HoursGrid::Cell> HoursGrid::cellAt(const QPointF& at) const
{
    const QRectF all = grid();
    if (!all.contains(at)) {
        return std::nullopt;
    }
    const int day = static_cast<int>((at.x() - all.left()) / (all.width() / kDays));
    const int slot = firstSlot() + static_cast<int>((at.y() - all.top()) / (all.height() / (endSlot() - firstSlot())));
    return Cell{std::min(day, kDays - 1), std::min(slot, endSlot() - 1)};
}

void HoursGrid::paintCells(QPainter& painter) const
{
    const Theme& theme = m_look.theme();
    for (int day = 0; day < kDays; ++day) {
        for (int slot = firstSlot(); slot < endSlot(); ++slot) {
            const QRectF cell = rectOf(day, slot).adjusted(1, 0.5, -1, -0.5);
            const bool isRather = m_preferred.isSet(day, slot);
            painter.fillRect(cell, isRather ? theme.ok : m_free.isSet(day, slot) ? theme.okBg : theme.win);
            if (isRather) {
                painter.setPen(QPen(theme.surface, 1.5));
                painter.drawLine(QPointF(cell.left() + 4, cell.bottom() - 3), QPointF(cell.left() + 10, cell.top() + 3));
            }
        }
    }
    painter.setPen(QPen(theme.line, 1));
    for (int slot = firstSlot(); slot <= endSlot(); slot += 2) {
        const double y = rectOf(0, slot).top();
        painter.drawLine(QPointF(grid().left(), y), QPointF(grid().right(), y));
    }
}

void HoursGrid::paintCaptions(QPainter& painter) const
{
    const Theme& theme = m_look.theme();
    painter.setFont(theme.font(TextStyle::Micro));
    painter.setPen(theme.ink2);
    for (int day = 0; day < kDays; ++day) {
        const QRectF column = rectOf(day, firstSlot());
        painter.drawText(QRectF(column.left(), 0, column.width(), theme.scaled(kDayRow)), Qt::AlignCenter, dayName(day));
    }
    painter.setPen(theme.ink3);
    for (int slot = firstSlot(); slot < endSlot(); slot += 2) {
        const QRectF row = rectOf(0, slot);
        painter.drawText(QRectF(0, row.top() - 2, grid().left() - theme.scaled(8), 2 * row.height()), Qt::AlignRight | Qt::AlignTop, slotTime(slot));
    }
}

void HoursGrid::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    paintCells(painter);
    paintCaptions(painter);
    if (hasFocus()) {
        const QRectF from = rectOf(m_anchor.weekday, m_anchor.slot);
        const QRectF to = rectOf(m_at.weekday, m_at.slot);
        painter.setPen(QPen(m_look.theme().focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(from.united(to).adjusted(1, 1, -1, -1));
    }
}

void HoursGrid::set(Cell from, Cell to, HourBrush brush)
{
    for (int day = std::min(from.weekday, to.weekday); day <= std::max(from.weekday, to.weekday); ++day) {
        for (int slot = std::min(from.slot, to.slot); slot <= std::max(from.slot, to.slot); ++slot) {
            m_free.set(day, slot, brush != HourBrush::None);
            m_preferred.set(day, slot, brush == HourBrush::Rather);
        }
    }
    say();
    update();
}

void HoursGrid::mousePressEvent(QMouseEvent* event)
{
    if (const auto cell = cellAt(event->position()); cell && event->button() == Qt::LeftButton) {
        m_isPainting = true;
        m_anchor = m_at = *cell;
        set(*cell, *cell, m_brush);
    }
}

void HoursGrid::mouseMoveEvent(QMouseEvent* event)
{
    if (const auto cell = cellAt(event->position()); cell && m_isPainting) {
        m_at = *cell;
        set(m_anchor, m_at, m_brush);
    }
}

void HoursGrid::mouseReleaseEvent(QMouseEvent* /*event*/)
{
    if (m_isPainting) {
        m_isPainting = false;
        m_anchor = m_at;
        update();
        Q_EMIT painted();
    }
}

void HoursGrid::moveTo(Cell cell, bool isSelecting)
{
    m_at = {std::clamp(cell.weekday, 0, kDays - 1), std::clamp(cell.slot, firstSlot(), endSlot() - 1)};
    if (!isSelecting) {
        m_anchor = m_at;
    }
    say();
    update();
}

void HoursGrid::keyPressEvent(QKeyEvent* event)
{
    const bool isSelecting = event->modifiers().testFlag(Qt::ShiftModifier);
    const auto paint = [this](HourBrush brush) {
        set(m_anchor, m_at, brush);
        Q_EMIT painted();
    };
    switch (event->key()) {
    case Qt::Key_Left:
        return moveTo({m_at.weekday - 1, m_at.slot}, isSelecting);
    case Qt::Key_Right:
        return moveTo({m_at.weekday + 1, m_at.slot}, isSelecting);
    case Qt::Key_Up:
        return moveTo({m_at.weekday, m_at.slot - 1}, isSelecting);
    case Qt::Key_Down:
        return moveTo({m_at.weekday, m_at.slot + 1}, isSelecting);
    case Qt::Key_Space:
        return paint(m_brush);
    case Qt::Key_F:
        return paint(HourBrush::Free);
    case Qt::Key_R:
        return paint(HourBrush::Rather);
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        return paint(HourBrush::None);
    default:
        QWidget::keyPressEvent(event);
    }
}

bool HoursGrid::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride && isPlainTyping(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

void HoursGrid::say()
{
    const bool isFree = m_free.isSet(m_at.weekday, m_at.slot);
    const bool isRather = m_preferred.isSet(m_at.weekday, m_at.slot);
    setAccessibleDescription(QStringLiteral("%1 %2, %3").arg(QLocale::c().dayName(m_at.weekday + 1), slotTime(m_at.slot),
                                                             isRather ? tr("preferred") : isFree ? tr("free") : tr("not free")));
}

}  // namespace chalk::ui::common
