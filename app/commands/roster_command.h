#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung roster`: everybody, with where their lifts stand.
[[nodiscard]] Command rosterCommand();

}  // namespace chalk::app
