#include "ui/week/week_grid.h"

#include "ui/common/look.h"
#include "ui/week/block_spoken.h"
#include "ui/week/week_balloon.h"
#include "ui/week/week_grid_accessible.h"
#include "ui/week/week_words.h"

#include <QAccessible>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cstdlib>

namespace chalk::ui::week {

using chalk::week::kDayMinutes;
using chalk::week::Slot;

namespace {

constexpr int kStepMinutes = 15;

}  // namespace

WeekGrid::WeekGrid(const common::Look& look, MoveRules rules, QWidget* parent) : QAbstractScrollArea(parent), m_look(look), m_rules(std::move(rules))
{
    installWeekGridAccessibility();
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("Week"));
    viewport()->setMouseTracking(true);
    viewport()->setAcceptDrops(true);
    setAcceptDrops(true);
    connect(&look, &common::Look::changed, this, &WeekGrid::layOut);
}

void WeekGrid::setScene(const WeekScene& scene)
{
    const WeekBlock* before = selectedBlock();
    const std::optional<Slot> at = before == nullptr || scene.monday != m_scene.monday ? std::nullopt : std::optional(Slot{before->coach, before->start()});
    m_scene = scene;
    m_selected = -1;
    for (std::size_t i = 0; i < scene.blocks.size(); ++i) {
        const bool isSame = at && Slot{scene.blocks[i].coach, scene.blocks[i].start()} == *at;
        const bool isFirstChoice = !at && scene.blocks[i].isNext;
        if (m_selected < 0 && (isSame || isFirstChoice)) {
            m_selected = static_cast<int>(i);
        }
    }
    if (m_selected < 0 && !scene.blocks.empty()) {
        m_selected = 0;
    }
    m_place.reset();
    endMove();
    layOut();
    Q_EMIT selectionChanged();
}

void WeekGrid::layOut()
{
    m_geometry = WeekGeometry(m_scene, m_look.theme(), QSizeF(viewport()->size()));
    const QSize size = m_geometry.size().toSize();
    horizontalScrollBar()->setPageStep(viewport()->width());
    horizontalScrollBar()->setRange(0, std::max(0, size.width() - viewport()->width()));
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(qRound(m_geometry.hourHeight() / 2));
    verticalScrollBar()->setRange(0, std::max(0, size.height() - viewport()->height()));
    viewport()->update();
}

void WeekGrid::resizeEvent(QResizeEvent* event)
{
    QAbstractScrollArea::resizeEvent(event);
    layOut();
}

QPointF WeekGrid::offset() const
{
    return {static_cast<qreal>(horizontalScrollBar()->value()), static_cast<qreal>(verticalScrollBar()->value())};
}

const WeekBlock* WeekGrid::selectedBlock() const
{
    return m_selected < 0 || m_selected >= static_cast<int>(m_scene.blocks.size()) ? nullptr : &m_scene.blocks[static_cast<std::size_t>(m_selected)];
}

std::optional<Slot> WeekGrid::place() const
{
    if (m_place) {
        return m_place;
    }
    const WeekBlock* block = selectedBlock();
    return block == nullptr ? std::nullopt : std::optional(Slot{block->coach, block->start()});
}

void WeekGrid::select(int index)
{
    if (index < 0 || index >= static_cast<int>(m_scene.blocks.size())) {
        return;
    }
    m_place.reset();
    const bool isOther = index != m_selected;
    m_selected = index;
    reveal(m_geometry.blockRect(m_scene.blocks[static_cast<std::size_t>(index)]));
    viewport()->update();
    if (isOther) {
        QAccessibleEvent told(this, QAccessible::Focus);
        told.setChild(index);
        QAccessible::updateAccessibility(&told);
        Q_EMIT selectionChanged();
    }
}

void WeekGrid::reveal(const QRectF& rect)
{
    const QPointF at = offset();
    const double head = m_geometry.headHeight();
    if (rect.top() - head < at.y()) {
        verticalScrollBar()->setValue(qRound(rect.top() - head - 4));
    } else if (rect.bottom() > at.y() + viewport()->height()) {
        verticalScrollBar()->setValue(qRound(rect.bottom() - viewport()->height() + 4));
    }
    if (rect.left() < at.x()) {
        horizontalScrollBar()->setValue(qRound(rect.left() - m_geometry.axisWidth()));
    } else if (rect.right() > at.x() + viewport()->width()) {
        horizontalScrollBar()->setValue(qRound(rect.right() - viewport()->width() + 4));
    }
}

void WeekGrid::step(int byDay, int byBlock)
{
    const WeekBlock* from = selectedBlock();
    if (from == nullptr) {
        return;
    }
    if (byBlock != 0) {
        const int to = m_selected + byBlock;
        const bool isSameDay = to >= 0 && to < static_cast<int>(m_scene.blocks.size()) && m_scene.blocks[static_cast<std::size_t>(to)].day == from->day;
        select(isSameDay ? to : m_selected);
        return;
    }
    int best = -1;
    const auto farness = [&](const WeekBlock& block) {
        return (std::abs(block.day - from->day) * kDayMinutes + std::abs(block.from - from->from)) * 16 + std::abs(static_cast<int>(block.coach) - static_cast<int>(from->coach));
    };
    for (std::size_t i = 0; i < m_scene.blocks.size(); ++i) {
        const WeekBlock& block = m_scene.blocks[i];
        const bool isThatWay = byDay > 0 ? block.day > from->day : block.day < from->day;
        if (isThatWay && (best < 0 || farness(block) < farness(m_scene.blocks[static_cast<std::size_t>(best)]))) {
            best = static_cast<int>(i);
        }
    }
    select(best);
}

void WeekGrid::beginMove(const std::vector<std::size_t>& wishes, std::optional<Slot> from, int minutes, const QString& names)
{
    if (wishes.empty() || m_scene.days.empty() || m_scene.coaches.empty()) {
        return;
    }
    m_isMoving = true;
    m_wishes = wishes;
    m_ghost = {};
    m_ghost.minutes = minutes;
    m_ghost.names = names;
    m_ghost.closed = m_rules.closedFor(wishes);
    const int day = m_scene.now ? *m_scene.now / kDayMinutes : m_scene.days.front();
    moveGhost(from.value_or(Slot{0, (m_geometry.indexOf(day) < 0 ? m_scene.days.front() : day) * kDayMinutes + m_scene.from}));
}

void WeekGrid::moveGhost(const Slot& slot)
{
    m_ghost.slot = slot;
    const QString reason = m_rules.reasonAgainst(m_wishes, slot);
    m_ghost.isLegal = reason.isEmpty();
    reveal(m_geometry.slotRect(slot, m_ghost.minutes));
    viewport()->update();
    Q_EMIT moving(tr("%1: %2 with %3").arg(m_ghost.names, common::weekTimeText(slot.start), m_scene.coaches[slot.coach]), reason);
}

void WeekGrid::stepGhost(int byLane, int bySlot)
{
    const int coaches = static_cast<int>(m_scene.coaches.size());
    const int day = m_geometry.indexOf(m_ghost.slot.start / kDayMinutes);
    const int lane = std::clamp(day * coaches + static_cast<int>(m_ghost.slot.coach) + byLane, 0, static_cast<int>(m_scene.days.size()) * coaches - 1);
    int minute = m_ghost.slot.start % kDayMinutes + bySlot * kStepMinutes;
    for (const FoldedHours& fold : m_scene.folds) {
        if (fold.from <= minute && minute < fold.to) {
            minute = bySlot > 0 ? fold.to : fold.from - kStepMinutes;
        }
    }
    minute = std::clamp(minute, m_scene.from, m_scene.to - kStepMinutes);
    moveGhost({static_cast<std::size_t>(lane % coaches), m_scene.days[static_cast<std::size_t>(lane / coaches)] * kDayMinutes + minute});
}

void WeekGrid::endMove()
{
    if (m_isMoving) {
        m_isMoving = false;
        m_wishes.clear();
        viewport()->update();
        Q_EMIT moving({}, {});
    }
    m_pressed.reset();
}

void WeekGrid::cancelMove()
{
    endMove();
}

void WeekGrid::putDown()
{
    if (!m_ghost.isLegal) {
        return;  // the reason is said already
    }
    const std::vector<std::size_t> wishes = m_wishes;
    const Slot slot = m_ghost.slot;
    endMove();
    Q_EMIT dropped(wishes, slot);
}

void WeekGrid::openSelected()
{
    if (const WeekBlock* block = selectedBlock()) {
        const QRectF rect = m_geometry.blockRect(*block).translated(-offset());
        Q_EMIT blockOpened(m_selected, viewport()->mapToGlobal(rect.center().toPoint()));
    }
}

int WeekGrid::blockAtPoint(const QPointF& at) const
{
    return at.y() < m_geometry.headHeight() ? -1 : m_geometry.blockAt(toContents(at));
}

int WeekGrid::firstConflict() const
{
    const auto at = std::find_if(m_scene.blocks.begin(), m_scene.blocks.end(), [](const WeekBlock& block) { return !block.faults.empty(); });
    return at == m_scene.blocks.end() ? -1 : static_cast<int>(at - m_scene.blocks.begin());
}

WeekPicture WeekGrid::picture() const
{
    const int first = firstConflict();
    const ConflictWords conflict = first < 0 ? ConflictWords() : m_rules.conflictOf(static_cast<std::size_t>(first));
    return {m_scene, m_geometry, m_look.theme(), m_selected, hasFocus(), m_isMoving ? &m_ghost : nullptr, conflict};
}

bool WeekGrid::isOfferAt(const QPointF& at) const
{
    const WeekPicture shown = picture();
    const auto balloon = balloonRect(shown);
    return at.y() >= m_geometry.headHeight() && balloon && !shown.conflict.offer.isEmpty() && balloon->contains(toContents(at));
}

QString WeekGrid::toolTipAt(const QPointF& at) const
{
    const int index = blockAtPoint(at);
    if (index < 0) {
        return {};
    }
    const QString conflict = m_rules.conflictOf(static_cast<std::size_t>(index)).why;
    const QString spoken = blockSpoken(m_scene, m_scene.blocks[static_cast<std::size_t>(index)]);
    return conflict.isEmpty() ? spoken : spoken + QLatin1Char('\n') + conflict;
}

void WeekGrid::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(viewport());
    const WeekPicture shown = picture();
    painter.fillRect(viewport()->rect(), m_look.theme().surface);
    painter.translate(-offset());
    paintWeek(painter, shown);
    painter.translate(0, offset().y());
    paintWeekHead(painter, shown);
}

}  // namespace chalk::ui::week
