#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `week`: the bookings of a week, what is still missing and why, a proposal for it; as text, JSON, iCalendar, CSV or a message to send.
[[nodiscard]] Command weekCommand();

}  // namespace chalk::app
