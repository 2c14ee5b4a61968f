#include "core/week/plan_cost.h"

#include "core/week/slot_cost.h"

#include <algorithm>
#include <bitset>
#include <map>

namespace chalk::week {

namespace {

constexpr int kQuarterHour = 15;
using Minutes = std::bitset<kDayMinutes>;

void setMinutes(Minutes& minutes, int from, int to, bool value)
{
    for (int minute = std::max(0, from); minute < std::min(to, kDayMinutes); ++minute) {
        minutes.set(static_cast<std::size_t>(minute), value);
    }
}

void setSpans(Minutes& minutes, const std::vector<DaySpan>& spans, int day, bool value)
{
    for (const DaySpan& span : spans) {
        if (span.day == day) {
            setMinutes(minutes, span.from, span.to, value);
        }
    }
}

/// The minutes that a coach's day has sessions in, in whole slots.
std::map<std::pair<std::size_t, int>, Minutes> busyDays(const WeekProblem& problem, const WeekPlan& plan)
{
    std::map<std::pair<std::size_t, int>, Minutes> busy;
    for (std::size_t i = 0; i < plan.size(); ++i) {
        if (plan[i]) {
            const int from = plan[i]->start % kDayMinutes;
            const int end = (from + problem.sessions[i].minutes + problem.grid - 1) / problem.grid * problem.grid;
            setMinutes(busy[{plan[i]->coach, dayOfMinute(plan[i]->start)}], from / problem.grid * problem.grid, end, true);
        }
    }
    return busy;
}

long gapCost(const WeekProblem& problem, const CoachWeek& coach, int day, const Minutes& busy)
{
    Minutes open;
    setSpans(open, problem.open, day, true);
    Minutes working;
    setSpans(working, coach.windows, day, true);
    setSpans(working, coach.breaks, day, false);
    setSpans(working, coach.absences, day, false);
    std::size_t first = 0;
    while (!busy.test(first)) {
        ++first;
    }
    std::size_t last = kDayMinutes - 1;
    while (!busy.test(last)) {
        --last;
    }
    Minutes between;
    setMinutes(between, static_cast<int>(first), static_cast<int>(last), true);
    return static_cast<long>(problem.weights.gapPer15) * static_cast<long>((between & working & open & ~busy).count()) / kQuarterHour;
}

void addSessions(const WeekProblem& problem, const WeekPlan& plan, Objective& objective)
{
    for (std::size_t i = 0; i < plan.size(); ++i) {
        const SessionWish& session = problem.sessions[i];
        if (!plan[i]) {
            objective.unplaced += static_cast<long>(problem.weights.unplaced) * problem.clients[session.client].priority;
            ++objective.leftOver;
        } else if (session.standing) {
            objective.standing += slotCost(problem, session, *plan[i]);
            objective.moved += session.standing != plan[i] ? 1 : 0;
        } else {
            objective.preference += slotCost(problem, session, *plan[i]);
        }
    }
}

void addCoaches(const WeekProblem& problem, const WeekPlan& plan, Objective& objective)
{
    for (const auto& [coachDay, busy] : busyDays(problem, plan)) {
        const CoachWeek& coach = problem.coaches[coachDay.first];
        const int most = coach.softMaxMinutes / problem.grid * problem.grid;
        objective.gaps += gapCost(problem, coach, coachDay.second, busy);
        objective.over += static_cast<long>(problem.weights.overPer15) * std::max(0, static_cast<int>(busy.count()) - most) / kQuarterHour;
    }
}

void addSuccessiveDays(const WeekProblem& problem, const WeekPlan& plan, Objective& objective)
{
    std::vector<std::bitset<kWeekDays>> days(problem.clients.size());
    for (std::size_t i = 0; i < plan.size(); ++i) {
        if (plan[i]) {
            days[problem.sessions[i].client].set(static_cast<std::size_t>(dayOfMinute(plan[i]->start)));
        }
    }
    for (const auto& trained : days) {
        objective.consecutive += static_cast<long>(problem.weights.consecutive) * static_cast<long>((trained & trained << 1U).count());
    }
}

}  // namespace

Objective objectiveOf(const WeekProblem& problem, const WeekPlan& plan)
{
    Objective objective;
    addSessions(problem, plan, objective);
    addCoaches(problem, plan, objective);
    addSuccessiveDays(problem, plan, objective);
    return objective;
}

}  // namespace chalk::week
