#include "core/store/trend_session_rows.h"

#include "core/sessions/session_report.h"
#include "core/store/statement.h"

namespace chalk::store {

namespace {

std::optional<int> sessionLoadIn(const Statement& row, int effort, int minutes)
{
    sessions::SessionReport report;
    report.effortTenths = row.isNull(effort) ? std::nullopt : std::optional(row.number(effort));
    report.minutes = row.isNull(minutes) ? std::nullopt : std::optional(row.number(minutes));
    return sessions::sessionLoad(report);
}

}  // namespace

std::map<base::ClientId, TrendSessions> readTrendSessions(Database& database, const checkin::DayRange& days, base::ClientId client)
{
    QString sql = QStringLiteral("SELECT s.id, s.client_id, s.day, s.kind, s.state, r.rpe_tenths, r.minutes FROM session s "
                                 "LEFT JOIN session_report r ON r.session_id = s.id WHERE s.day BETWEEN ? AND ? AND s.state <> 'withdrawn'");
    if (!client.isNone()) {
        sql += QStringLiteral(" AND s.client_id = ?");
    }
    Statement rows(database, sql + QStringLiteral(" ORDER BY s.day, s.start_minute, s.id"));
    if (client.isNone()) {
        rows.run(days.from, days.to);
    } else {
        rows.run(days.from, days.to, client);
    }
    std::map<base::ClientId, TrendSessions> all;
    while (rows.next()) {
        sessions::Session session;
        session.id = base::SessionId(rows.integer(0));
        session.client = base::ClientId(rows.integer(1));
        session.date = rows.date(2);
        session.kind = rows.known(sessions::sessionKindOf(rows.text(3)), 3, "session", 0);
        session.state = rows.known(sessions::sessionStateOf(rows.text(4)), 4, "session", 0);
        TrendSessions& own = all[session.client];
        if (session.state == sessions::SessionState::Recorded && session.kind != sessions::SessionKind::MovementScreen) {
            own.efforts.push_back({session.date, sessionLoadIn(rows, 5, 6)});
        }
        own.sessions.push_back(std::move(session));
    }
    return all;
}

}  // namespace chalk::store
