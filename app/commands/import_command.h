#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung import FILE…`: takes people and their past sessions in from lists and vCards.
[[nodiscard]] Command importCommand();

}  // namespace chalk::app
