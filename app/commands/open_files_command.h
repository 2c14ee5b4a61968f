#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung export`: the studio, or one client, as open files.
[[nodiscard]] Command exportCommand();
/// `chalkrung open-files`: a new studio from such files.
[[nodiscard]] Command openFilesCommand();

}  // namespace chalk::app
