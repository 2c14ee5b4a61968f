#include "core/store/pending_write.h"
#include "core/store/week_changes.h"
#include "core/store/week_settings.h"
#include "core/week/week_copy.h"
#include "ui/common/settling.h"
#include "ui/common/write_desk.h"
#include "ui/floor/session_words.h"
#include "ui/week/week_desk.h"
#include "ui/week/week_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using chalk::week::kDayMinutes;
using chalk::week::Slot;

QString deskText(const char* text)
{
    return QCoreApplication::translate("WeekDesk", text);
}

QString sessionsText(std::size_t count)
{
    return count == 1 ? deskText("1 session") : deskText("%1 sessions").arg(count);
}

}  // namespace

store::Result<store::ActOutcome> WeekDesk::write(const store::PendingWrite& write, const QString& words)
{
    return m_studio.writes != nullptr ? m_studio.writes->write(write, words)
                                      : store::perform(m_studio.database, write, m_studio.atUtc, store::newToken());
}

bool WeekDesk::done(const store::Result<store::ActOutcome>& outcome, const QString& words)
{
    if (outcome) {
        m_studio.acts.add(outcome->act, words);
        read();
    }
    if (!outcome && outcome.error().kind == store::StoreError::Kind::Conflict) {
        read();  // somebody else's version is kept
    }
    m_refusal = outcome ? QString() : outcome.error().message;
    return outcome.has_value();
}

void WeekDesk::addWithdrawn(store::BookingChanges& changes, base::ClientId client, base::SessionId booking) const
{
    changes.withdrawn.push_back(booking);
    if (const auto seen = store::seenBooking(m_facts, client, booking)) {
        changes.seenWithdrawn[booking] = *seen;
    }
}

store::BookingChanges WeekDesk::changesOf(const Wishes& wishes) const
{
    const auto isMeant = [&wishes](std::size_t wish) { return std::find(wishes.begin(), wishes.end(), wish) != wishes.end(); };
    store::BookingChanges changes = store::changesTo(m_facts, m_case, m_plan, isMeant);
    for (const std::size_t wish : wishes) {
        if (!m_plan[wish] && m_case.booked[wish]) {
            addWithdrawn(changes, m_case.origins[wish].client, m_case.origins[wish].booked);
        }
    }
    return changes;
}

bool WeekDesk::move(const Wishes& wishes, const Slot& slot)
{
    m_refusal = wishes.empty() ? deskText("What is over stays where it was.") : reasonAgainst(wishes, slot);
    if (!m_refusal.isEmpty()) {
        return false;
    }
    const bool isOfProposal = std::any_of(wishes.begin(), wishes.end(), [this](std::size_t wish) { return isProposed(wish); });
    const bool isLeftOver = std::any_of(wishes.begin(), wishes.end(), [this](std::size_t wish) { return !m_plan[wish]; });
    const bool hasProposals = proposed() > 0;
    for (const std::size_t wish : wishes) {
        m_plan[wish] = slot;
    }
    if (isOfProposal || (isLeftOver && hasProposals)) {
        noteProposals();
        show();
        return true;
    }
    const store::BookingChanges changes = changesOf(wishes);
    if (changes.isEmpty()) {
        return true;
    }
    const QString who = wishes.size() == 1 ? firstNameOf(m_facts, m_case, wishes.front()) : sessionsText(wishes.size());
    const QString words = changes.moved.empty() ? deskText("%1 booked for %2") : deskText("%1 moved to %2");
    const QString told = words.arg(who, common::weekTimeText(slot.start));
    const bool isDone = done(write(changes, told), told);
    if (!isDone) {
        m_plan = planWithProposals();
    }
    return isDone;
}

bool WeekDesk::toggleLock(const WeekBlock& block)
{
    store::BookingChanges changes;
    QString who;
    for (const BlockMember& member : block.members) {
        if (member.wish && !member.booking.isNone() && !member.isProposed) {
            chalk::week::BookingPlace place = placeOf(m_facts, m_case, *member.wish, *m_plan[*member.wish]);
            const auto seen = place;
            place.isLocked = !block.isLocked;
            changes.moved.push_back({member.booking, place, seen});
            who = member.firstName;
        }
    }
    if (changes.isEmpty()) {
        m_refusal = deskText("Only a booking that is still to come can be locked.");
        return false;
    }
    const QString what = changes.moved.size() == 1 ? who : sessionsText(changes.moved.size());
    const QString told = (block.isLocked ? deskText("%1 unlocked") : deskText("%1 locked")).arg(what);
    return done(write(changes, told), told);
}

bool WeekDesk::takeAway(const std::vector<BlockMember>& members)
{
    store::BookingChanges changes;
    QString who;
    bool isDropped = false;
    for (const BlockMember& member : members) {
        if (member.wish && member.isProposed) {
            m_plan[*member.wish] = m_case.booked[*member.wish];
            isDropped = true;
        } else if (!member.booking.isNone() && member.state != sessions::SessionState::Recorded) {
            addWithdrawn(changes, member.client, member.booking);
            who = member.firstName;
        }
    }
    if (isDropped) {
        noteProposals();
        show();
    }
    if (changes.isEmpty()) {
        m_refusal = isDropped ? QString() : deskText("Something was recorded in it: delete its records first.");
        return isDropped;
    }
    const QString what = changes.withdrawn.size() == 1 ? who : sessionsText(changes.withdrawn.size());
    const QString told = deskText("%1 taken out of the week").arg(what);
    return done(write(changes, told), told);
}

bool WeekDesk::setState(const BlockMember& member, sessions::SessionState state)
{
    if (state == sessions::SessionState::Withdrawn) {
        return takeAway({member});
    }
    const QString told = floor::stateDone(state, member.firstName);
    return done(write(store::StateWrite{member.booking, state, member.state}, told), told);
}

bool WeekDesk::book(const sessions::Session& session)
{
    const auto& clients = m_facts.clients;
    const auto at = std::find_if(clients.begin(), clients.end(), [&session](const chalk::week::ClientOfWeek& one) { return one.client.id == session.client; });
    const QString who = at == clients.end() ? QString() : QString::fromStdString(at->client.name).section(QLatin1Char(' '), 0, 0);
    const int start = session.date.weekday() * kDayMinutes + session.startMinute;
    const QString told = deskText("%1 booked for %2").arg(who, common::weekTimeText(start));
    return done(write(store::BookingChanges{{session}, {}, {}}, told), told);
}

bool WeekDesk::setSessions(base::ClientId client, std::optional<int> sessions)
{
    const auto& clients = m_facts.clients;
    const auto at = std::find_if(clients.begin(), clients.end(), [client](const chalk::week::ClientOfWeek& one) { return one.client.id == client; });
    const store::Seen seen = at == clients.end() ? store::Seen() : store::Seen(store::WeekSettings::quotaSeen(m_monday, at->quota));
    const auto write = [&](const common::Settling& settling) { return store::WeekSettings(m_studio.database).setQuota(client, m_monday, sessions, settling.seen); };
    const auto set = m_studio.writes == nullptr ? write({seen, {}}) : common::settled(m_studio.writes->dialogs(), m_studio.database, seen, write);
    if (set || set.error().kind == store::StoreError::Kind::Conflict) {
        read();
    }
    m_refusal = set ? QString() : set.error().message;
    return set.has_value();
}

bool WeekDesk::wantOneFewer(base::ClientId client)
{
    const auto& clients = m_facts.clients;
    const auto at = std::find_if(clients.begin(), clients.end(), [client](const chalk::week::ClientOfWeek& one) { return one.client.id == client; });
    if (at == clients.end() || at->sessionsWanted() == 0) {
        return false;
    }
    const int sessions = at->sessionsWanted() - 1;
    return setSessions(client, sessions == at->usualSessions() ? std::nullopt : std::optional(sessions));
}

bool WeekDesk::wantUsual(base::ClientId client)
{
    return setSessions(client, {});
}

void WeekDesk::propose(const chalk::week::WeekPlan& plan)
{
    m_plan = plan;
    m_plan.resize(m_case.booked.size());
    for (std::size_t i = 0; i < m_plan.size(); ++i) {
        m_plan[i] = m_plan[i] ? m_plan[i] : m_case.booked[i];  // filling proposes no booking away
    }
    noteProposals();
    show();
}

void WeekDesk::proposeChange(const chalk::week::WeekPlan& plan)
{
    m_plan = plan;
    m_plan.resize(m_case.booked.size());
    noteProposals();
    show();
}

int WeekDesk::proposeLastWeek()
{
    m_plan = copyOfLastWeek(m_facts, m_case);
    noteProposals();
    show();
    return proposed();
}

void WeekDesk::rearrange(std::size_t wish, const Slot& slot, std::size_t other, const Slot& otherSlot)
{
    m_plan[wish] = slot;
    m_plan[other] = otherSlot;
    noteProposals();
    show();
}

bool WeekDesk::keepAll()
{
    Wishes all;
    for (std::size_t i = 0; i < m_plan.size(); ++i) {
        if (isProposed(i)) {
            all.push_back(i);
        }
    }
    return keep(all);
}

bool WeekDesk::keep(const Wishes& wishes)
{
    const store::BookingChanges changes = changesOf(wishes);
    if (changes.isEmpty()) {
        return false;
    }
    const std::optional<Slot> first = m_plan[wishes.front()];
    const std::size_t count = changes.booked.size() + changes.moved.size() + changes.withdrawn.size();
    const QString words = count == 1 && first ? deskText("%1 kept on %2").arg(firstNameOf(m_facts, m_case, wishes.front()), common::weekTimeText(first->start))
                                              : deskText("%1 kept in week %2").arg(sessionsText(count)).arg(m_monday.isoWeek().week);
    const auto outcome = write(changes, words);
    if (!outcome) {
        m_refusal = outcome.error().message;
        return false;
    }
    for (const std::size_t wish : wishes) {
        m_plan[wish] = m_case.booked[wish];
    }
    noteProposals();
    return done(outcome, words);
}

void WeekDesk::dropProposals()
{
    m_plan = m_case.booked;
    noteProposals();
    show();
}

}  // namespace chalk::ui::week
