#pragma once

#include "core/clients/client.h"
#include "core/sessions/session.h"
#include "core/store/statement.h"

#include <vector>

namespace chalk::store {

// Rows of the tables about clients and sessions, read into values. Column lists and readers stand together.

/// `c.id, c.name, …` of `client c`; read by clientOf.
[[nodiscard]] const QString& clientColumns();
inline constexpr int kClientColumns = 10;
[[nodiscard]] clients::Client clientOf(const Statement& row, int first = 0);

/// `s.id, …` of `session s`; read by sessionOf.
[[nodiscard]] const QString& sessionColumns();
inline constexpr int kSessionColumns = 11;
[[nodiscard]] sessions::Session sessionOf(const Statement& row, int first = 0);

/// What came of a client's health intake; not needed where nothing is on file.
[[nodiscard]] clients::Clearance readClearance(Database& database, base::ClientId client);
/// The cautions in force on `day`.
[[nodiscard]] std::vector<clients::Caution> readCautions(Database& database, base::ClientId client, base::Date day);

/// The client's next session, planned or printed, on `day` or later; and how many clients its slot holds.
struct NextSession {
    std::optional<sessions::Session> session;
    int taken = 0;
};
[[nodiscard]] NextSession readNextSession(Database& database, base::ClientId client, base::Date day);

}  // namespace chalk::store
