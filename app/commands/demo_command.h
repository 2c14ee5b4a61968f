#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung demo`: makes the demo studio, or a large simulated one.
[[nodiscard]] Command demoCommand();

}  // namespace chalk::app
