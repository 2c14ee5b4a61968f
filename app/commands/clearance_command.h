#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `clearance`: the answers of a health intake in, outcome, reason and source out.
[[nodiscard]] Command clearanceCommand();

}  // namespace chalk::app
