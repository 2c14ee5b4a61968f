#include "core/week/packed_week.h"

#include "core/week/slot_cost.h"

#include <algorithm>
#include <bitset>
#include <limits>

namespace chalk::week {

namespace {

using DayMinutes = std::bitset<kDayMinutes>;

void mark(DayMinutes& minutes, const std::vector<DaySpan>& spans, int day, bool value)
{
    for (const DaySpan& span : spans) {
        for (int minute = span.from; span.day == day && minute < span.to; ++minute) {
            minutes.set(static_cast<std::size_t>(minute), value);
        }
    }
}

DayMinutes workingMinutes(const WeekProblem& problem, const CoachWeek& coach, int day)
{
    DayMinutes open;
    mark(open, problem.open, day, true);
    DayMinutes minutes;
    mark(minutes, coach.windows, day, true);
    mark(minutes, coach.breaks, day, false);
    mark(minutes, coach.absences, day, false);
    return minutes & open;
}

bool isAvailable(const ClientWeek& client, int day, int from, int to)
{
    return std::any_of(client.available.begin(), client.available.end(),
                       [&](const DaySpan& span) { return span.day == day && span.from <= from && to <= span.to; });
}

/// Recovery from the sessions of last week.
bool isRecovered(const ClientWeek& client, const SessionWish& wish, int start)
{
    return std::all_of(client.lastWeek.begin(), client.lastWeek.end(), [&](const PastSession& past) {
        return !sharesPattern(past.patterns, wish.patterns) || recovers(client.recovery, start, past.start);
    });
}

bool isFixed(const SessionWish& wish, std::size_t index, const FillOptions& options)
{
    return (wish.isLocked && wish.standing) || (options.present != nullptr && index < options.fixed.size() && options.fixed[index]);
}

/// Where a session that may not move is; nothing where it may, or is left over.
const Slot* fixedSlot(const SessionWish& wish, std::size_t index, const FillOptions& options)
{
    if (!isFixed(wish, index, options)) {
        return nullptr;
    }
    const auto& slot = wish.isLocked && wish.standing ? wish.standing : (*options.present)[index];
    return slot ? &*slot : nullptr;
}

std::uint32_t sizeOf(std::size_t size)
{
    return static_cast<std::uint32_t>(size);
}

}  // namespace

PackedWeek::PackedWeek(const WeekProblem& given, const FillOptions& options) : grid(given.grid), slotsADay(kDayMinutes / given.grid), problem(&given)
{
    constexpr int kPadding = 4;
    stationsPadded = std::max<int>(kPadding, (static_cast<int>(given.stations.size()) + kPadding - 1) / kPadding * kPadding);
    for (const ClientWeek& client : given.clients) {
        levels.push_back(client.maxGroup);
    }
    std::sort(levels.begin(), levels.end());
    levels.erase(std::unique(levels.begin(), levels.end()), levels.end());
    packHours();
    packStations();
    sessions.resize(given.sessions.size());
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        packSession(i, options);
    }
    packSiblings();
}

void PackedWeek::packHours()
{
    for (const CoachWeek& coach : problem->coaches) {
        coachCapacity.push_back(coach.capacity);
        m_softMax.push_back(coach.softMaxMinutes / grid * grid);
        for (int day = 0; day < kWeekDays; ++day) {
            packCoachDay(coach, day);
        }
    }
}

void PackedWeek::packCoachDay(const CoachWeek& coach, int day)
{
    const DayMinutes minutes = workingMinutes(*problem, coach, day);
    DaySlots whole = 0;
    DaySlots part = 0;
    m_minutes.resize(m_minutes.size() + static_cast<std::size_t>(slotsADay), 0);
    for (int slot = 0; slot < slotsADay && minutes.any(); ++slot) {
        int count = 0;
        for (int minute = slot * grid; minute < (slot + 1) * grid; ++minute) {
            count += minutes.test(static_cast<std::size_t>(minute)) ? 1 : 0;
        }
        m_minutes[m_minutes.size() - static_cast<std::size_t>(slotsADay - slot)] = count;
        whole |= count == grid ? slotRun(slot, 1) : 0;
        part |= count > 0 && count < grid ? slotRun(slot, 1) : 0;
    }
    work.push_back(whole);
    partWork.push_back(part);
}

void PackedWeek::packStations()
{
    constexpr int kPerUnit = 100;
    const auto width = static_cast<std::size_t>(stationsPadded);
    stationRoom.assign(static_cast<std::size_t>(slotsADay * kWeekDays) * width, 0);
    for (std::size_t station = 0; station < problem->stations.size(); ++station) {
        for (int slot = 0; slot < slotsADay * kWeekDays; ++slot) {
            const int day = slot / slotsADay;
            const int from = slot % slotsADay * grid;
            int units = problem->stations[station].units;
            for (const StationClosure& closure : problem->stations[station].closures) {
                const bool touches = closure.span.day == day && closure.span.from < from + grid && closure.span.to > from;
                units = touches ? std::min(units, closure.units) : units;
            }
            stationRoom[static_cast<std::size_t>(slot) * width + station] = units * kPerUnit;
        }
    }
}

void PackedWeek::packSession(std::size_t index, const FillOptions& options)
{
    const SessionWish& wish = problem->sessions[index];
    const ClientWeek& client = problem->clients[wish.client];
    PackedSession& session = sessions[index];
    session.client = static_cast<int>(wish.client);
    const Slot* fixedAt = fixedSlot(wish, index, options);
    const int offGrid = fixedAt != nullptr ? fixedAt->start % grid : 0;
    session.slots = std::min(cellsTo(offGrid, wish.minutes), slotsADay);
    session.mostGain = problem->weights.gapPer15 * session.slots * (grid / 15);
    session.level = static_cast<int>(std::lower_bound(levels.begin(), levels.end(), client.maxGroup) - levels.begin());
    session.leftOverCost = problem->weights.unplaced * client.priority;
    session.isFixed = isFixed(wish, index, options);
    session.fixedAt = fixedAt != nullptr ? placeOf(*fixedAt) : Place{};
    packNeeds(wish, session, offGrid);
    packCandidates(index, options);
}

int PackedWeek::cellsTo(int offGrid, int minutes) const
{
    const auto cells = [this](int length) { return (length + grid - 1) / grid; };
    return cells(offGrid + cells(minutes) * grid);
}

void PackedWeek::packNeeds(const SessionWish& wish, PackedSession& session, int offGrid)
{
    session.needs = sizeOf(needs.size());
    needs.resize(needs.size() + static_cast<std::size_t>(session.slots * stationsPadded), 0);
    for (const StationNeed& need : wish.needs) {
        const int end = std::min(cellsTo(offGrid, need.to), session.slots);
        for (int slot = need.from / grid; slot < end; ++slot) {
            needs[session.needs + static_cast<std::uint32_t>(slot * stationsPadded) + static_cast<std::uint32_t>(need.station)] += need.share;
        }
    }
}

void PackedWeek::packCandidates(std::size_t index, const FillOptions& options)
{
    const SessionWish& wish = problem->sessions[index];
    const ClientWeek& client = problem->clients[wish.client];
    const Slot* stay = options.present != nullptr && (*options.present)[index] ? &*(*options.present)[index] : nullptr;
    PackedSession& session = sessions[index];
    session.days.begin = sizeOf(days.size());
    session.candidates.begin = sizeOf(candidates.size());
    for (const AcceptedCoach& accepted : client.coaches) {
        for (int day = 0; day < kWeekDays; ++day) {
            const int coachDay = static_cast<int>(accepted.coach) * kWeekDays + day;
            std::vector<Candidate> found;
            for (DaySlots starts = startsOfRuns(work[static_cast<std::size_t>(coachDay)], session.slots); starts != 0; starts &= starts - 1) {
                const Place place{static_cast<std::int16_t>(coachDay), static_cast<std::int16_t>(firstOf(starts))};
                const int start = minuteOf(place);
                if (isAvailable(client, day, start % kDayMinutes, start % kDayMinutes + wish.minutes) && isRecovered(client, wish, start)) {
                    const Slot slot{accepted.coach, start};
                    found.push_back({place, slotCost(*problem, wish, slot) + (stay != nullptr ? moveCost(problem->weights, *stay, slot) : 0)});
                }
            }
            packDay(session, coachDay, std::move(found));
        }
    }
    const auto isCheaper = [](const auto& one, const auto& other) { return one.cost < other.cost; };
    std::stable_sort(candidates.begin() + session.candidates.begin, candidates.end(), isCheaper);
    std::stable_sort(days.begin() + session.days.begin, days.end(), [](const auto& one, const auto& other) { return one.least < other.least; });
    session.days.end = sizeOf(days.size());
    session.candidates.end = sizeOf(candidates.size());
}

void PackedWeek::packDay(PackedSession& session, int coachDay, std::vector<Candidate> found)
{
    if (found.empty() || session.slots == 0) {
        return;
    }
    CandidateDay day;
    day.coachDay = static_cast<std::int16_t>(coachDay);
    day.day = static_cast<std::int16_t>(coachDay % kWeekDays);
    day.first = found.front().place.slot;
    day.costs = sizeOf(costs.size());
    day.least = std::numeric_limits<int>::max();
    costs.resize(costs.size() + static_cast<std::size_t>(found.back().place.slot - day.first + 1), 0);
    for (const Candidate& candidate : found) {
        day.starts |= slotRun(candidate.place.slot, 1);
        day.least = std::min(day.least, candidate.cost);
        costs[day.costs + static_cast<std::uint32_t>(candidate.place.slot - day.first)] = candidate.cost;
    }
    days.push_back(day);
    candidates.insert(candidates.end(), found.begin(), found.end());
}

void PackedWeek::packSiblings()
{
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        sessions[i].siblings.begin = sizeOf(siblings.size());
        const SessionWish& wish = problem->sessions[i];
        const Recovery& recovery = problem->clients[wish.client].recovery;
        for (std::size_t j = 0; j < sessions.size(); ++j) {
            if (j == i || sessions[j].client != sessions[i].client) {
                continue;
            }
            Sibling sibling{static_cast<int>(j), 0, false};
            if (sharesPattern(wish.patterns, problem->sessions[j].patterns)) {
                sibling.hasRestDay = recovery.kind == RecoveryKind::RestDay;
                sibling.minutesApart = recovery.kind == RecoveryKind::Hours ? recovery.hours * 60 : 0;
            }
            siblings.push_back(sibling);
        }
        sessions[i].siblings.end = sizeOf(siblings.size());
    }
}

std::optional<Slot> PackedWeek::slotOf(Place place) const
{
    return place.isSomewhere() ? std::optional(Slot{static_cast<std::size_t>(place.coach()), minuteOf(place)}) : std::nullopt;
}

Place PackedWeek::placeOf(const Slot& slot) const
{
    const int coachDay = static_cast<int>(slot.coach) * kWeekDays + slot.start / kDayMinutes;
    return {static_cast<std::int16_t>(coachDay), static_cast<std::int16_t>(slot.start % kDayMinutes / grid)};
}

const CandidateDay* PackedWeek::dayOf(const PackedSession& session, Place place) const
{
    for (std::uint32_t i = session.days.begin; i < session.days.end; ++i) {
        if (days[i].coachDay == place.coachDay) {
            return (days[i].starts & slotRun(place.slot, 1)) != 0 ? &days[i] : nullptr;
        }
    }
    return nullptr;
}

int PackedWeek::idleMinutes(int coachDay, DaySlots busy) const
{
    const int first = firstOf(busy);
    const DaySlots idle = slotRun(first, lastOf(busy) - first + 1) & ~busy;
    const auto at = static_cast<std::size_t>(coachDay);
    int minutes = grid * countOf(idle & work[at]);
    for (DaySlots part = idle & partWork[at]; part != 0; part &= part - 1) {
        minutes += m_minutes[at * static_cast<std::size_t>(slotsADay) + static_cast<std::size_t>(firstOf(part))];
    }
    return minutes;
}

int PackedWeek::dayCost(int coachDay, DaySlots busy) const
{
    constexpr int kQuarter = 15;
    if (busy == 0) {
        return 0;
    }
    const int over = std::max(0, countOf(busy) * grid - m_softMax[static_cast<std::size_t>(coachDay / kWeekDays)]);
    return problem->weights.gapPer15 * idleMinutes(coachDay, busy) / kQuarter + problem->weights.overPer15 * over / kQuarter;
}

void PackedWeek::keepCandidates(PackedSession& session, const std::function<bool(Place)>& isKept)
{
    const auto begin = candidates.begin() + session.candidates.begin;
    const auto end = std::stable_partition(begin, candidates.begin() + session.candidates.end, [&](const auto& one) { return isKept(one.place); });
    session.candidates.end = sizeOf(static_cast<std::size_t>(end - candidates.begin()));
    for (std::uint32_t i = session.days.begin; i < session.days.end; ++i) {
        days[i].starts = 0;
        days[i].least = std::numeric_limits<int>::max();
        for (auto candidate = begin; candidate != end; ++candidate) {
            if (candidate->place.coachDay == days[i].coachDay) {
                days[i].starts |= slotRun(candidate->place.slot, 1);
                days[i].least = std::min(days[i].least, candidate->cost);
            }
        }
    }
    const auto isCheaper = [](const auto& one, const auto& other) { return one.least < other.least; };
    std::stable_sort(days.begin() + session.days.begin, days.begin() + session.days.end, isCheaper);
    while (session.days.end > session.days.begin && days[session.days.end - 1].starts == 0) {
        --session.days.end;
    }
}

}  // namespace chalk::week
