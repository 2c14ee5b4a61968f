#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung cards`: a day's session cards as PDF.
[[nodiscard]] Command cardsCommand();

}  // namespace chalk::app
