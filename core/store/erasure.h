#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/store/database.h"

#include <string>

namespace chalk::store {

/// What there is of a client, before it goes.
struct ErasurePreview {
    std::string name;
    int lifts = 0;
    int entries = 0;       ///< rows of the log, corrections too
    int forms = 0;
    int letters = 0;
    int decisions = 0;     ///< with plans and tests of maxima
    int keptSessions = 0;  ///< stay for the accounts, without the name
    int openSessions = 0;  ///< bookings to come: they go
};

/// What became of the bytes that the client's rows were in.
enum class Wiped : std::uint8_t {
    Done,   ///< the file was written anew, without them
    Later   ///< somebody else holds the studio, or its server keeps its own house: they go with the next clean-up
};

struct Erased {
    int number = 0;  ///< `erased client 3`
    Wiped wiped = Wiped::Done;
};

[[nodiscard]] Result<ErasurePreview> previewErasure(Database& database, base::ClientId client, base::Date today);

/// Takes a client out of the studio: name, answers, letters, lifts, logs, decisions, plans, reports, acts and audit. What is kept are the
/// day, time, minutes, coach, kind and state of sessions that lie in the past or were called off, as those of an erased client with a
/// number. `typedName` must be the client's name, as a check. Records of the same person that were merged into
/// theirs go with them. Cannot be undone. Earlier backups still hold the person.
[[nodiscard]] Result<Erased> eraseClient(Database& database, base::ClientId client, const std::string& typedName, base::Date today);

}  // namespace chalk::store
