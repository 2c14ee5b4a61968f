#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung fill FILE`: a week to be planned in; who trains when with whom out.
[[nodiscard]] Command fillCommand();

}  // namespace chalk::app
