#pragma once

#include "core/week/week_case.h"

#include <QString>

#include <vector>

namespace chalk::ui::common {

/// What a closure says of one of its days: `Closed from 12:00: Harbour lights`, `Tobias away 16:00 – 20:00`,
/// `Of the racks there are 1, all day`.
[[nodiscard]] QString closureText(const chalk::week::Closure& closure, const std::vector<chalk::week::CoachOfWeek>& coaches);

}  // namespace chalk::ui::common
