#pragma once

#include "core/checkin/client_facts.h"
#include "core/store/client_reader.h"
#include "core/store/roster_reader.h"
#include "core/store/session_reader.h"

#include <span>

namespace chalk::store {

/// What the list of everybody says about one client, as facts.
[[nodiscard]] checkin::ClientFacts factsOf(const RosterEntry& entry);

/// The same of one client's file and all sessions of theirs, on `day`.
[[nodiscard]] checkin::ClientFacts factsOf(const ClientFile& file, std::span<const NamedSession> sessions, base::Date day);

/// Whether the gap since the last work is so long that the rules of layoffs may have changed the stage or the flags by `day`.
[[nodiscard]] bool mayHaveLayoff(const checkin::LiftFacts& lift, base::Date day);

/// Stage and flags as they are with the layoffs up to the day of `next`.
void applyLayoff(checkin::LiftFacts& facts, const progression::Prescription& next);

}  // namespace chalk::store
