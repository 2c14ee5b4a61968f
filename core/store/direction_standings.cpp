#include "core/store/direction_standings.h"

#include "core/store/decision_rows.h"
#include "core/store/plan_rows.h"

namespace chalk::store {

namespace {

QString planEndsWhere(const char* condition)
{
    return QStringLiteral("SELECT p.client_id, p.last_day FROM plan p WHERE ") + planCounts() + QStringLiteral(" AND p.begun_day <= ?") +
           QLatin1String(condition) + QStringLiteral(" ORDER BY p.begun_day, coalesce(p.root_id, p.id)");
}

QString lastChoicesWhere(const char* condition)
{
    return QStringLiteral("SELECT d.client_id, max(d.day) FROM decision d WHERE ") + decisionCounts() +
           QStringLiteral(" AND d.choice = 'direction' AND d.day <= ?") + QLatin1String(condition) + QStringLiteral(" GROUP BY d.client_id");
}

}  // namespace

std::map<base::ClientId, checkin::DirectionStanding> directionStandings(Database& database, base::Date day)
{
    std::map<base::ClientId, checkin::DirectionStanding> standings;
    Statement plans(database, planEndsWhere(""));
    plans.run(day);
    while (plans.next()) {
        standings[base::ClientId(plans.integer(0))].planEnd = plans.date(1);
    }
    Statement choices(database, lastChoicesWhere(""));
    choices.run(day);
    while (choices.next()) {
        standings[base::ClientId(choices.integer(0))].lastChoice = choices.date(1);
    }
    return standings;
}

checkin::DirectionStanding directionStanding(Database& database, base::ClientId client, base::Date day)
{
    checkin::DirectionStanding standing;
    Statement plans(database, planEndsWhere(" AND p.client_id = ?"));
    plans.run(day, client);
    while (plans.next()) {
        standing.planEnd = plans.date(1);
    }
    Statement choices(database, lastChoicesWhere(" AND d.client_id = ?"));
    choices.run(day, client);
    while (choices.next()) {
        standing.lastChoice = choices.date(1);
    }
    return standing;
}

}  // namespace chalk::store
