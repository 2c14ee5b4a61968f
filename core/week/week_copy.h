#pragma once

#include "core/week/week_case.h"

namespace chalk::week {

/// The week with last week's times: what is booked stays, and each session that is missing is proposed where the client trained in the week before,
/// on a weekday that has none yet. A time at which the plan would break a rule is left out: its session stays without one.
[[nodiscard]] WeekPlan copyOfLastWeek(const WeekFacts& facts, const WeekCase& week);

}  // namespace chalk::week
