#pragma once

#include "core/base/id.h"
#include "core/sessions/session_report.h"
#include "core/store/database.h"

#include <QString>

#include <map>
#include <string>

namespace chalk::store {

// The reports of sessions, to and from their rows. Failures go to the database.

/// An empty report where nothing was said.
[[nodiscard]] sessions::SessionReport readReport(Database& database, base::SessionId session);
/// Of a client's sessions, those of which something was said.
[[nodiscard]] std::map<base::SessionId, sessions::SessionReport> readReports(Database& database, base::ClientId client);
/// Puts a report in the place of the former one; an empty one takes the row away. Belongs into a transaction.
void putReport(Database& database, base::SessionId session, const sessions::SessionReport& report);

/// Whether the client of a session consented to keep health data, as on its day; false where there is no such session.
[[nodiscard]] bool isHealthKept(Database& database, base::SessionId session);

/// Compact JSON in the words of the open format.
[[nodiscard]] QString textOfReport(const sessions::SessionReport& report);
/// The report again; what cannot be read is a failure of the database.
[[nodiscard]] sessions::SessionReport reportOf(Database& database, const QString& text);

}  // namespace chalk::store
