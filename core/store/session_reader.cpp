#include "core/store/session_reader.h"

#include "core/store/report_rows.h"

namespace chalk::store {

namespace {

QString namedSessions(const char* rest)
{
    return QStringLiteral("SELECT ") + sessionColumns() +
           QStringLiteral(", c.name, coach.name FROM session s JOIN client c ON c.id = s.client_id JOIN coach ON coach.id = s.coach_id ") +
           QLatin1String(rest);
}

}  // namespace

std::vector<NamedSession> SessionReader::collect(Statement& rows)
{
    std::vector<NamedSession> sessions;
    while (rows.next()) {
        sessions.push_back({sessionOf(rows), rows.text(kSessionColumns), rows.text(kSessionColumns + 1)});
    }
    return sessions;
}

Result<std::vector<NamedSession>> SessionReader::on(base::Date day)
{
    const Snapshot snapshot(m_database);
    Statement rows(m_database, namedSessions("WHERE s.day = ? AND s.state <> 'withdrawn' ORDER BY s.start_minute, s.coach_id, s.id"));
    rows.run(day);
    return m_database.resultOf(collect(rows));
}

Result<std::vector<NamedSession>> SessionReader::of(base::ClientId client)
{
    const Snapshot snapshot(m_database);
    Statement rows(m_database, namedSessions("WHERE s.client_id = ? AND s.state <> 'withdrawn' ORDER BY s.day DESC, s.start_minute DESC"));
    rows.run(client);
    return m_database.resultOf(collect(rows));
}

Result<std::vector<int>> SessionReader::countsFrom(base::Date first, int days)
{
    std::vector<int> counts(static_cast<std::size_t>(days), 0);
    Statement rows(m_database, QStringLiteral("SELECT day, COUNT(*) FROM session WHERE day BETWEEN ? AND ? AND state IN ('planned', 'printed', 'recorded') GROUP BY day"));
    rows.run(first, first + (days - 1));
    while (rows.next()) {
        counts[static_cast<std::size_t>(rows.date(0) - first)] = static_cast<int>(rows.integer(1));
    }
    return m_database.resultOf(std::move(counts));
}

Result<std::optional<NamedSession>> SessionReader::withCode(const std::string& code)
{
    const Snapshot snapshot(m_database);
    Statement rows(m_database, namedSessions("WHERE s.code = ? AND s.state <> 'withdrawn'"));
    rows.run(code);
    std::vector<NamedSession> found = collect(rows);
    return m_database.resultOf(found.empty() ? std::nullopt : std::optional(std::move(found.front())));
}

Result<std::vector<sessions::SessionLift>> SessionReader::lifts(base::SessionId session)
{
    const Snapshot snapshot(m_database);
    std::vector<sessions::SessionLift> lifts;
    if (!m_database.may(Right::SeeHealth)) {
        return lifts;
    }
    Statement rows(m_database, QStringLiteral("SELECT lift_id, left_out IS NOT NULL, COALESCE(left_out, '') FROM session_lift WHERE session_id = ? ORDER BY position"));
    rows.run(session);
    while (rows.next()) {
        const base::LiftId lift(rows.integer(0));
        lifts.push_back({lift, rows.integer(1) != 0 ? std::optional(rows.openedText(2, rows.sealedRow("session_lift", session, lift), "left_out")) : std::nullopt});
    }
    return m_database.resultOf(std::move(lifts));
}

Result<std::vector<base::LiftId>> SessionReader::plannedLifts(base::SessionId session)
{
    const auto all = lifts(session);
    if (!all) {
        return tl::make_unexpected(all.error());
    }
    std::vector<base::LiftId> done;
    for (const sessions::SessionLift& one : *all) {
        if (!one.leftOut) {
            done.push_back(one.lift);
        }
    }
    return done;
}

Result<sessions::SessionReport> SessionReader::report(base::SessionId session)
{
    const Snapshot snapshot(m_database);
    return m_database.resultOf(m_database.may(Right::SeeHealth) ? readReport(m_database, session) : sessions::SessionReport());
}

Result<std::map<base::SessionId, sessions::SessionReport>> SessionReader::reportsOf(base::ClientId client)
{
    const Snapshot snapshot(m_database);
    return m_database.resultOf(m_database.may(Right::SeeHealth) ? readReports(m_database, client) : std::map<base::SessionId, sessions::SessionReport>());
}

Result<bool> SessionReader::isHealthKept(base::SessionId session)
{
    const Snapshot snapshot(m_database);
    return m_database.resultOf(m_database.may(Right::SeeHealth) && store::isHealthKept(m_database, session));
}

Result<std::vector<LogEntry>> SessionReader::entriesIn(base::SessionId session)
{
    const Snapshot snapshot(m_database);
    return m_database.resultOf(m_database.may(Right::SeeHealth) ? EventLog(m_database).presentEntriesIn(session) : std::vector<LogEntry>());
}

}  // namespace chalk::store
