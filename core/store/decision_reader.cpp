#include "core/store/decision_reader.h"

#include "core/store/decision_rows.h"

namespace chalk::store {

namespace {

QString decisionsWhere(const char* condition)
{
    return QStringLiteral("SELECT ") + decisionColumns() + QStringLiteral(" FROM decision d WHERE ") + decisionCounts() +
           QLatin1String(condition);
}

std::vector<checkin::Decision> collect(Statement& rows)
{
    std::vector<checkin::Decision> decisions;
    while (rows.next()) {
        decisions.push_back(decisionOf(rows));
    }
    return decisions;
}

}  // namespace

Result<std::vector<checkin::Decision>> DecisionReader::history(base::ClientId client)
{
    const Snapshot snapshot(m_database);
    Statement rows(m_database, decisionsWhere(" AND d.client_id = ? ORDER BY d.day DESC, coalesce(d.root_id, d.id) DESC"));
    rows.run(client);
    return m_database.resultOf(collect(rows));
}

Result<std::vector<checkin::Decision>> DecisionReader::decisionsIn(checkin::DayRange days)
{
    const Snapshot snapshot(m_database);
    Statement rows(m_database, decisionsWhere(" AND d.day BETWEEN ? AND ? ORDER BY d.day, coalesce(d.root_id, d.id)"));
    rows.run(days.from, days.to);
    return m_database.resultOf(collect(rows));
}

Result<std::map<base::ClientId, checkin::Decision>> DecisionReader::latest(base::Date day)
{
    const Snapshot snapshot(m_database);
    Statement rows(m_database, decisionsWhere(" AND d.day <= ? ORDER BY d.day, coalesce(d.root_id, d.id)"));
    rows.run(day);
    std::map<base::ClientId, checkin::Decision> latest;
    for (checkin::Decision& decision : collect(rows)) {
        latest.insert_or_assign(decision.client, std::move(decision));
    }
    return m_database.resultOf(std::move(latest));
}

}  // namespace chalk::store
