#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `server`: makes a studio's place on a server, and says who may sign in there.
[[nodiscard]] Command serverCommand();

/// `move`: takes a studio from a file to a server, or back.
[[nodiscard]] Command moveCommand();

}  // namespace chalk::app
