#pragma once

#include "app/commands/command.h"
#include "core/base/id.h"

#include <optional>

namespace chalk::app {

/// The client that a text means: an id, a whole name, or a part of one name only; upper and lower case are the same. Writes one line
/// to `context.err` and answers nothing where there is none or more than one: the caller ends with kWrongUse.
[[nodiscard]] std::optional<base::ClientId> chooseClient(const CommandContext& context, store::Database& database, const QString& wanted);

}  // namespace chalk::app
