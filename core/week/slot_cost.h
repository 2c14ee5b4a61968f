#pragma once

#include "core/week/week_problem.h"

namespace chalk::week {

/// What leaving a standing slot for another costs: the day or the time, and the coach. 0 on the slot itself.
[[nodiscard]] int moveCost(const Weights& weights, const Slot& standing, const Slot& slot);

/// What a start outside of the client's preferred ones costs; 0 for a client without any.
[[nodiscard]] int preferenceCost(const Weights& weights, const ClientWeek& client, int start);

/// What a session costs on a slot by itself: off its standing slot, the client's cost of the coach and preferences. The coach is one that
/// the client accepts; another costs as if that were free.
[[nodiscard]] int slotCost(const WeekProblem& problem, const SessionWish& session, const Slot& slot);

/// Whether two sessions have a pattern in common.
[[nodiscard]] bool sharesPattern(const std::vector<std::string>& one, const std::vector<std::string>& other);

/// Whether a client recovers between two starts (minutes since Monday, either first) of sessions that share a pattern.
[[nodiscard]] bool recovers(const Recovery& recovery, int start, int otherStart);

/// The day of a minute since Monday: negative before it.
[[nodiscard]] constexpr int dayOfMinute(int minute)
{
    return minute >= 0 ? minute / kDayMinutes : (minute + 1) / kDayMinutes - 1;
}

}  // namespace chalk::week
