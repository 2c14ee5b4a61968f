#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung plan`: plans of weeks after the beginner months: whom to talk with, what a direction asks, the plan itself, and what was done
/// of it.
[[nodiscard]] Command planCommand();

}  // namespace chalk::app
