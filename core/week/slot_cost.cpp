#include "core/week/slot_cost.h"

#include <algorithm>
#include <cstdlib>

namespace chalk::week {

namespace {

constexpr int kQuarter = 15;

}  // namespace

int moveCost(const Weights& weights, const Slot& standing, const Slot& slot)
{
    int cost = slot.coach != standing.coach ? weights.coachMove : 0;
    if (dayOfMinute(slot.start) != dayOfMinute(standing.start)) {
        cost += weights.dayMove;
    } else if (slot.start != standing.start) {
        cost += std::min(weights.timeMoveCap, weights.timeMoveBase + weights.timeMovePer15 * (std::abs(slot.start - standing.start) / kQuarter));
    }
    return cost;
}

int preferenceCost(const Weights& weights, const ClientWeek& client, int start)
{
    if (client.preferred.empty()) {
        return 0;
    }
    const int minute = start % kDayMinutes;
    int cost = weights.prefCap;
    for (const DaySpan& span : client.preferred) {
        if (span.day == dayOfMinute(start)) {
            const int outside = std::max({0, span.from - minute, minute - span.to});
            cost = std::min(cost, weights.prefPer15 * ((outside + kQuarter - 1) / kQuarter));
        }
    }
    return cost;
}

int slotCost(const WeekProblem& problem, const SessionWish& session, const Slot& slot)
{
    if (session.standing == slot) {
        return 0;
    }
    const ClientWeek& client = problem.clients[session.client];
    const auto accepted = std::find_if(client.coaches.begin(), client.coaches.end(), [&slot](const auto& one) { return one.coach == slot.coach; });
    const int coachCost = accepted == client.coaches.end() ? 0 : accepted->cost;
    return (session.standing ? moveCost(problem.weights, *session.standing, slot) : 0) + coachCost +
           preferenceCost(problem.weights, client, slot.start);
}

bool sharesPattern(const std::vector<std::string>& one, const std::vector<std::string>& other)
{
    return std::any_of(one.begin(), one.end(), [&other](const auto& pattern) { return std::find(other.begin(), other.end(), pattern) != other.end(); });
}

bool recovers(const Recovery& recovery, int start, int otherStart)
{
    switch (recovery.kind) {
        case RecoveryKind::Hours: return std::abs(start - otherStart) >= recovery.hours * 60;
        case RecoveryKind::RestDay: return std::abs(dayOfMinute(start) - dayOfMinute(otherStart)) >= 2;
    }
    return true;
}

}  // namespace chalk::week
