#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung client NAME|ID`: a client's board with the next prescriptions and why; with --paper one of the client's papers. `client add FILE`
/// takes in a new client.
[[nodiscard]] Command clientCommand();

}  // namespace chalk::app
