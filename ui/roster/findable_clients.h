#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/roster_reader.h"
#include "core/store/session_reader.h"
#include "ui/shell/client_finder.h"

#include <span>

namespace chalk::ui::roster {

/// What the find box finds of everybody: their lifts by name, and the session of `today` among the day's `sessions`; a session that
/// was called off does not count.
[[nodiscard]] std::vector<shell::FindableClient> findableClientsOf(std::span<const store::RosterEntry> entries,
                                                                   std::span<const store::NamedSession> sessions,
                                                                   const lifts::Catalogue& catalogue, base::Date today);

}  // namespace chalk::ui::roster
