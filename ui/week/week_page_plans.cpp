#include "ui/common/action_button.h"
#include "ui/common/segmented_choice.h"
#include "ui/week/week_grid.h"
#include "ui/week/week_page.h"
#include "ui/week/week_words.h"

#include <QClipboard>
#include <QGuiApplication>

#include <algorithm>

// What is looked for beside the window's thread, proposed, kept, and told to those whom it concerns.

namespace chalk::ui::week {

using chalk::week::MoveKind;
using chalk::week::SessionMove;

void WeekPage::fill()
{
    if (isFilling()) {
        m_filling.stop();
        return;
    }
    showMonth(false);
    m_desk.dropProposals();
    m_isMending = false;
    m_filling.start(m_services.fill, m_desk.week().problem, m_desk.week().booked);
    showWeek(false);
}

void WeekPage::mend()
{
    if (isFilling()) {
        m_filling.stop();
        return;
    }
    showMonth(false);
    m_desk.dropProposals();
    m_isMending = true;
    m_filling.start(searchForChange(std::max(0, m_desk.facts().nowMinute)), m_desk.week().problem, m_desk.week().booked);
    showWeek(false);
}

void WeekPage::takeFound(const chalk::week::WeekPlan& plan)
{
    if (m_grid->isMoving()) {
        return;  // what moves is not taken out of the hand
    }
    m_isMending ? m_desk.proposeChange(plan) : m_desk.propose(plan);
    showWeek(false);
}

void WeekPage::endSearch()
{
    const QString left = tr("%1 left over; each says what would help.").arg(m_desk.leftOver());
    if (m_desk.proposed() > 0) {
        m_news = {};
    } else if (!m_isMending) {
        m_news = {tr("Nothing more fits."), left, tr("Close"), {}, false};
    } else if (m_desk.scene().faults.empty()) {
        m_news = {tr("Nothing has to move."), left, tr("Close"), {}, false};
    } else {
        m_news = {tr("Nothing that may move would help."), tr("What is locked stays where it is."), tr("Close"), {}, true};
    }
    showItems();
    showHeader();
    showBar();
}

void WeekPage::copyLastWeek()
{
    m_filling.stop();
    m_desk.proposeLastWeek();
    showWeek(true);
}

ProposalWords WeekPage::changeWords() const
{
    int moved = 0;
    int lost = 0;
    QStringList who;
    for (const SessionMove& move : m_desk.changes()) {
        ++(move.kind() == MoveKind::Moved ? moved : lost);
        who.append(firstNameOf(m_desk.facts(), m_desk.week(), move.session));
    }
    who.removeDuplicates();
    QStringList parts;
    if (moved > 0) {
        parts.append(moved == 1 ? tr("1 session moves") : tr("%1 sessions move").arg(moved));
    }
    if (lost > 0) {
        parts.append(lost == 1 ? tr("1 loses its place") : tr("%1 lose their places").arg(lost));
    }
    if (const int placed = m_desk.proposed() - moved - lost; placed > 0) {
        parts.append(placed == 1 ? tr("1 finds one") : tr("%1 find one").arg(placed));
    }
    const QString told = who.size() > 3 ? tr("%1 people have to be told.").arg(who.size()) : tr("To be told: %1.").arg(who.join(QStringLiteral(", ")));
    return {parts.join(QStringLiteral(", ")) + QLatin1Char('.'), told + QLatin1Char(' ') + tr("Nothing is saved until you keep it."), tr("Undo"), tr("Keep all"), false};
}

QString WeekPage::wordsToSend() const
{
    QStringList words;
    for (const LeftOverItem& item : m_desk.items()) {
        if (item.isChange) {
            words.append(item.words);
        }
    }
    return words.join(QLatin1Char('\n'));
}

void WeekPage::keepAll()
{
    if (isFilling() || m_desk.proposed() == 0) {
        return;
    }
    const QString toSend = wordsToSend();
    const bool isKept = m_desk.keepAll();
    settle(isKept);
    if (isKept && !toSend.isEmpty()) {
        m_toSend = toSend;
        const auto people = toSend.count(QLatin1Char('\n')) + 1;
        say({tr("Kept."), people == 1 ? tr("One person has to be told.") : tr("%1 people have to be told.").arg(people), tr("Close"), tr("Copy the words"), false});
    }
}

void WeekPage::goOn()
{
    if (m_desk.proposed() > 0) {
        keepAll();
    } else if (!m_toSend.isEmpty()) {
        QGuiApplication::clipboard()->setText(m_toSend);
        say({tr("Copied."), tr("The words for everybody who has to be told are on the clipboard."), tr("Close"), {}, false});
    }
}

void WeekPage::say(const ProposalWords& news)
{
    m_news = news;
    if (news.keep.isEmpty()) {
        m_toSend.clear();
    }
    showBar();
}

}  // namespace chalk::ui::week
