#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `trends`: how a client or everybody went over some weeks, as text, CSV or JSON.
[[nodiscard]] Command trendsCommand();

}  // namespace chalk::app
