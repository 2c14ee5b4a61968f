#pragma once

#include "app/commands/command.h"
#include "core/store/studio_import.h"

#include <QString>

namespace chalk::app {

/// Tells on standard error how far long work has come, once for every `every` of `what` (`clients`), and stops it where a StopRequest is made.
/// `context` outlives it.
[[nodiscard]] store::Progress toldProgress(const CommandContext& context, const QString& what, int every);

}  // namespace chalk::app
