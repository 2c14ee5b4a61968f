#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung record FILE`: records one client's results, and says what follows next time.
[[nodiscard]] Command recordCommand();

}  // namespace chalk::app
