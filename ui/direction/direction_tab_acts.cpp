#include "ui/common/act_history.h"
#include "ui/common/dialogs.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/common/settling.h"
#include "ui/direction/direction_cards.h"
#include "ui/direction/direction_changes.h"
#include "ui/direction/direction_desk.h"
#include "ui/direction/direction_tab.h"
#include "ui/direction/missed_weeks.h"
#include "ui/direction/plan_editor.h"
#include "ui/direction/plan_facts.h"

namespace chalk::ui::direction {

using chalk::direction::Direction;

void DirectionTab::start()
{
    const DirectionOffer& offer = m_case->offer(m_cards->chosen());
    finish(m_desk->begin(m_client, m_today, offer.plan, offer.singles),
           tr("%1 begun for %2, from %3")
               .arg(common::planTitle(offer.plan), firstNameOf(m_case->client), common::shortDayText(offer.plan.wishes.start)));
}

void DirectionTab::oneMoreCycle()
{
    finish(m_desk->oneMoreCycle(m_client, m_today), tr("One more cycle for %1").arg(firstNameOf(m_case->client)));
}

void DirectionTab::edit()
{
    const Direction direction = m_cards->chosen();
    const chalk::direction::ClientPlan before = m_case->running ? withLiftsTakenUp(*m_case) : planOf(*m_case, m_case->offer(direction));
    PlanEditor editor(m_services.look, m_services.dialogs, editorFacts(*m_case, before), this);
    if (editor.exec() != QDialog::Accepted) {
        return;
    }
    if (m_case->running) {
        return finish(change(editor.plan()), tr("Plan of %1 edited").arg(firstNameOf(m_case->client)));
    }
    m_edited[static_cast<std::size_t>(direction)] = editor.plan();
    takeEdits();
    showOffer();
}

void DirectionTab::takeEdits()
{
    for (std::size_t i = 0; i < m_edited.size(); ++i) {
        if (m_edited[i]) {
            m_case->offers[i].plan = m_edited[i]->plan;
            m_case->offers[i].singles = m_edited[i]->singles;
        }
    }
}

store::Result<store::ActOutcome> DirectionTab::change(const chalk::direction::ClientPlan& plan)
{
    return common::settled(m_services.dialogs, m_services.database, {}, [&](const common::Settling& settling) {
        return m_desk->change(plan, m_today, settling.seen ? std::nullopt : m_case->running);
    });
}

void DirectionTab::missWeeks()
{
    MissedWeeksDialog dialog(m_services.look, missedFacts(*m_case), this);
    if (dialog.exec() == QDialog::Accepted) {
        const QString words = dialog.way() == chalk::direction::MissedWeeks::Shift ? tr("Plan of %1 shifted by missed weeks") : tr("Plan of %1 squeezed by missed weeks");
        finish(change(dialog.plan()), words.arg(firstNameOf(m_case->client)));
    }
}

void DirectionTab::takeUp()
{
    finish(change(withLiftsTakenUp(*m_case)), tr("Lifts of %1 took the plan up again").arg(firstNameOf(m_case->client)));
}

void DirectionTab::end()
{
    finish(m_desk->end(*m_case->running, m_today), tr("%1 ended for %2").arg(common::planTitle(m_case->running->plan), firstNameOf(m_case->client)));
}

void DirectionTab::finish(const store::Result<store::ActOutcome>& outcome, const QString& words)
{
    if (!outcome && outcome.error().kind == store::StoreError::Kind::Conflict) {
        Q_EMIT written();  // theirs stays: it is read
        return;
    }
    if (!outcome) {
        m_services.dialogs.ask(this, {common::Signal::Warn, tr("Nothing was written."), outcome.error().message, {}, {}, 0});
        return;
    }
    m_services.acts.add(outcome->act, words);
    Q_EMIT written();
}

}  // namespace chalk::ui::direction
