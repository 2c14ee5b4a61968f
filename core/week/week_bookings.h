#pragma once

#include "core/week/booking.h"
#include "core/week/week_case.h"

#include <vector>

namespace chalk::week {

/// The sessions of a week as they leave the program, by date, start, coach, client and code: those on file, and those that a plan proposes. A
/// booking that the plan moves is where it goes, as proposed. Sessions that are not booked yet have the code of their wish, `C12-2`.
[[nodiscard]] std::vector<Booking> bookingsOf(const WeekFacts& facts, const WeekCase& week, const WeekPlan& plan);

}  // namespace chalk::week
