#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// Runs `client add FILE`: takes in a new client with all that the file says, or nothing. The operands are `add` and the file; any other
/// first word is refused.
int addClient(const CommandContext& context);

/// What the file looks like, for the help.
[[nodiscard]] QString clientAddingDetails();

}  // namespace chalk::app
