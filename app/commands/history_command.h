#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung history`: who changed what and when.
[[nodiscard]] Command historyCommand();

}  // namespace chalk::app
