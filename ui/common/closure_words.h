#pragma once

#include "core/week/week_case.h"

#include <QString>

#include <array>
#include <vector>

namespace chalk::ui::common {

/// What a closure says of one of its days: `Closed from 12:00: Harbour lights`, `Tobias away 16:00 – 20:00`,
/// `Of the racks there are 1, all day`.
[[nodiscard]] QString closureText(const chalk::week::Closure& closure, const std::vector<chalk::week::CoachOfWeek>& coaches);

/// What the closures say of each day of a week, several of one day behind each other.
[[nodiscard]] std::array<QString, chalk::week::kWeekDays> closureNotes(const chalk::week::WeekFacts& facts);

}  // namespace chalk::ui::common
