#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/floor/entry_pane.h"
#include "ui/floor/floor_page.h"
#include "ui/floor/rest_timer_strip.h"

#include <QAction>
#include <QStackedLayout>

#include <algorithm>

namespace chalk::ui::floor {

void FloorPage::buildRests()
{
    m_rests = new RestWatch(m_services.rests, this);
    m_stack = new QStackedLayout(this);
    m_stack->addWidget(new QWidget(this));
    m_strip = new RestTimerStrip(m_services.look, *m_rests, RestShape::Row, this);
    m_wall = new RestTimerStrip(m_services.look, *m_rests, RestShape::Wall, this);
    m_stack->addWidget(m_wall);
    connect(m_strip, &RestTimerStrip::otherShapeAsked, this, [this] { showWall(true); });
    connect(m_wall, &RestTimerStrip::otherShapeAsked, this, [this] { showWall(false); });
    connect(m_strip, &RestTimerStrip::focusLost, this, [this] { showDesk(true); });
    connect(m_rests, &RestWatch::ended, this, [this](const PlannedRest& rest) {
        if (!isVisible()) {
            Q_EMIT restEnded(tr("%1’s rest is over: %2").arg(rest.firstName, rest.lift));
        }
    });
    connect(m_rests, &RestWatch::changed, this, [this] {
        if (m_rests->timers().isEmpty()) {
            showWall(false);
        }
    });
}

void FloorPage::addRestActions()
{
    addPageAction(tr("Start or stop the rest"), Qt::CTRL | Qt::Key_R, [this] { startOrStopRest(); });
    addPageAction(tr("Start the rest again"), Qt::CTRL | Qt::SHIFT | Qt::Key_R, [this] { startRest(); });
    addPageAction(tr("Hold the rest, or let it go on"), Qt::ALT | Qt::Key_R, [this] { holdRest(); });
    addPageAction(tr("Rests on the whole page"), Qt::Key_F11, [this] { showWall(!isWallShown()); });
    addPageAction(tr("Beep at the end of a rest"), Qt::ALT | Qt::Key_B, [this] { m_rests->setHeard(!m_rests->isHeard()); });
}

std::optional<PlannedRest> FloorPage::dueRest() const
{
    if (!hasEntry()) {
        return std::nullopt;
    }
    const FloorClient& client = *m_desk.client();
    const FloorLift* lift = m_desk.lift();
    if (m_justSaved.first == client.session.id && lift->line.isEmpty() && lift->rehearsal.isEmpty()) {
        const auto at = std::find_if(client.lifts.begin(), client.lifts.end(), [this](const FloorLift& one) { return one.id == m_justSaved.second; });
        lift = at == client.lifts.end() ? lift : &*at;
    }
    return PlannedRest{client.client.id, client.firstName(), common::qstring(lift->exercise.name), lift->due.rest};
}

void FloorPage::startOrStopRest()
{
    if (m_desk.client() != nullptr && m_rests->timers().has(m_desk.client()->client.id)) {
        m_rests->stop(m_desk.client()->client.id);
    } else {
        startRest();
    }
}

void FloorPage::startRest()
{
    if (const auto due = dueRest()) {
        m_justSaved = {};
        m_rests->start(*due);
    }
}

void FloorPage::holdRest()
{
    if (m_desk.client() != nullptr) {
        m_rests->holdOrGoOn(m_desk.client()->client.id);
    }
}

bool FloorPage::isWallShown() const
{
    return m_stack->currentWidget() == m_wall;
}

void FloorPage::showWall(bool isShown)
{
    if (isShown == isWallShown() || (isShown && m_rests->timers().isEmpty())) {
        return;
    }
    m_stack->setCurrentIndex(isShown ? 1 : 0);
    for (QAction* action : m_workActions) {
        action->setEnabled(!isShown);
    }
    if (isShown) {
        m_wall->setFocus(Qt::OtherFocusReason);
    } else {
        showDesk(true);
    }
    Q_EMIT pageChanged();
}

}  // namespace chalk::ui::floor
