#pragma once

namespace chalk::ui::week {

/// Makes every WeekGrid a list of its blocks for screen readers; once is enough, more does no harm.
void installWeekGridAccessibility();

}  // namespace chalk::ui::week
