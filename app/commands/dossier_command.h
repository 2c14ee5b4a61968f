#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung dossier CLIENT`: all that is kept of one client.
[[nodiscard]] Command dossierCommand();

}  // namespace chalk::app
