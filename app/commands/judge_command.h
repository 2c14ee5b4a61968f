#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung judge FILE.csv --checkins FILE.csv`: exposures in; which lifts have stalled out.
[[nodiscard]] Command judgeCommand();

}  // namespace chalk::app
