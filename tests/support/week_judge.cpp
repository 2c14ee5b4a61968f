#include "tests/support/week_judge.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <set>

namespace chalk::test {

namespace {

using week::DaySpan;
using week::Slot;
using week::WeekPlan;
using week::WeekProblem;

constexpr int kDay = 1440;

/// Floor division, for minutes before Monday too.
int dayAt(int minute)
{
    return minute >= 0 ? minute / kDay : -((-minute + kDay - 1) / kDay);
}

bool covers(const std::vector<DaySpan>& spans, int day, int minute)
{
    return std::any_of(spans.begin(), spans.end(), [&](const DaySpan& span) { return span.day == day && span.from <= minute && minute < span.to; });
}

bool haveCommon(const std::vector<std::string>& one, const std::vector<std::string>& other)
{
    const std::set<std::string> names(one.begin(), one.end());
    return std::any_of(other.begin(), other.end(), [&names](const auto& name) { return names.count(name) > 0; });
}

/// Goes through a plan and notes what it finds.
class Judge {
public:
    Judge(const WeekProblem& problem, const WeekPlan& plan) : m_problem(problem), m_plan(plan) {}

    WeekJudgement judge()
    {
        for (std::size_t i = 0; i < m_plan.size(); ++i) {
            if (m_plan[i]) {
                judgeSession(i, *m_plan[i]);
            } else {
                const auto& client = m_problem.clients[m_problem.sessions[i].client];
                m_found.objective.unplaced += static_cast<long>(m_problem.weights.unplaced) * client.priority;
                m_found.objective.leftOver += 1;
                note(!m_problem.sessions[i].isLocked, "locked and left over");
            }
        }
        judgeCoaches();
        judgeStations();
        judgeClients();
        return m_found;
    }

private:
    void note(bool isRight, const char* fault)
    {
        if (!isRight) {
            m_found.faults.emplace_back(fault);
        }
    }

    [[nodiscard]] int roundedUp(int minutes) const { return (minutes + m_problem.grid - 1) / m_problem.grid * m_problem.grid; }

    [[nodiscard]] bool isWork(std::size_t coach, int day, int minute) const
    {
        const auto& hours = m_problem.coaches[coach];
        return covers(m_problem.open, day, minute) && covers(hours.windows, day, minute) && !covers(hours.breaks, day, minute) &&
               !covers(hours.absences, day, minute);
    }

    void judgeSession(std::size_t index, const Slot& slot)
    {
        const auto& session = m_problem.sessions[index];
        const auto& client = m_problem.clients[session.client];
        const int day = slot.start / kDay;
        const int from = slot.start % kDay;
        note(from % m_problem.grid == 0, "off the grid");
        note(std::any_of(client.coaches.begin(), client.coaches.end(), [&](const auto& one) { return one.coach == slot.coach; }), "coach not accepted");
        note(std::any_of(client.available.begin(), client.available.end(),
                         [&](const auto& span) { return span.day == day && span.from <= from && from + session.minutes <= span.to; }),
             "client away");
        note(!session.isLocked || session.standing == slot, "locked and moved");
        bool isAtWork = true;
        for (int minute = from; minute < from + roundedUp(session.minutes); ++minute) {
            isAtWork = isAtWork && isWork(slot.coach, day, minute);
            m_together[{slot.coach, day}][minute].push_back(client.maxGroup);
        }
        note(isAtWork, "coach away");
        for (const auto& need : session.needs) {
            for (int minute = need.from / m_problem.grid * m_problem.grid; minute < roundedUp(need.to); ++minute) {
                m_used[{need.station, slot.start + minute}] += need.share;
            }
        }
        weighSession(index, slot);
    }

    void weighSession(std::size_t index, const Slot& slot)
    {
        const auto& session = m_problem.sessions[index];
        const auto& weights = m_problem.weights;
        if (session.standing == slot) {
            return;
        }
        int cost = 0;
        if (session.standing) {
            const int off = std::abs(slot.start - session.standing->start);
            const bool isOtherDay = slot.start / kDay != session.standing->start / kDay;
            const int timeCost = off == 0 ? 0 : std::min(weights.timeMoveCap, weights.timeMoveBase + weights.timeMovePer15 * (off / 15));
            cost += isOtherDay ? weights.dayMove : timeCost;
            cost += slot.coach != session.standing->coach ? weights.coachMove : 0;
            m_found.objective.moved += 1;
        }
        const auto& client = m_problem.clients[session.client];
        for (const auto& accepted : client.coaches) {
            cost += accepted.coach == slot.coach ? accepted.cost : 0;
        }
        int nearest = client.preferred.empty() ? 0 : weights.prefCap;
        for (const auto& span : client.preferred) {
            if (span.day == slot.start / kDay) {
                const int away = std::max({0, span.from - slot.start % kDay, slot.start % kDay - span.to});
                nearest = std::min(nearest, weights.prefPer15 * ((away + 14) / 15));
            }
        }
        (session.standing ? m_found.objective.standing : m_found.objective.preference) += cost + nearest;
    }

    void judgeCoaches()
    {
        for (const auto& [coachDay, minutes] : m_together) {
            const auto& coach = m_problem.coaches[coachDay.first];
            bool hasRoom = true;
            for (const auto& [minute, groups] : minutes) {
                const int together = static_cast<int>(groups.size());
                hasRoom = hasRoom && together <= coach.capacity && together <= *std::min_element(groups.begin(), groups.end());
            }
            note(hasRoom, "too many at once");
            int idle = 0;
            for (int minute = minutes.begin()->first; minute < minutes.rbegin()->first; ++minute) {
                idle += minutes.count(minute) == 0 && isWork(coachDay.first, coachDay.second, minute) ? 1 : 0;
            }
            const int busy = static_cast<int>(minutes.size());
            const int most = coach.softMaxMinutes / m_problem.grid * m_problem.grid;
            m_found.objective.gaps += m_problem.weights.gapPer15 * idle / 15;
            m_found.objective.over += m_problem.weights.overPer15 * std::max(0, busy - most) / 15;
        }
    }

    void judgeStations()
    {
        for (const auto& [place, share] : m_used) {
            const auto& station = m_problem.stations[place.first];
            const int slot = place.second % kDay / m_problem.grid * m_problem.grid;
            int units = station.units;
            for (const auto& closure : station.closures) {
                const bool overlaps = closure.span.day == place.second / kDay && closure.span.from < slot + m_problem.grid && closure.span.to > slot;
                units = overlaps ? std::min(units, closure.units) : units;
            }
            if (share > units * 100) {
                note(false, "station too full");
                return;
            }
        }
    }

    [[nodiscard]] bool isTooSoon(const week::Recovery& recovery, int start, int other) const
    {
        return recovery.kind == week::RecoveryKind::RestDay ? std::abs(dayAt(start) - dayAt(other)) < 2 : std::abs(start - other) < recovery.hours * 60;
    }

    void judgeClients()
    {
        for (std::size_t c = 0; c < m_problem.clients.size(); ++c) {
            std::set<int> days;
            for (std::size_t i = 0; i < m_plan.size(); ++i) {
                if (m_problem.sessions[i].client == c && m_plan[i]) {
                    judgeRecovery(i, m_plan[i]->start);
                    days.insert(m_plan[i]->start / kDay);
                }
            }
            for (const int day : days) {
                m_found.objective.consecutive += days.count(day + 1) > 0 ? m_problem.weights.consecutive : 0;
            }
        }
    }

    /// Against the sessions of its client before it in the list, and last week's.
    void judgeRecovery(std::size_t index, int start)
    {
        const auto& session = m_problem.sessions[index];
        const auto& client = m_problem.clients[session.client];
        for (std::size_t i = 0; i < index; ++i) {
            if (m_problem.sessions[i].client == session.client && m_plan[i]) {
                const bool isNear = haveCommon(session.patterns, m_problem.sessions[i].patterns) && isTooSoon(client.recovery, start, m_plan[i]->start);
                note(!isNear && dayAt(start) != dayAt(m_plan[i]->start), "no recovery");
            }
        }
        for (const auto& past : client.lastWeek) {
            note(!haveCommon(session.patterns, past.patterns) || !isTooSoon(client.recovery, start, past.start), "no recovery from last week");
        }
    }

    const WeekProblem& m_problem;
    const WeekPlan& m_plan;
    WeekJudgement m_found;
    std::map<std::pair<std::size_t, int>, std::map<int, std::vector<int>>> m_together;  ///< by coach and day, and minute: the maxGroup of each
    std::map<std::pair<std::size_t, int>, int> m_used;                                  ///< by station and minute of the week
};

}  // namespace

WeekJudgement judged(const WeekProblem& problem, const WeekPlan& plan)
{
    return Judge(problem, plan).judge();
}

}  // namespace chalk::test
