#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// Runs `plan` without a client: who is due for the talk about a direction, whose plan runs and in which week it is, and whose last plan is
/// over.
int showPlanOverview(const CommandContext& context, store::Database& database);

}  // namespace chalk::app
