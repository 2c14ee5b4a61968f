#include "core/week/slot_table.h"

#include <algorithm>
#include <cstdlib>

namespace chalk::week {

namespace {

int tableDay(int minute)
{
    return minute >= 0 ? minute / kDayMinutes : -1 - (-1 - minute) / kDayMinutes;
}

/// Makes cells that lie wholly in the spans true (`isIn`), or those that the spans touch false.
void markCells(std::vector<bool>& cells, const std::vector<DaySpan>& spans, int grid, bool isIn)
{
    std::vector<bool> isCovered(cells.size() * static_cast<std::size_t>(grid), false);
    for (const DaySpan& span : spans) {
        const auto midnight = isCovered.begin() + span.day * kDayMinutes;
        std::fill(midnight + span.from, midnight + span.to, true);
    }
    for (std::size_t cell = 0; cell < cells.size(); ++cell) {
        const auto from = isCovered.begin() + static_cast<std::ptrdiff_t>(cell) * grid;
        const auto covered = std::count(from, from + grid, true);
        if (covered >= (isIn ? grid : 1)) {
            cells[cell] = isIn;
        }
    }
}

bool isPatternShared(const std::vector<std::string>& a, const std::vector<std::string>& b)
{
    return std::find_first_of(a.begin(), a.end(), b.begin(), b.end()) != a.end();
}

/// What a session takes of a station in a cell, in per cent of a unit.
int shareIn(const SessionWish& wish, std::size_t station, int start, int cell, int grid)
{
    int share = 0;
    for (const StationNeed& need : wish.needs) {
        const int from = start + need.from / grid * grid;
        const int to = start + (need.to + grid - 1) / grid * grid;
        if (need.station == station && from < (cell + 1) * grid && cell * grid < to) {
            share += need.share;
        }
    }
    return share;
}

}  // namespace

bool isRecovered(const Recovery& recovery, const std::vector<std::string>& patterns, int start,
                 const std::vector<std::string>& otherPatterns, int otherStart)
{
    if (tableDay(start) == tableDay(otherStart)) {
        return false;
    }
    if (!isPatternShared(patterns, otherPatterns)) {
        return true;
    }
    return recovery.kind == RecoveryKind::RestDay ? std::abs(tableDay(start) - tableDay(otherStart)) >= 2
                                                  : std::abs(start - otherStart) >= recovery.hours * 60;
}

SlotTable::SlotTable(const WeekProblem& problem, const WeekPlan& plan)
    : m_problem(problem),
      m_plan(problem.sessions.size()),
      m_open(static_cast<std::size_t>(kWeekDays * kDayMinutes / problem.grid), false)
{
    const std::size_t cells = m_open.size();
    markCells(m_open, problem.open, problem.grid, true);
    for (const CoachWeek& coach : problem.coaches) {
        std::vector<bool>& work = m_atWork.emplace_back(cells, false);
        markCells(work, coach.windows, problem.grid, true);
        markCells(work, coach.breaks, problem.grid, false);
        markCells(work, coach.absences, problem.grid, false);
        m_with.emplace_back(cells);
    }
    for (const Station& station : problem.stations) {
        std::vector<int>& there = m_percentThere.emplace_back(cells, station.units * 100);
        for (const StationClosure& closure : station.closures) {
            std::vector<bool> closed(cells, true);
            markCells(closed, {closure.span}, problem.grid, false);
            for (std::size_t cell = 0; cell < cells; ++cell) {
                there[cell] = closed[cell] ? there[cell] : std::min(there[cell], closure.units * 100);
            }
        }
        m_using.emplace_back(cells);
    }
    for (std::size_t session = 0; session < m_plan.size() && session < plan.size(); ++session) {
        if (plan[session]) {
            place(session, *plan[session]);
        }
    }
}

void SlotTable::place(std::size_t session, const Slot& slot)
{
    remove(session);
    m_plan[session] = slot;
    enter(session, slot, true);
}

void SlotTable::remove(std::size_t session)
{
    if (m_plan[session]) {
        enter(session, *m_plan[session], false);
        m_plan[session].reset();
    }
}

void SlotTable::enter(std::size_t session, const Slot& slot, bool isIn)
{
    const auto change = [&](std::vector<std::size_t>& sessions) {
        const auto where = std::lower_bound(sessions.begin(), sessions.end(), session);
        const bool isThere = where != sessions.end() && *where == session;
        if (isIn && !isThere) {
            sessions.insert(where, session);
        } else if (!isIn && isThere) {
            sessions.erase(where);
        }
    };
    const SessionWish& wish = m_problem.sessions[session];
    const Cells busy = busyCells(wish, slot.start);
    for (std::size_t cell = busy.from; cell < busy.to; ++cell) {
        change(m_with[slot.coach][cell]);
    }
    for (const StationNeed& need : wish.needs) {
        const Cells used = needCells(need, slot.start);
        for (std::size_t cell = used.from; cell < used.to; ++cell) {
            change(m_using[need.station][cell]);
        }
    }
}

SlotTable::Cells SlotTable::busyCells(const SessionWish& wish, int start) const
{
    return needCells({0, 0, 0, wish.minutes}, start);
}

SlotTable::Cells SlotTable::needCells(const StationNeed& need, int start) const
{
    const int grid = m_problem.grid;
    const auto cellOf = [&](int minute) {
        return static_cast<std::size_t>(std::clamp(minute / grid, 0, static_cast<int>(m_open.size())));
    };
    return {cellOf(start + need.from / grid * grid), cellOf(start + (need.to + grid - 1) / grid * grid + grid - 1)};
}

std::optional<BlockedSlot> SlotTable::hoursBlockOf(std::size_t session, const Slot& slot) const
{
    const SessionWish& wish = m_problem.sessions[session];
    const int day = tableDay(slot.start);
    const int minute = slot.start - day * kDayMinutes;
    const Cells busy = busyCells(wish, slot.start);
    const auto firstOutside = [&](const std::vector<bool>& cells) {
        std::size_t cell = busy.from;
        while (cell < busy.to && cells[cell]) {
            ++cell;
        }
        return cell;
    };
    const auto blocked = [](SlotBlock block, int at) { return BlockedSlot{block, std::nullopt, {}, at, 0, 0}; };
    if (day < 0 || day >= kWeekDays) {
        return blocked(SlotBlock::StudioClosed, slot.start);
    }
    if (minute + (wish.minutes + m_problem.grid - 1) / m_problem.grid * m_problem.grid > kDayMinutes) {
        return blocked(SlotBlock::StudioClosed, (day + 1) * kDayMinutes);
    }
    if (const std::size_t cell = firstOutside(m_open); cell < busy.to) {
        return blocked(SlotBlock::StudioClosed, static_cast<int>(cell) * m_problem.grid);
    }
    if (const std::size_t cell = firstOutside(m_atWork[slot.coach]); cell < busy.to) {
        return blocked(SlotBlock::CoachAway, static_cast<int>(cell) * m_problem.grid);
    }
    const std::vector<DaySpan>& available = m_problem.clients[wish.client].available;
    if (std::none_of(available.begin(), available.end(), [&](const DaySpan& span) {
            return span.day == day && span.from <= minute && minute + wish.minutes <= span.to;
        })) {
        return blocked(SlotBlock::ClientAway, slot.start);
    }
    return lastWeekBlock(wish, slot.start);
}

std::optional<BlockedSlot> SlotTable::lastWeekBlock(const SessionWish& wish, int start) const
{
    const ClientWeek& client = m_problem.clients[wish.client];
    for (const PastSession& past : client.lastWeek) {
        if (!isRecovered(client.recovery, wish.patterns, start, past.patterns, past.start)) {
            return BlockedSlot{SlotBlock::LastWeek, std::nullopt, {}, start, 0, 0};
        }
    }
    return std::nullopt;
}

std::optional<BlockedSlot> SlotTable::ownBlock(std::size_t session, int start) const
{
    const SessionWish& wish = m_problem.sessions[session];
    BlockedSlot blocked{SlotBlock::OwnSessions, std::nullopt, {}, start, 0, 0};
    for (std::size_t other = 0; other < m_plan.size(); ++other) {
        const SessionWish& otherWish = m_problem.sessions[other];
        if (other != session && m_plan[other] && otherWish.client == wish.client &&
            !isRecovered(m_problem.clients[wish.client].recovery, wish.patterns, start, otherWish.patterns, m_plan[other]->start)) {
            blocked.sessions.push_back(other);
        }
    }
    return blocked.sessions.empty() ? std::nullopt : std::optional(blocked);
}

bool SlotTable::isCounted(std::size_t other, std::size_t session, bool isOfLocked) const
{
    const SessionWish& wish = m_problem.sessions[other];
    return other != session && (!isOfLocked || (wish.isLocked && wish.client != m_problem.sessions[session].client));
}

std::optional<BlockedSlot> SlotTable::groupBlock(std::size_t session, const Slot& slot, bool isOfLocked) const
{
    const SessionWish& wish = m_problem.sessions[session];
    const Cells busy = busyCells(wish, slot.start);
    for (std::size_t cell = busy.from; cell < busy.to; ++cell) {
        BlockedSlot blocked{isOfLocked ? SlotBlock::LockedBookings : SlotBlock::Group, std::nullopt, {}, static_cast<int>(cell) * m_problem.grid, 1,
                            std::min(m_problem.coaches[slot.coach].capacity, m_problem.clients[wish.client].maxGroup)};
        for (const std::size_t other : m_with[slot.coach][cell]) {
            if (isCounted(other, session, isOfLocked)) {
                blocked.sessions.push_back(other);
                blocked.there = std::min(blocked.there, m_problem.clients[m_problem.sessions[other].client].maxGroup);
                ++blocked.needed;
            }
        }
        if (blocked.needed > blocked.there && !(isOfLocked && blocked.sessions.empty())) {
            return blocked;
        }
    }
    return std::nullopt;
}

std::optional<BlockedSlot> SlotTable::stationBlock(std::size_t session, int start, bool isOfLocked) const
{
    const SessionWish& wish = m_problem.sessions[session];
    const int grid = m_problem.grid;
    for (const StationNeed& need : wish.needs) {
        const Cells used = needCells(need, start);
        for (std::size_t cell = used.from; cell < used.to; ++cell) {
            const int own = shareIn(wish, need.station, start, static_cast<int>(cell), grid);
            BlockedSlot blocked{isOfLocked ? SlotBlock::LockedBookings : SlotBlock::Stations, need.station, {}, static_cast<int>(cell) * grid, own,
                                m_percentThere[need.station][cell]};
            for (const std::size_t other : m_using[need.station][cell]) {
                if (isCounted(other, session, isOfLocked)) {
                    blocked.sessions.push_back(other);
                    blocked.needed += shareIn(m_problem.sessions[other], need.station, m_plan[other]->start, static_cast<int>(cell), grid);
                }
            }
            if (blocked.needed > blocked.there && !(isOfLocked && own > blocked.there)) {
                return blocked;
            }
        }
    }
    return std::nullopt;
}

std::optional<BlockedSlot> SlotTable::blockOf(std::size_t session, const Slot& slot) const
{
    std::optional<BlockedSlot> blocked = hoursBlockOf(session, slot);
    for (const bool isOfLocked : {true, false}) {
        if (!blocked && !isOfLocked) {
            blocked = ownBlock(session, slot.start);
        }
        if (!blocked) {
            blocked = groupBlock(session, slot, isOfLocked);
        }
        if (!blocked) {
            blocked = stationBlock(session, slot.start, isOfLocked);
        }
    }
    return blocked;
}

std::vector<Slot> SlotTable::candidatesOf(std::size_t session) const
{
    std::vector<Slot> slots;
    for (const AcceptedCoach& accepted : m_problem.clients[m_problem.sessions[session].client].coaches) {
        for (int start = 0; start < kWeekDays * kDayMinutes; start += m_problem.grid) {
            slots.push_back({accepted.coach, start});
        }
    }
    return slots;
}

}  // namespace chalk::week
