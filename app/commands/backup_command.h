#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung backup`: a verified copy of the studio, on its shelf or where one says.
[[nodiscard]] Command backupCommand();
/// `chalkrung restore FILE`: puts a backup in the place of the studio, and keeps what was there.
[[nodiscard]] Command restoreCommand();
/// `chalkrung verify`: looks at structure, references and a full replay of the studio.
[[nodiscard]] Command verifyCommand();

}  // namespace chalk::app
