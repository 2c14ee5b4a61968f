#pragma once

#include "core/checkin/client_facts.h"
#include "core/store/lift_cache.h"
#include "core/store/roster_facts.h"

namespace chalk::ui::roster {

/// Looks up more about the few lifts that need it. What cannot be read is left out: the roster is there all the same, and the
/// client's page says what is wrong.
class LiftLookup {
public:
    explicit LiftLookup(store::Database& database);

    /// Adds why lifts are on hold and the load of stalled ones, and applies layoffs up to `today` to stages and flags. `facts` are
    /// those of `entry`.
    void complete(checkin::ClientFacts& facts, const store::RosterEntry& entry, base::Date today);

private:
    [[nodiscard]] std::optional<checkin::HoldFacts> holdOf(const store::CachedLift& lift);

    store::Database& m_database;
    store::EventLog m_log;
    store::LiftCache m_cache;
};

}  // namespace chalk::ui::roster
