#include "ui/week/week_desk.h"

#include "core/store/session_reader.h"
#include "core/store/studio_reader.h"
#include "core/store/week_reader.h"
#include "core/store/week_settings.h"
#include "core/week/slot_table.h"
#include "core/week/week_bookings.h"
#include "ui/common/closure_words.h"
#include "ui/common/formats.h"
#include "ui/week/week_words.h"

#include <algorithm>

namespace chalk::ui::week {

namespace {

using chalk::week::kDayMinutes;
using chalk::week::kWeekDays;
using chalk::week::PlanFault;
using chalk::week::Slot;
using chalk::week::WeekPlan;
using sessions::SessionState;

/// Whether a session on file counts for the number of the week.
bool isOfWeek(const sessions::Session& session, base::Date monday)
{
    return monday <= session.date && session.date < monday + kWeekDays && session.state != SessionState::CancelledInTime && session.state != SessionState::Withdrawn;
}

}  // namespace

WeekDesk::WeekDesk(const WeekStudio& studio) : m_studio(studio)
{
    const base::Date today = studio.clock.today();
    m_monday = today - today.weekday();
    m_scene.monday = m_monday;
}

void WeekDesk::goTo(base::Date day)
{
    m_monday = day - day.weekday();
    m_movedTo.clear();
    m_newSlots.clear();
    m_refusal.clear();
    read();
}

void WeekDesk::read()
{
    auto facts = store::WeekReader(m_studio.database, m_studio.catalogue).read(m_monday, m_studio.clock.today(), m_studio.clock.minuteOfDay());
    m_failure = facts ? QString() : facts.error().message;
    if (!facts) {
        return;
    }
    m_facts = *std::move(facts);
    m_case = caseOf(m_facts);
    m_plan = planWithProposals();
    m_strip = readWeeks(m_monday - kWeeksBefore * kWeekDays, kStripWeeks);
    show();
}

MonthWeeks WeekDesk::readWeeks(base::Date monday, int weeks)
{
    const auto counts = store::SessionReader(m_studio.database).countsFrom(monday, weeks * kWeekDays);
    const auto kept = store::WeekSettings(m_studio.database).closures(monday);
    if (!counts || !kept) {
        m_failure = counts ? kept.error().message : counts.error().message;
        return {};
    }
    std::vector<chalk::week::Closure> closures;
    for (const store::KeptClosure& one : *kept) {
        closures.push_back(one.closure);
    }
    return monthWeeksOf(monday, *counts, m_facts.studio.open, closures);
}

MonthWeeks WeekDesk::monthOf(base::Date day)
{
    const base::Date first = day - (static_cast<int>(static_cast<unsigned>(day.ymd().day())) - 1);
    base::Date last = first;
    while (last.ymd().month() == first.ymd().month()) {
        last = last + 1;
    }
    const base::Date monday = first - first.weekday();
    return readWeeks(monday, (last - monday + kWeekDays - 1) / kWeekDays);
}

void WeekDesk::show()
{
    m_scene = sceneOf(input());
    m_items = leftOverItems(input(), m_scene, ItemDetail::WhatIsLeft);
}

WeekPlan WeekDesk::planWithProposals() const
{
    WeekPlan plan = m_case.booked;
    std::map<base::ClientId, std::size_t> used;
    for (std::size_t i = 0; i < plan.size(); ++i) {
        const chalk::week::WishOrigin& origin = m_case.origins[i];
        if (!origin.booked.isNone()) {
            const auto moved = m_movedTo.find(origin.booked);
            plan[i] = moved == m_movedTo.end() ? plan[i] : moved->second;
        } else if (const auto slots = m_newSlots.find(origin.client); slots != m_newSlots.end()) {
            std::size_t& next = used[origin.client];
            plan[i] = next < slots->second.size() ? std::optional(slots->second[next]) : std::nullopt;
            ++next;
        }
    }
    return plan;
}

void WeekDesk::noteProposals()
{
    m_movedTo.clear();
    m_newSlots.clear();
    for (std::size_t i = 0; i < m_plan.size(); ++i) {
        const chalk::week::WishOrigin& origin = m_case.origins[i];
        if (!isProposed(i)) {
            continue;
        }
        if (origin.booked.isNone()) {
            m_newSlots[origin.client].push_back(*m_plan[i]);
        } else {
            m_movedTo[origin.booked] = m_plan[i];
        }
    }
}

int WeekDesk::placed() const
{
    int count = 0;
    for (const chalk::week::ClientOfWeek& client : m_facts.clients) {
        count += static_cast<int>(std::count_if(client.sessions.begin(), client.sessions.end(), [this](const auto& booked) { return isOfWeek(booked.session, m_monday); }));
    }
    for (std::size_t i = 0; i < m_plan.size(); ++i) {
        count += (m_plan[i] ? 1 : 0) - (m_case.booked[i] ? 1 : 0);
    }
    return count;
}

int WeekDesk::wanted() const
{
    int count = placed();
    for (const auto& slot : m_plan) {
        count += slot ? 0 : 1;
    }
    for (const chalk::week::NoProposal& one : m_case.notProposed) {
        count += one.sessions;
    }
    return count;
}

int WeekDesk::proposed() const
{
    int count = 0;
    for (std::size_t i = 0; i < m_plan.size(); ++i) {
        count += isProposed(i) ? 1 : 0;
    }
    return count;
}

std::vector<chalk::week::SessionMove> WeekDesk::changes() const
{
    std::vector<chalk::week::SessionMove> moves = movesBetween(m_case.booked, m_plan);
    std::erase_if(moves, [](const chalk::week::SessionMove& move) { return move.kind() == chalk::week::MoveKind::Placed; });
    return moves;
}

std::vector<chalk::week::Booking> WeekDesk::bookings() const
{
    return bookingsOf(m_facts, m_case, m_case.booked);
}

print::RosterWeek WeekDesk::onPaper(std::optional<std::size_t> coach) const
{
    print::RosterWeek week{m_monday, common::qstring(store::StudioReader(m_studio.database).name().value_or(std::string())), bookings(), common::closureNotes(m_facts), coach.has_value(), false};
    if (coach) {
        const std::string& name = m_facts.coaches[*coach].coach.name;
        week.title = common::qstring(name);
        std::erase_if(week.bookings, [&name](const chalk::week::Booking& one) { return one.coachName != name; });
    }
    return week;
}

QString WeekDesk::reasonAgainst(const Wishes& wishes, const Slot& slot) const
{
    WeekPlan moved = m_plan;
    for (const std::size_t wish : wishes) {
        moved[wish] = slot;
    }
    for (const PlanFault& fault : faultsOf(m_case.problem, moved)) {
        const bool isOurs = std::any_of(wishes.begin(), wishes.end(), [&fault](std::size_t wish) { return std::find(fault.sessions.begin(), fault.sessions.end(), wish) != fault.sessions.end(); });
        if (isOurs) {
            return faultText(fault, m_facts, m_case);
        }
    }
    return {};
}

std::vector<Slot> WeekDesk::closedFor(const Wishes& wishes) const
{
    chalk::week::SlotTable table(m_case.problem, m_plan);
    for (const std::size_t wish : wishes) {
        table.remove(wish);
    }
    std::vector<Slot> closed;
    for (const int day : m_scene.days) {
        for (std::size_t coach = 0; coach < m_facts.coaches.size(); ++coach) {
            for (int minute = m_scene.from; minute < m_scene.to; minute += m_case.problem.grid) {
                const Slot slot{coach, day * kDayMinutes + minute};
                const bool isClosed = std::any_of(wishes.begin(), wishes.end(), [&](std::size_t wish) {
                    const auto& accepted = m_case.problem.clients[m_case.problem.sessions[wish].client].coaches;
                    const bool isAccepted = std::any_of(accepted.begin(), accepted.end(), [coach](const auto& one) { return one.coach == coach; });
                    return !isAccepted || m_case.problem.sessions[wish].isLocked || !table.fits(wish, slot);
                });
                if (isClosed) {
                    closed.push_back(slot);
                }
            }
        }
    }
    return closed;
}

}  // namespace chalk::ui::week
