#pragma once

#include "ui/floor/floor_case.h"

#include <functional>

class QMenu;

namespace chalk::ui::floor {

/// Fills a menu with what can become of the sessions of a slot, for each client by a letter: missed, called off in time or late, planned again,
/// the booking taken away. `set` is called with what was chosen.
void fillSessionMenu(QMenu& menu, const RunSlot& slot, base::Date today, int minuteOfDay,
                     const std::function<void(const sessions::Session&, sessions::SessionState)>& set);

}  // namespace chalk::ui::floor
