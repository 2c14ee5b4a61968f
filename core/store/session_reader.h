#pragma once

#include "core/sessions/session_report.h"
#include "core/store/event_log.h"
#include "core/store/profile_rows.h"

#include <map>

namespace chalk::store {

/// A session with the names that it is shown with.
struct NamedSession {
    sessions::Session session;
    std::string clientName;
    std::string coachName;
};

/// Reads sessions.
class SessionReader {
public:
    explicit SessionReader(Database& database) : m_database(database) {}

    /// A day's sessions, by time, coach and client.
    [[nodiscard]] Result<std::vector<NamedSession>> on(base::Date day);
    /// A client's sessions, the latest first.
    [[nodiscard]] Result<std::vector<NamedSession>> of(base::ClientId client);
    /// How many sessions take place, or took place, on each of so many days from `first` on.
    [[nodiscard]] Result<std::vector<int>> countsFrom(base::Date first, int days);
    /// The session with that code; nothing where there is none.
    [[nodiscard]] Result<std::optional<NamedSession>> withCode(const std::string& code);

    /// The lifts that a session is planned with, in their order; none where nobody planned them.
    [[nodiscard]] Result<std::vector<sessions::SessionLift>> lifts(base::SessionId session);
    /// Those of them that are done, in their order.
    [[nodiscard]] Result<std::vector<base::LiftId>> plannedLifts(base::SessionId session);
    /// What was said once of a session; an empty report where nothing was.
    [[nodiscard]] Result<sessions::SessionReport> report(base::SessionId session);
    /// Of a client's sessions, those of which something was said.
    [[nodiscard]] Result<std::map<base::SessionId, sessions::SessionReport>> reportsOf(base::ClientId client);
    /// Whether the client of a session consented to keep health data, as on its day: only then are sleep, soreness and stress asked.
    [[nodiscard]] Result<bool> isHealthKept(base::SessionId session);
    /// What was recorded in a session and counts now, by lift.
    [[nodiscard]] Result<std::vector<LogEntry>> entriesIn(base::SessionId session);

private:
    [[nodiscard]] std::vector<NamedSession> collect(Statement& rows);

    Database& m_database;
};

}  // namespace chalk::store
