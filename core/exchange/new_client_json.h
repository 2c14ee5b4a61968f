#pragma once

#include "core/clients/client.h"
#include "core/exchange/json_reading.h"
#include "core/studio/new_client.h"

#include <span>

namespace chalk::exchange {

/// Reads somebody new, strictly. `name` must be there. `born`, `goal`, `coach` (a name; it may be left out where the studio has one coach),
/// `unit` (kg where left out), `started` (today where left out), `sessions_per_week` (2 where left out), `profile`, `intake`, `measures` (a list),
/// `movement_screen` and `cautions` may. Nothing that was measured or consented to lies after `today`, and no day is measured twice.
[[nodiscard]] JsonResult<studio::NewClient> readNewClient(const QJsonValue& value, std::span<const clients::Coach> coaches, base::Date today);

}  // namespace chalk::exchange
