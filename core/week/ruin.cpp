#include "core/week/ruin.h"

#include <algorithm>
#include <cstdlib>

namespace chalk::week {

namespace {

// How often each way is taken, of a thousand; any sessions at all for the rest.
constexpr int kAroundWish = 400;
constexpr int kAroundTime = 250;
constexpr int kCoachDay = 20;
constexpr int kClients = 150;

constexpr int kMostOut = 25;
constexpr int kMostClients = 3;
constexpr int kMostAny = 5;
constexpr int kHalf = 500;
constexpr int kCheaperPerMille = 500;

}  // namespace

Ruin::Ruin(const PackedWeek& week, const WeekState& state, WeekTrial& trial, Draw& draw, std::vector<int> free)
    : m_week(week), m_state(state), m_trial(trial), m_draw(draw), m_free(std::move(free))
{
}

void Ruin::run()
{
    m_out.clear();
    m_touchedDays = 0;
    int way = m_draw.below(1000);
    if ((way -= kAroundWish) < 0) {
        aroundWish();
    } else if ((way -= kAroundTime) < 0) {
        aroundTime();
    } else if ((way -= kCoachDay) < 0) {
        coachDay();
    } else if ((way -= kClients) < 0) {
        clients();
    } else {
        any();
    }
}

void Ruin::pushIn(int session)
{
    m_out.clear();
    m_touchedDays = 0;
    m_sparesMoved = true;
    putWhereItWants(session);
    m_sparesMoved = false;
}

void Ruin::takeOut(int session)
{
    m_touchedDays |= 1U << static_cast<unsigned>(m_state.at(session).day());
    m_trial.take(session);
    m_out.push_back(session);
}

void Ruin::takeOutOfFound(int most)
{
    for (int i = 0; i < most && !m_found.empty(); ++i) {
        const auto at = static_cast<std::size_t>(m_draw.below(static_cast<int>(m_found.size())));
        takeOut(m_found[at]);
        m_found[at] = m_found.back();
        m_found.pop_back();
    }
}

int Ruin::anySession()
{
    return m_free[static_cast<std::size_t>(m_draw.below(static_cast<int>(m_free.size())))];
}

int Ruin::wishfulSession()
{
    constexpr int kTries = 24;
    const std::vector<int>& leftOver = m_trial.leftOver();
    if (!leftOver.empty() && m_draw.happens(kHalf)) {
        return leftOver[static_cast<std::size_t>(m_draw.below(static_cast<int>(leftOver.size())))];
    }
    int session = anySession();
    for (int i = 0; i < kTries; ++i) {
        const PackedSession& packed = m_week.session(session);
        if (!m_state.at(session).isSomewhere() || m_state.ownCost(session) > m_week.candidate(packed, 0).cost) {
            break;
        }
        session = anySession();
    }
    return session;
}

Place Ruin::wishedPlace(int session)
{
    const PackedSession& packed = m_week.session(session);
    const int count = packed.candidates.size();
    const auto first = m_week.candidates.begin() + packed.candidates.begin;
    const int own = m_state.at(session).isSomewhere() ? m_state.ownCost(session) : packed.leftOverCost;
    const auto cheaper = std::lower_bound(first, first + count, own, [](const Candidate& one, int cost) { return one.cost < cost; }) - first;
    const double chance = m_draw.unit();
    const double reach = cheaper > 0 && m_draw.happens(kCheaperPerMille) ? static_cast<double>(cheaper) : static_cast<double>(count);
    return m_week.candidate(packed, std::min(static_cast<int>(chance * chance * chance * reach), count - 1)).place;
}

void Ruin::aroundWish()
{
    putWhereItWants(wishfulSession());
}

void Ruin::putWhereItWants(int session)
{
    const Place place = wishedPlace(session);
    if (m_state.at(session).isSomewhere()) {
        takeOut(session);
        m_out.pop_back();
    }
    if (clear(m_week.session(session), place)) {
        m_trial.put(session, place);
    } else {
        m_out.push_back(session);
    }
}

void Ruin::aroundTime()
{
    constexpr int kHour = 60;
    const int session = anySession();
    const PackedSession& packed = m_week.session(session);
    const Place at = m_state.at(session);
    const Place center = at.isSomewhere() ? at : wishedPlace(session);
    const int reach = m_draw.below(kHour / m_week.grid + 1);
    const bool isEveryCoach = m_draw.happens(kHalf);
    const int most = 1 + m_draw.below(kMostOut);
    m_found.clear();
    for (int coach = 0; coach < static_cast<int>(m_week.coachCapacity.size()); ++coach) {
        if (isEveryCoach || coach == center.coach()) {
            find(coach * kWeekDays + center.day(), center.slot - reach, center.slot + packed.slots + reach);
        }
    }
    takeOutOfFound(most);
}

void Ruin::coachDay()
{
    if (const Place place = m_state.at(anySession()); place.isSomewhere()) {
        m_found.clear();
        find(place.coachDay, 0, m_week.slotsADay);
        takeOutOfFound(kMostOut);
    }
}

void Ruin::clients()
{
    for (int left = 1 + m_draw.below(kMostClients); left > 0; --left) {
        const int session = anySession();
        const PackedSession& packed = m_week.session(session);
        m_found.clear();
        m_found.push_back(session);
        for (std::uint32_t i = packed.siblings.begin; i < packed.siblings.end; ++i) {
            m_found.push_back(m_week.siblings[i].session);
        }
        for (const int one : m_found) {
            if (!m_week.session(one).isFixed && m_state.at(one).isSomewhere()) {
                takeOut(one);
            }
        }
    }
}

void Ruin::any()
{
    for (int left = 1 + m_draw.below(kMostAny); left > 0; --left) {
        if (const int session = anySession(); m_state.at(session).isSomewhere()) {
            takeOut(session);
        }
    }
}

bool Ruin::clear(const PackedSession& session, Place place)
{
    return clearSiblings(session, place) && clearCoach(session, place) && clearStations(session, place);
}

bool Ruin::isTooNear(const Sibling& sibling, Place place) const
{
    const Place at = m_state.at(sibling.session);
    return at.isSomewhere() && (at.day() == place.day() || (sibling.hasRestDay && std::abs(at.day() - place.day()) < 2) ||
                                std::abs(m_week.minuteOf(at) - m_week.minuteOf(place)) < sibling.minutesApart);
}

bool Ruin::clearSiblings(const PackedSession& session, Place place)
{
    for (std::uint32_t i = session.siblings.begin; i < session.siblings.end; ++i) {
        const Sibling& sibling = m_week.siblings[i];
        if (isTooNear(sibling, place)) {
            if (!mayTakeOut(sibling.session)) {
                return false;
            }
            takeOut(sibling.session);
        }
    }
    return true;
}

bool Ruin::clearCoach(const PackedSession& session, Place place)
{
    const DaySlots run = slotRun(place.slot, session.slots);
    for (DaySlots full = run & ~m_state.accepts(place.coachDay, session.level); full != 0; full = run & ~m_state.accepts(place.coachDay, session.level)) {
        m_found.clear();
        find(place.coachDay, firstOf(full), firstOf(full) + 1);
        if (m_found.empty()) {
            return false;
        }
        takeOut(victim());
    }
    return true;
}

bool Ruin::clearStations(const PackedSession& session, Place place)
{
    for (Lack lack = m_state.lackOf(session, place); lack.station >= 0; lack = m_state.lackOf(session, place)) {
        m_found.clear();
        for (int coach = 0; coach < static_cast<int>(m_week.coachCapacity.size()); ++coach) {
            find(coach * kWeekDays + place.day(), lack.slot, lack.slot + 1);
        }
        const auto needsNothing = [&](int one) { return m_week.needAt(m_week.session(one), lack.slot - m_state.at(one).slot, lack.station) == 0; };
        m_found.erase(std::remove_if(m_found.begin(), m_found.end(), needsNothing), m_found.end());
        if (m_found.empty()) {
            return false;
        }
        takeOut(victim());
    }
    return true;
}

bool Ruin::mayTakeOut(int session) const
{
    return !m_week.session(session).isFixed && !(m_sparesMoved && m_trial.isChanged(session));
}

void Ruin::find(int coachDay, int from, int to)
{
    for (const int session : m_state.sessionsOn(coachDay)) {
        const PackedSession& packed = m_week.session(session);
        const int slot = m_state.at(session).slot;
        if (slot < to && from < slot + packed.slots && mayTakeOut(session)) {
            m_found.push_back(session);
        }
    }
}

int Ruin::victim()
{
    const int count = static_cast<int>(m_found.size());
    const int one = m_found[static_cast<std::size_t>(m_draw.below(count))];
    const int other = m_found[static_cast<std::size_t>(m_draw.below(count))];
    const bool isCheaper = m_week.session(other).leftOverCost < m_week.session(one).leftOverCost;
    return isCheaper && m_draw.happens(kHalf) ? other : one;
}

}  // namespace chalk::week
