#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung client NAME|ID`: a client's board with the next prescriptions and why.
[[nodiscard]] Command clientCommand();

}  // namespace chalk::app
