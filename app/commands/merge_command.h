#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung merge [KEPT OTHER]`: makes two clients one, or lists those who may be.
[[nodiscard]] Command mergeCommand();

}  // namespace chalk::app
