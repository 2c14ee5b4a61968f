#include "core/week/week_checker.h"

#include <algorithm>
#include <bitset>
#include <cstdlib>
#include <map>
#include <utility>

namespace chalk::week {

namespace {

using CheckedMinutes = std::bitset<static_cast<std::size_t>(kWeekDays* kDayMinutes)>;

int checkedDay(int minute)
{
    return minute >= 0 ? minute / kDayMinutes : -((kDayMinutes - 1 - minute) / kDayMinutes);
}

/// What goes on at a minute.
struct MinuteUse {
    std::vector<std::size_t> sessions;
    int share = 0;  ///< of a station, per cent of one unit

    bool operator==(const MinuteUse&) const = default;
};

class PlanInspection {
public:
    PlanInspection(const WeekProblem& problem, const WeekPlan& plan) : m_problem(problem), m_plan(plan)
    {
        m_plan.resize(m_problem.sessions.size());
        markAll(m_open, problem.open, true);
        for (const CoachWeek& coach : problem.coaches) {
            CheckedMinutes& work = m_atWork.emplace_back();
            markAll(work, coach.windows, true);
            markAll(work, coach.breaks, false);
            markAll(work, coach.absences, false);
        }
        m_coachUse.resize(problem.coaches.size());
        m_stationUse.resize(problem.stations.size());
    }

    std::vector<PlanFault> faults()
    {
        for (std::size_t session = 0; session < m_plan.size(); ++session) {
            const SessionWish& wish = m_problem.sessions[session];
            if (m_plan[session]) {
                inspectPlace(session, wish, *m_plan[session]);
                enterUse(session, wish, *m_plan[session]);
            } else if (wish.isLocked) {
                add({PlanRule::LockedLeftOver, {session}, std::nullopt, std::nullopt, std::nullopt, 0, 0, 0, 0});
            }
        }
        for (std::size_t coach = 0; coach < m_coachUse.size(); ++coach) {
            inspectGroups(coach);
        }
        for (std::size_t station = 0; station < m_stationUse.size(); ++station) {
            inspectStation(station);
        }
        inspectClients();
        std::stable_sort(m_faults.begin(), m_faults.end(), [](const PlanFault& a, const PlanFault& b) { return a.rule < b.rule; });
        return std::move(m_faults);
    }

private:
    static void markAll(CheckedMinutes& minutes, const std::vector<DaySpan>& spans, bool isIn)
    {
        for (const DaySpan& span : spans) {
            for (int minute = span.from; minute < span.to; ++minute) {
                minutes.set(static_cast<std::size_t>(span.day * kDayMinutes + minute), isIn);
            }
        }
    }

    void add(PlanFault fault) { m_faults.push_back(std::move(fault)); }

    [[nodiscard]] int upToGrid(int minutes) const { return (minutes + m_problem.grid - 1) / m_problem.grid * m_problem.grid; }
    [[nodiscard]] int downToGrid(int minutes) const { return minutes / m_problem.grid * m_problem.grid; }
    [[nodiscard]] const ClientWeek& clientOf(std::size_t session) const { return m_problem.clients[m_problem.sessions[session].client]; }

    /// The first stretch of a session whose minutes are not all in `minutes`, as a fault. The next day is not part of a session's day.
    void inspectPresence(PlanRule rule, std::size_t session, const Slot& slot, const CheckedMinutes& minutes)
    {
        const int end = slot.start + upToGrid(m_problem.sessions[session].minutes);
        const int day = checkedDay(slot.start);
        const auto isMissing = [&](int minute) {
            return day < 0 || day >= kWeekDays || checkedDay(minute) != day || !minutes.test(static_cast<std::size_t>(minute));
        };
        int from = slot.start;
        while (from < end && !isMissing(from)) {
            ++from;
        }
        int to = from;
        while (to < end && isMissing(to)) {
            ++to;
        }
        if (from < end) {
            add({rule, {session}, slot.coach, std::nullopt, std::nullopt, from, to, 0, 0});
        }
    }

    void inspectPlace(std::size_t session, const SessionWish& wish, const Slot& slot)
    {
        const ClientWeek& client = clientOf(session);
        const int day = checkedDay(slot.start);
        const int minute = slot.start - day * kDayMinutes;
        const auto addPlain = [&](PlanRule rule) {
            add({rule, {session}, slot.coach, std::nullopt, std::nullopt, slot.start, slot.start + wish.minutes, 0, 0});
        };
        if (minute % m_problem.grid != 0) {
            addPlain(PlanRule::OffGrid);
        }
        const bool isCoach = slot.coach < m_problem.coaches.size();
        if (!isCoach || std::none_of(client.coaches.begin(), client.coaches.end(), [&](const auto& one) { return one.coach == slot.coach; })) {
            addPlain(PlanRule::CoachNotAccepted);
        }
        inspectPresence(PlanRule::StudioClosed, session, slot, m_open);
        if (isCoach) {
            inspectPresence(PlanRule::CoachAway, session, slot, m_atWork[slot.coach]);
        }
        if (std::none_of(client.available.begin(), client.available.end(), [&](const DaySpan& span) {
                return span.day == day && span.from <= minute && minute + wish.minutes <= span.to;
            })) {
            addPlain(PlanRule::ClientAway);
        }
        if (wish.isLocked && wish.standing != slot) {
            addPlain(PlanRule::LockedMoved);
        }
    }

    void enterUse(std::size_t session, const SessionWish& wish, const Slot& slot)
    {
        if (slot.coach < m_coachUse.size()) {
            for (int minute = slot.start; minute < slot.start + upToGrid(wish.minutes); ++minute) {
                m_coachUse[slot.coach][minute].sessions.push_back(session);
            }
        }
        for (const StationNeed& need : wish.needs) {
            for (int minute = slot.start + downToGrid(need.from); minute < slot.start + upToGrid(need.to); ++minute) {
                MinuteUse& use = m_stationUse[need.station][minute];
                if (use.sessions.empty() || use.sessions.back() != session) {
                    use.sessions.push_back(session);
                }
                use.share += need.share;
            }
        }
    }

    /// One fault for each stretch of minutes with the same use, where `thereOf` is below `neededOf`.
    template <class Needed, class There>
    void inspectUse(const std::map<int, MinuteUse>& uses, PlanFault fault, const Needed& neededOf, const There& thereOf)
    {
        const MinuteUse* last = nullptr;
        for (const auto& [minute, use] : uses) {
            const int needed = neededOf(use);
            const int there = thereOf(minute, use);
            if (needed <= there) {
                last = nullptr;
                continue;
            }
            if (last != nullptr && *last == use && m_faults.back().to == minute && m_faults.back().there == there) {
                ++m_faults.back().to;
            } else {
                fault.sessions = use.sessions;
                fault.from = minute;
                fault.to = minute + 1;
                fault.needed = needed;
                fault.there = there;
                add(fault);
            }
            last = &use;
        }
    }

    void inspectGroups(std::size_t coach)
    {
        const auto sessionsAtOnce = [](const MinuteUse& use) { return static_cast<int>(use.sessions.size()); };
        const auto smallestGroup = [this](int, const MinuteUse& use) {
            int most = clientOf(use.sessions.front()).maxGroup;
            for (const std::size_t session : use.sessions) {
                most = std::min(most, clientOf(session).maxGroup);
            }
            return most;
        };
        const auto capacity = [&](int, const MinuteUse&) { return m_problem.coaches[coach].capacity; };
        inspectUse(m_coachUse[coach], {PlanRule::Capacity, {}, coach, std::nullopt, std::nullopt, 0, 0, 0, 0}, sessionsAtOnce, capacity);
        inspectUse(m_coachUse[coach], {PlanRule::GroupSize, {}, coach, std::nullopt, std::nullopt, 0, 0, 0, 0}, sessionsAtOnce, smallestGroup);
    }

    void inspectStation(std::size_t index)
    {
        const Station& station = m_problem.stations[index];
        const auto percentThere = [&](int minute, const MinuteUse&) {
            const int day = checkedDay(minute);
            const int cell = downToGrid(minute - day * kDayMinutes);
            int units = station.units;
            for (const StationClosure& closure : station.closures) {
                if (closure.span.day == day && closure.span.from < cell + m_problem.grid && closure.span.to > cell) {
                    units = std::min(units, closure.units);
                }
            }
            return units * 100;
        };
        inspectUse(m_stationUse[index], {PlanRule::StationUnits, {}, std::nullopt, index, std::nullopt, 0, 0, 0, 0},
                   [](const MinuteUse& use) { return use.share; }, percentThere);
    }

    static bool shareAPattern(const std::vector<std::string>& a, const std::vector<std::string>& b)
    {
        return std::any_of(a.begin(), a.end(), [&](const std::string& one) { return std::find(b.begin(), b.end(), one) != b.end(); });
    }

    /// RecoveryTime between a session that starts at `start` and one at `other`, where there is too little.
    static void fillRecovery(PlanFault& fault, const Recovery& recovery, int start, int other)
    {
        const bool isByDays = recovery.kind == RecoveryKind::RestDay;
        fault.rule = PlanRule::RecoveryTime;
        fault.needed = isByDays ? 2 : recovery.hours * 60;
        fault.there = isByDays ? std::abs(checkedDay(start) - checkedDay(other)) : std::abs(start - other);
    }

    void inspectClients()
    {
        for (std::size_t later = 0; later < m_plan.size(); ++later) {
            if (!m_plan[later]) {
                continue;
            }
            for (std::size_t earlier = 0; earlier < later; ++earlier) {
                if (m_plan[earlier] && m_problem.sessions[earlier].client == m_problem.sessions[later].client) {
                    inspectPair(earlier, later);
                }
            }
            inspectLastWeek(later);
        }
    }

    void inspectPair(std::size_t first, std::size_t second)
    {
        const int a = m_plan[first]->start;
        const int b = m_plan[second]->start;
        const std::size_t after = a > b ? first : second;
        PlanFault fault{PlanRule::SameDay, {first, second}, std::nullopt, std::nullopt, std::nullopt, std::max(a, b), 0, 0, 0};
        fault.to = fault.from + m_problem.sessions[after].minutes;
        if (checkedDay(a) == checkedDay(b)) {
            add(fault);
        }
        fillRecovery(fault, clientOf(first).recovery, a, b);
        if (fault.there < fault.needed && shareAPattern(m_problem.sessions[first].patterns, m_problem.sessions[second].patterns)) {
            add(fault);
        }
    }

    void inspectLastWeek(std::size_t session)
    {
        const ClientWeek& client = clientOf(session);
        const SessionWish& wish = m_problem.sessions[session];
        const int start = m_plan[session]->start;
        for (std::size_t past = 0; past < client.lastWeek.size(); ++past) {
            PlanFault fault{PlanRule::SameDay, {session}, std::nullopt, std::nullopt, past, start, start + wish.minutes, 0, 0};
            if (checkedDay(client.lastWeek[past].start) == checkedDay(start)) {
                add(fault);
            }
            fillRecovery(fault, client.recovery, start, client.lastWeek[past].start);
            if (fault.there < fault.needed && shareAPattern(wish.patterns, client.lastWeek[past].patterns)) {
                add(fault);
            }
        }
    }

    const WeekProblem& m_problem;
    WeekPlan m_plan;
    CheckedMinutes m_open;
    std::vector<CheckedMinutes> m_atWork;
    std::vector<std::map<int, MinuteUse>> m_coachUse;    ///< by minute since Monday
    std::vector<std::map<int, MinuteUse>> m_stationUse;
    std::vector<PlanFault> m_faults;
};

}  // namespace

int PlanFault::day() const
{
    return checkedDay(from);
}

std::vector<PlanFault> faultsOf(const WeekProblem& problem, const WeekPlan& plan)
{
    return PlanInspection(problem, plan).faults();
}

}  // namespace chalk::week
