#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// Who is to be looked at this week and why, and one client's page.
[[nodiscard]] Command checkInCommand();

}  // namespace chalk::app
