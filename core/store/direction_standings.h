#pragma once

#include "core/base/id.h"
#include "core/checkin/direction_standing.h"
#include "core/store/database.h"

#include <map>

namespace chalk::store {

// What was agreed on about the direction up to a day, of plans and decisions that were not taken back. Failures go to the database.

/// Of each client who has a plan or a decision about it.
[[nodiscard]] std::map<base::ClientId, checkin::DirectionStanding> directionStandings(Database& database, base::Date day);
/// Of one client.
[[nodiscard]] checkin::DirectionStanding directionStanding(Database& database, base::ClientId client, base::Date day);

}  // namespace chalk::store
