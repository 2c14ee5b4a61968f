#include "core/week/fixed_sessions.h"

#include "core/week/slot_cost.h"
#include "core/week/week_checker.h"
#include "core/week/week_state.h"

#include <algorithm>
#include <set>

namespace chalk::week {

namespace {

/// A fixed session that lasts past midnight, of which a day of a WeekState shows only the evening.
struct LateSession {
    std::size_t session = 0;
    std::size_t coach = 0;
    int from = 0;  ///< the midnight
    int to = 0;    ///< its end, on the grid
};

std::vector<LateSession> lateSessions(const WeekProblem& problem, const WeekPlan& fixed)
{
    std::vector<LateSession> late;
    for (std::size_t i = 0; i < fixed.size(); ++i) {
        if (fixed[i]) {
            const int midnight = (dayOfMinute(fixed[i]->start) + 1) * kDayMinutes;
            const int end = fixed[i]->start + (problem.sessions[i].minutes + problem.grid - 1) / problem.grid * problem.grid;
            if (end > midnight) {
                late.push_back({i, fixed[i]->coach, midnight, end});
            }
        }
    }
    return late;
}

/// Whether somebody at a slot would meet a late session, whatever room the coach or the station has: so rare that no place is counted.
bool isInTheWay(const LateSession& late, const WeekProblem& problem, const SessionWish& wish, const Slot& slot)
{
    const auto needs = [](const std::vector<StationNeed>& all, std::size_t station) {
        return std::any_of(all.begin(), all.end(), [station](const StationNeed& need) { return need.station == station; });
    };
    const std::vector<StationNeed>& taken = problem.sessions[late.session].needs;
    return late.from < slot.start + wish.minutes && slot.start < late.to &&
           (late.coach == slot.coach || std::any_of(taken.begin(), taken.end(), [&](const StationNeed& need) { return needs(wish.needs, need.station); }));
}

}  // namespace

WeekPlan fixedPlanOf(const WeekProblem& problem, const FillOptions& options)
{
    WeekPlan plan(problem.sessions.size());
    for (std::size_t i = 0; i < plan.size(); ++i) {
        if (problem.sessions[i].isLocked) {
            plan[i] = problem.sessions[i].standing;
        } else if (options.present != nullptr && i < options.fixed.size() && options.fixed[i]) {
            plan[i] = (*options.present)[i];
        }
    }
    return plan;
}

PackedWeek weekAroundFixed(const WeekProblem& problem, const FillOptions& options)
{
    PackedWeek week(problem, options);
    const WeekState state(week);
    const std::vector<LateSession> late = lateSessions(problem, fixedPlanOf(problem, options));
    for (std::size_t i = 0; i < week.sessions.size(); ++i) {
        if (!week.sessions[i].isFixed) {
            week.keepCandidates(week.sessions[i], [&](Place place) {
                const auto isHere = [&](const LateSession& one) { return isInTheWay(one, problem, problem.sessions[i], *week.slotOf(place)); };
                return state.fits(static_cast<int>(i), place) && std::none_of(late.begin(), late.end(), isHere);
            });
        }
    }
    return week;
}

std::vector<std::size_t> lockedAgainstRules(const WeekProblem& problem)
{
    const WeekPlan locked = fixedPlanOf(problem, {});
    std::set<std::size_t> sessions;
    for (const PlanFault& fault : faultsOf(problem, locked)) {
        if (fault.rule != PlanRule::LockedLeftOver) {
            sessions.insert(fault.sessions.begin(), fault.sessions.end());
        }
    }
    return {sessions.begin(), sessions.end()};
}

}  // namespace chalk::week
