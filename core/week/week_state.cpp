#include "core/week/week_state.h"

#include <algorithm>
#include <cstdlib>

namespace chalk::week {

namespace {

unsigned dayBit(int day)
{
    return 1U << static_cast<unsigned>(day);
}

int pairsOf(unsigned days)
{
    return std::popcount(days & days >> 1U);
}

}  // namespace

WeekState::WeekState(const PackedWeek& week)
    : m_week(week), m_places(week.sessions.size()), m_ownCost(week.sessions.size()), m_clientDays(week.problem->clients.size()),
      m_coachDays(week.work.size()), m_accepts(week.work.size() * week.levels.size()),
      m_counts(week.work.size() * static_cast<std::size_t>(week.slotsADay) * week.levels.size()),
      m_slots(week.work.size() * static_cast<std::size_t>(week.slotsADay)), m_stationRoom(week.stationRoom)
{
    // Locked sessions may be more at once than any coach takes.
    for (std::size_t count = 0; count <= week.sessions.size(); ++count) {
        const auto above = std::upper_bound(week.levels.begin(), week.levels.end(), static_cast<int>(count));
        m_levelAbove.push_back(static_cast<int>(above - week.levels.begin()));
    }
    std::fill(m_accepts.begin(), m_accepts.end(), slotRun(0, week.slotsADay));
    for (const PackedSession& session : week.sessions) {
        m_total += session.leftOverCost;
    }
    for (std::size_t i = 0; i < week.sessions.size(); ++i) {
        if (week.sessions[i].isFixed && week.sessions[i].fixedAt.isSomewhere()) {
            put(static_cast<int>(i), week.sessions[i].fixedAt);
        }
    }
}

int WeekState::slotsAt(const PackedSession& session, Place place) const
{
    return std::min(session.slots, m_week.slotsADay - place.slot);
}

void WeekState::put(int index, Place place)
{
    const auto at = static_cast<std::size_t>(index);
    const PackedSession& session = m_week.sessions[at];
    const CandidateDay* day = m_week.dayOf(session, place);
    m_places[at] = place;
    m_ownCost[at] = day != nullptr ? m_week.costAt(*day, place.slot) : 0;
    auto& days = m_clientDays[static_cast<std::size_t>(session.client)];
    m_total += m_ownCost[at] - session.leftOverCost + successiveDelta(session.client, place.day());
    days = static_cast<std::uint8_t>(days | dayBit(place.day()));
    m_coachDays[static_cast<std::size_t>(place.coachDay)].sessions.push_back(static_cast<std::int16_t>(index));
    addToCoach(session, place, 1);
    addToStations(session, place, 1);
}

void WeekState::take(int index)
{
    const auto at = static_cast<std::size_t>(index);
    const PackedSession& session = m_week.sessions[at];
    const Place place = m_places[at];
    m_places[at] = {};
    auto& days = m_clientDays[static_cast<std::size_t>(session.client)];
    days = static_cast<std::uint8_t>(days & ~dayBit(place.day()));
    m_total -= m_ownCost[at] - session.leftOverCost + successiveDelta(session.client, place.day());
    auto& sessions = m_coachDays[static_cast<std::size_t>(place.coachDay)].sessions;
    *std::find(sessions.begin(), sessions.end(), static_cast<std::int16_t>(index)) = sessions.back();
    sessions.pop_back();
    addToCoach(session, place, -1);
    addToStations(session, place, -1);
}

void WeekState::addToCoach(const PackedSession& session, Place place, int change)
{
    const auto coachDay = static_cast<std::size_t>(place.coachDay);
    const int end = place.slot + slotsAt(session, place);
    for (int slot = place.slot; slot < end; ++slot) {
        recount(coachDay, slot, session.level, change);
    }
    settleDay(place.coachDay);
}

void WeekState::recount(std::size_t coachDay, int slot, int level, int change)
{
    const std::size_t at = coachDay * static_cast<std::size_t>(m_week.slotsADay) + static_cast<std::size_t>(slot);
    auto& ofLevel = m_counts[at * m_week.levels.size() + static_cast<std::size_t>(level)];
    ofLevel = static_cast<std::int16_t>(ofLevel + change);
    CoachSlot& counted = m_slots[at];
    counted.count = static_cast<std::int16_t>(counted.count + change);
    const DaySlots bit = slotRun(slot, 1);
    DaySlots& busy = m_coachDays[coachDay].busy;
    busy = counted.count > 0 ? busy | bit : busy & ~bit;
    const int least = leastLevel(coachDay, slot);
    DaySlots* accepts = &m_accepts[coachDay * m_week.levels.size()];
    for (int one = counted.leastLevel; one < least; ++one) {
        accepts[one] &= ~bit;
    }
    for (int one = least; one < counted.leastLevel; ++one) {
        accepts[one] |= bit;
    }
    counted.leastLevel = static_cast<std::int16_t>(least);
}

int WeekState::leastLevel(std::size_t coachDay, int slot) const
{
    const int levels = static_cast<int>(m_week.levels.size());
    const std::size_t at = coachDay * static_cast<std::size_t>(m_week.slotsADay) + static_cast<std::size_t>(slot);
    const int count = m_slots[at].count;
    if (count == 0) {
        return 0;
    }
    if (count >= m_week.coachCapacity[coachDay / kWeekDays]) {
        return levels;
    }
    const std::int16_t* counts = &m_counts[at * m_week.levels.size()];
    int tightest = 0;
    while (counts[tightest] == 0) {
        ++tightest;
    }
    return count >= m_week.levels[static_cast<std::size_t>(tightest)] ? levels : m_levelAbove[static_cast<std::size_t>(count)];
}

void WeekState::settleDay(int coachDay)
{
    CoachDay& day = m_coachDays[static_cast<std::size_t>(coachDay)];
    const int cost = m_week.dayCost(coachDay, day.busy);
    m_total += cost - day.cost;
    m_dayCosts += cost - day.cost;
    day.cost = cost;
}

void WeekState::addToStations(const PackedSession& session, Place place, int change)
{
    const int width = m_week.stationsPadded;
    const int* needs = &m_week.needs[session.needs];
    int* room = &m_stationRoom[static_cast<std::size_t>((place.day() * m_week.slotsADay + place.slot) * width)];
    const int count = slotsAt(session, place) * width;
    for (int i = 0; i < count; ++i) {
        room[i] -= change * needs[i];
    }
}

unsigned WeekState::closedDays(int session) const
{
    const PackedSession& packed = m_week.sessions[static_cast<std::size_t>(session)];
    unsigned closed = m_clientDays[static_cast<std::size_t>(packed.client)];
    if (closed == 0) {
        return 0;
    }
    for (std::uint32_t i = packed.siblings.begin; i < packed.siblings.end; ++i) {
        const Sibling& sibling = m_week.siblings[i];
        if (const Place place = at(sibling.session); sibling.hasRestDay && place.isSomewhere()) {
            const unsigned bit = dayBit(place.day());
            closed |= bit << 1U | bit >> 1U;
        }
    }
    return closed;
}

DaySlots WeekState::roomAtCoach(const PackedSession& session, const CandidateDay& day) const
{
    return startsOfRuns(accepts(day.coachDay, session.level), session.slots) & day.starts;
}

bool WeekState::hasStations(const PackedSession& session, Place place) const
{
    const int width = m_week.stationsPadded;
    const int* needs = &m_week.needs[session.needs];
    const int* room = &m_stationRoom[static_cast<std::size_t>((place.day() * m_week.slotsADay + place.slot) * width)];
    const int count = session.slots * width;
    for (int i = 0; i < count; i += 4) {
        // A full station may be more than full by locked sessions: what needs nothing of it does not mind.
        const int lack = ((needs[i] > room[i]) & (needs[i] > 0)) | ((needs[i + 1] > room[i + 1]) & (needs[i + 1] > 0)) |
                         ((needs[i + 2] > room[i + 2]) & (needs[i + 2] > 0)) | ((needs[i + 3] > room[i + 3]) & (needs[i + 3] > 0));
        if (lack != 0) {
            return false;
        }
    }
    return true;
}

Lack WeekState::lackOf(const PackedSession& session, Place place) const
{
    const int width = m_week.stationsPadded;
    const int* needs = &m_week.needs[session.needs];
    const int* room = &m_stationRoom[static_cast<std::size_t>((place.day() * m_week.slotsADay + place.slot) * width)];
    for (int i = 0; i < session.slots * width; ++i) {
        if (needs[i] > 0 && needs[i] > room[i]) {
            return {place.slot + i / width, i % width};
        }
    }
    return {};
}

bool WeekState::isRecovered(const PackedSession& session, int start) const
{
    for (std::uint32_t i = session.siblings.begin; i < session.siblings.end; ++i) {
        const Sibling& sibling = m_week.siblings[i];
        if (sibling.minutesApart == 0) {
            continue;
        }
        if (const Place place = at(sibling.session); place.isSomewhere() && std::abs(m_week.minuteOf(place) - start) < sibling.minutesApart) {
            return false;
        }
    }
    return true;
}

bool WeekState::fits(int session, Place place) const
{
    const PackedSession& packed = m_week.sessions[static_cast<std::size_t>(session)];
    const CandidateDay* day = m_week.dayOf(packed, place);
    return day != nullptr && (closedDays(session) & dayBit(place.day())) == 0 && (roomAtCoach(packed, *day) & slotRun(place.slot, 1)) != 0 &&
           isRecovered(packed, m_week.minuteOf(place)) && hasStations(packed, place);
}

int WeekState::coachDelta(const PackedSession& session, Place place) const
{
    const CoachDay& day = m_coachDays[static_cast<std::size_t>(place.coachDay)];
    const DaySlots busy = day.busy | slotRun(place.slot, session.slots);
    return busy == day.busy ? 0 : m_week.dayCost(place.coachDay, busy) - day.cost;
}

int WeekState::successiveDelta(int client, int day) const
{
    const unsigned days = m_clientDays[static_cast<std::size_t>(client)];
    const unsigned with = days | dayBit(day);
    return m_week.problem->weights.consecutive * (pairsOf(with) - pairsOf(days));
}

}  // namespace chalk::week
