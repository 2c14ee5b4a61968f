#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung norms FILE`: a result of a field test in; its class, range and source out.
[[nodiscard]] Command normsCommand();

}  // namespace chalk::app
