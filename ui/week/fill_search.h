#pragma once

#include "core/week/week_problem.h"

#include <functional>

namespace chalk::ui::week {

/// Takes the best plan so far; false asks the search to end.
using PlanReport = std::function<bool(const chalk::week::WeekPlan&)>;
/// Fills a week from what is booked. Called beside the window's thread; reports its plan again and again, so that it can be stopped. What it
/// reported last is its result.
using FillSearch = std::function<void(const chalk::week::WeekProblem&, const chalk::week::WeekPlan& booked, const PlanReport&)>;

/// Looks for the cheapest plan in slices, until one is proved the best or nothing cheaper was found for a while. No booking moves: somebody agreed
/// to it.
void searchForFill(const chalk::week::WeekProblem& problem, const chalk::week::WeekPlan& booked, const PlanReport& report);

/// Mends a week after a change: only what must move moves, and nothing that begins before `fromMinute` of the week. One plan is reported.
[[nodiscard]] FillSearch searchForChange(int fromMinute);

}  // namespace chalk::ui::week
