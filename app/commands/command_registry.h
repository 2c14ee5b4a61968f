#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// All commands, in the order in which --help lists them.
[[nodiscard]] const std::vector<Command>& allCommands();

}  // namespace chalk::app
