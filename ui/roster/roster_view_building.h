#pragma once

#include "core/lifts/catalogue.h"
#include "ui/roster/lift_lookup.h"
#include "ui/roster/roster_row.h"

#include <span>

namespace chalk::ui::roster {

/// One client as the store knows them, and the facts of the day.
struct KnownClient {
    store::RosterEntry entry;
    checkin::ClientFacts facts;
};

/// A client's line.
[[nodiscard]] RosterRow rowOf(const KnownClient& known, base::Date today, const lifts::Catalogue& catalogue);

/// The whole roster but for the number of today's sessions.
[[nodiscard]] RosterView viewOf(std::span<const KnownClient> clients, base::Date today, const lifts::Catalogue& catalogue);

}  // namespace chalk::ui::roster
