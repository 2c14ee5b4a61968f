#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung trace FILE`: runs one lift's history through the rules and prints what they decided.
[[nodiscard]] Command traceCommand();

}  // namespace chalk::app
