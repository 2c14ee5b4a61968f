#include "core/store/trends_reader.h"

#include "core/store/lift_codec.h"
#include "core/store/statement.h"
#include "core/store/trend_session_rows.h"
#include "core/store/trend_work.h"

#include <algorithm>

namespace chalk::store {

namespace {

/// The four finished weeks of a ratio, and that of the day.
constexpr int kLeastWeeksRead = 5;

/// The days that are read, so that the ratio has its weeks; those after `day` are not.
checkin::DayRange daysToRead(base::Date day, int weeks)
{
    return {checkin::trendDays(day, std::max(weeks, kLeastWeeksRead)).from, day};
}

std::vector<checkin::ClientWork> readEverybody(Database& database)
{
    std::vector<checkin::ClientWork> clients;
    Statement rows(database, QStringLiteral("SELECT c.id, c.name, min(t.first_work_day) FROM client c LEFT JOIN lift l ON l.client_id = c.id "
                                            "LEFT JOIN lift_state t ON t.lift_id = l.id WHERE c.is_withdrawn = 0 GROUP BY c.id, c.name ORDER BY c.name, c.id"));
    rows.run();
    while (rows.next()) {
        clients.push_back({base::ClientId(rows.integer(0)), rows.text(1), {}, {}, {}, rows.optionalDate(2)});
    }
    return clients;
}

}  // namespace

Result<ClientTrends> TrendsReader::read(base::ClientId client, base::Date day, int weeks)
{
    const Snapshot snapshot(m_database);
    Statement row(m_database, QStringLiteral("SELECT name, unit FROM client WHERE id = ?"));
    if (!row.run(client)) {
        return tl::make_unexpected(*m_database.failure());
    }
    if (!row.next()) {
        return storeError(StoreError::Kind::Refused, QStringLiteral("There is no client %1 in %2").arg(client.value()).arg(m_database.target()));
    }
    ClientTrends read{client, row.text(0), unitOf(row.qtext(1)), {}};
    const ClientLog log = readClientLog(m_database, m_catalogue, client, day);
    const TrendSessions sessions = readTrendSessions(m_database, daysToRead(day, weeks), client)[client];
    read.trends = checkin::trendsOf({day, weeks, log.work, sessions.sessions, sessions.efforts, log.lifts});
    return m_database.resultOf(std::move(read));
}

Result<checkin::StudioTrends> TrendsReader::readAll(base::Date day, int weeks)
{
    const Snapshot snapshot(m_database);
    const checkin::DayRange days = daysToRead(day, weeks);
    std::vector<checkin::ClientWork> clients = readEverybody(m_database);
    auto work = readAllWork(m_database, days);
    auto sessions = readTrendSessions(m_database, days);
    for (checkin::ClientWork& client : clients) {
        client.work = std::move(work[client.client]);
        client.sessions = std::move(sessions[client.client].sessions);
        client.efforts = std::move(sessions[client.client].efforts);
    }
    return m_database.resultOf(checkin::studioTrendsOf(clients, day, weeks));
}

}  // namespace chalk::store
