#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/lifts/pattern.h"
#include "core/progression/lift_state.h"
#include "core/store/database.h"

#include <cstdint>
#include <vector>

namespace chalk::store {

/// From an entry on a lift is done with another kit.
struct KitChange {
    base::Date day;
    std::int64_t root = 0;  ///< the entry's place in the day
    progression::Kit kit;
};

/// A lift as it was set up, and what it was done with since.
struct TrendLift {
    base::LiftId id;
    base::ClientId client;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    progression::LiftSetup setup;
    std::vector<KitChange> changes;  ///< by day and place

    /// The kit that an entry was done with.
    [[nodiscard]] const progression::Kit& kitAt(base::Date day, std::int64_t root) const;
};

/// All lifts by client, pattern and id; of one client where there is one. Failures go to the database.
[[nodiscard]] std::vector<TrendLift> readTrendLifts(Database& database, base::ClientId client = {});

}  // namespace chalk::store
