#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung erase CLIENT`: takes a client out of the studio for good.
[[nodiscard]] Command eraseCommand();

}  // namespace chalk::app
