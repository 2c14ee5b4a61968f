#include "core/store/client_reader.h"

#include "core/store/direction_standings.h"

#include <algorithm>

namespace chalk::store {

Result<ClientFile> ClientReader::read(base::ClientId id, base::Date today)
{
    const Snapshot snapshot(m_database);
    ClientFile file;
    Statement row(m_database, QStringLiteral("SELECT ") + clientColumnsFor(m_database) +
                                  QStringLiteral(", coach.name FROM client c JOIN coach ON coach.id = c.coach_id WHERE c.id = ? AND c.is_withdrawn = 0"));
    if (row.run(id) && !row.next()) {
        return storeError(StoreError::Kind::Refused, QStringLiteral("There is no client %1").arg(id.value()));
    }
    if (!m_database.failure()) {
        file.client = clientOf(row);
        file.coachName = row.text(kClientColumns);
    }
    file.clearance = readClearance(m_database, id);
    file.cautions = readCautions(m_database, id, today);
    file.next = NextSessionSearch(m_database).find(id, today);
    if (m_database.may(Right::SeeHealth)) {
        file.lifts = readLifts(id);
        file.direction = directionStanding(m_database, id, today);
    }
    return m_database.resultOf(std::move(file));
}

std::vector<ClientLift> ClientReader::readLifts(base::ClientId client)
{
    std::vector<base::LiftId> ids;
    Statement rows(m_database, QStringLiteral("SELECT id FROM lift WHERE client_id = ? ORDER BY id"));
    rows.run(client);
    while (rows.next()) {
        ids.emplace_back(rows.integer(0));
    }
    EventLog log(m_database);
    LiftCache cache(m_database, log);
    std::vector<ClientLift> lifts;
    for (const base::LiftId id : ids) {
        auto lift = cache.read(id);
        if (!lift) {
            return lifts;
        }
        lifts.push_back({*std::move(lift), cache.readReached(id)});
    }
    std::stable_sort(lifts.begin(), lifts.end(), [](const ClientLift& a, const ClientLift& b) { return a.lift.pattern < b.lift.pattern; });
    return lifts;
}

Result<std::vector<std::pair<base::ClientId, std::string>>> ClientReader::names()
{
    const Snapshot snapshot(m_database);
    std::vector<std::pair<base::ClientId, std::string>> names;
    Statement rows(m_database, QStringLiteral("SELECT id, name FROM client WHERE is_withdrawn = 0 ORDER BY name, id"));
    rows.run();
    while (rows.next()) {
        names.emplace_back(base::ClientId(rows.integer(0)), rows.text(1));
    }
    return m_database.resultOf(std::move(names));
}

}  // namespace chalk::store
