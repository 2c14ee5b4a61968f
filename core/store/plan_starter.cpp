#include "core/store/plan_starter.h"

#include "core/clients/client.h"
#include "core/store/lift_start.h"
#include "core/store/profile_rows.h"
#include "core/store/session_states.h"

#include <algorithm>

namespace chalk::store {

PlanStarter::PlanStarter(Database& database, SessionCodes newCode) : m_database(database), m_newCode(std::move(newCode)) {}

void PlanStarter::refuse(const QString& reason)
{
    m_database.fail({StoreError::Kind::Refused, reason});
}

void PlanStarter::refuseLoadOfBlocked(base::ClientId client, const std::vector<NewLift>& lifts, base::Date today)
{
    const bool isAnyLoaded = std::any_of(lifts.begin(), lifts.end(), [](const NewLift& lift) { return progression::isLoaded(lift.setup.startStage); });
    if (isAnyLoaded && clients::isBlocked(readClearance(m_database, client), today)) {
        refuse(QStringLiteral("Loaded work waits for clearance"));
    }
}

void PlanStarter::book(base::ClientId client, const PlanToStart& plan, const PlannedVisit& visit, const std::vector<std::pair<lifts::Pattern, base::LiftId>>& lifts)
{
    Statement same(m_database, QStringLiteral("SELECT 1 FROM session WHERE client_id = ? AND day = ? AND start_minute < ? AND start_minute + minutes > ? "
                                              "AND state IN ") + statesWhere(sessions::takesTime));
    if (same.run(client, visit.date, visit.startMinute + visit.minutes, visit.startMinute) && same.next()) {
        refuse(QStringLiteral("There is a session on %1 at that time already").arg(QString::fromStdString(visit.date.toString())));
        return;
    }
    Statement insert(m_database, QStringLiteral("INSERT INTO session (client_id, coach_id, day, start_minute, minutes, place, place_capacity, kind, state, code) "
                                                "VALUES (?, ?, ?, ?, ?, ?, 1, ?, ?, ?) RETURNING id"));
    const std::int64_t session = insert.runForId(client, plan.coach, visit.date, visit.startMinute, visit.minutes, plan.place,
                                                 sessions::keyOf(sessions::SessionKind::Training), sessions::keyOf(sessions::SessionState::Planned), freeSessionCode(m_database, m_newCode));
    int position = 0;
    for (const lifts::Pattern pattern : visit.patterns) {
        const auto lift = std::find_if(lifts.begin(), lifts.end(), [pattern](const auto& one) { return one.first == pattern; });
        if (lift != lifts.end()) {
            Statement(m_database, QStringLiteral("INSERT INTO session_lift (session_id, position, lift_id) VALUES (?, ?, ?)"))
                .run(base::SessionId(session), position++, lift->second);
        }
    }
}

Result<void> PlanStarter::start(base::ClientId client, const PlanToStart& plan, base::Date today)
{
    Transaction transaction(m_database);
    refuseLoadOfBlocked(client, plan.lifts, today);
    const std::vector<base::LiftId> started = beginLifts(m_database, client, plan.lifts);
    std::vector<std::pair<lifts::Pattern, base::LiftId>> lifts;
    for (std::size_t i = 0; i < started.size(); ++i) {
        lifts.emplace_back(plan.lifts[i].pattern, started[i]);
    }
    for (const PlannedVisit& visit : plan.visits) {
        book(client, plan, visit, lifts);
    }
    closeOpenForm(m_database, client, FormKind::StartingPlan);
    return transaction.commit();
}

Result<void> PlanStarter::beginLift(base::ClientId client, const NewLift& lift, base::Date today)
{
    Transaction transaction(m_database);
    refuseLoadOfBlocked(client, {lift}, today);
    for (const base::LiftId begun : beginLifts(m_database, client, {lift})) {
        Statement(m_database, QStringLiteral("INSERT INTO session_lift (session_id, position, lift_id) "
                                             "SELECT s.id, MAX(p.position) + 1, ? FROM session s JOIN session_lift p ON p.session_id = s.id "
                                             "WHERE s.client_id = ? AND s.day >= ? AND s.state IN ") + statesWhere(sessions::isOpen) + QStringLiteral(" GROUP BY s.id"))
            .run(begun, client, today);
    }
    return transaction.commit();
}

bool PlanStarter::isUntouched(base::ClientId client)
{
    Statement entries(m_database, QStringLiteral("SELECT 1 FROM event e JOIN lift l ON l.id = e.lift_id WHERE l.client_id = ? LIMIT 1"));
    if (!entries.run(client) || entries.next()) {
        return false;
    }
    Statement changes(m_database, QStringLiteral("SELECT 1 FROM (SELECT session_id FROM session_change UNION ALL SELECT session_id FROM report_change) c "
                                                 "JOIN session_lift p ON p.session_id = c.session_id "
                                                 "JOIN session s ON s.id = c.session_id WHERE s.client_id = ? LIMIT 1"));
    return changes.run(client) && !changes.next();
}

Result<bool> PlanStarter::canTakeBack(base::ClientId client)
{
    const Snapshot snapshot(m_database);
    Statement lifts(m_database, QStringLiteral("SELECT 1 FROM lift WHERE client_id = ? LIMIT 1"));
    const bool hasLifts = lifts.run(client) && lifts.next();
    return m_database.resultOf(hasLifts && isUntouched(client));
}

Result<void> PlanStarter::takeBack(base::ClientId client)
{
    Transaction transaction(m_database);
    if (!isUntouched(client)) {
        refuse(QStringLiteral("Something was recorded or printed already: the plan goes on"));
    }
    const QString ownLifts = QStringLiteral("(SELECT id FROM lift WHERE client_id = ?)");
    Statement planned(m_database, QStringLiteral("SELECT DISTINCT session_id FROM session_lift WHERE lift_id IN ") + ownLifts);
    std::vector<base::SessionId> visits;
    planned.run(client);
    while (planned.next()) {
        visits.push_back(base::SessionId(planned.integer(0)));
    }
    for (const base::SessionId visit : visits) {
        Statement(m_database, QStringLiteral("DELETE FROM session_lift WHERE session_id = ?")).run(visit);
        Statement(m_database, QStringLiteral("DELETE FROM session WHERE id = ? AND state = 'planned'")).run(visit);
    }
    for (const char* table : {"lift_state", "stage_reached", "lift_log"}) {
        Statement(m_database, QStringLiteral("DELETE FROM %1 WHERE lift_id IN ").arg(QLatin1String(table)) + ownLifts).run(client);
    }
    Statement(m_database, QStringLiteral("DELETE FROM lift WHERE client_id = ?")).run(client);
    return transaction.commit();
}

}  // namespace chalk::store
