#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung rotate FILE`: a group that shares one slot in; who lifts what, where and when out.
[[nodiscard]] Command rotateCommand();

}  // namespace chalk::app
