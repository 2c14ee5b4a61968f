#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/week/week_page.h"

#include <QMenu>

#include <string>

// The week on paper, as a calendar, as a table and as words to send.

namespace chalk::ui::week {

using chalk::week::kWeekDays;

void WeekPage::offerPapers()
{
    QMenu menu(this);
    menu.addAction(tr("The &week for the wall\tCtrl+P"), this, &WeekPage::print);
    const auto& coaches = m_desk.facts().coaches;
    for (std::size_t coach = 0; coach < coaches.size(); ++coach) {
        menu.addAction(tr("The week of %1").arg(common::qstring(coaches[coach].coach.name)), this, [this, coach] { Q_EMIT weekPaperAsked(m_desk.onPaper(coach)); });
    }
    if (isTrainingShown()) {
        menu.addAction(tr("The &cards of the week\tCtrl+Shift+P"), this, &WeekPage::printCards);
    }
    menu.addSeparator();
    for (const chalk::week::CoachOfWeek& one : coaches) {
        const QString name = common::qstring(one.coach.name);
        menu.addAction(tr("The calendar of %1 …").arg(name), this, [this, name, key = std::to_string(one.coach.id.value())] { sendCalendar({{{}, key}, name}); });
    }
    menu.addAction(tr("The calendar of e&verybody …"), this, [this] { sendCalendar({}); });
    menu.addAction(tr("A &table (CSV) …"), this, &WeekPage::sendTable);
    menu.addAction(tr("Copy as &text"), this, [this] { copyWeek({}); });
    menu.exec(m_print->mapToGlobal(QPoint(0, m_print->height())));
}

void WeekPage::print()
{
    Q_EMIT weekPaperAsked(m_desk.onPaper());
}

void WeekPage::printCards()
{
    const base::Date today = m_services.studio.clock.today();
    const bool isThisWeek = m_desk.monday() <= today && today < m_desk.monday() + kWeekDays;
    Q_EMIT weekCardsAsked(isThisWeek ? today : m_desk.monday());
}

WeekToSend WeekPage::weekToSend() const
{
    return {m_desk.monday(), m_desk.bookings(), m_services.studio.atUtc()};
}

void WeekPage::sayOf(const SendingOutcome& outcome)
{
    if (!outcome.failure.isEmpty()) {
        say({tr("Not saved."), outcome.failure, tr("Close"), {}, true});
    } else if (!outcome.file.isEmpty()) {
        say({tr("Saved."), outcome.file, tr("Close"), {}, false});
    }
}

void WeekPage::sendCalendar(const WeekRecipient& recipient)
{
    sayOf(saveCalendar(weekToSend(), recipient, m_services.dialogs, window()));
}

void WeekPage::sendTable()
{
    sayOf(saveTable(weekToSend(), m_services.dialogs, window()));
}

void WeekPage::copyWeek(const WeekRecipient& recipient)
{
    const int sessions = copyLines(weekToSend(), recipient);
    say({tr("Copied."), sessions == 1 ? tr("1 session is on the clipboard, as a line to send.") : tr("%1 sessions are on the clipboard, a line each.").arg(sessions), tr("Close"), {}, false});
}

}  // namespace chalk::ui::week
