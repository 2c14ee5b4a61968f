#pragma once

#include "core/exchange/studio_document.h"
#include "core/store/client_inserts.h"
#include "core/store/event_log.h"
#include "core/store/lift_cache.h"
#include "core/store/progress.h"

#include <map>
#include <string>
#include <vector>

namespace chalk::store {

/// Takes a studio into an empty database, client by client, in one transaction: so that not all of a big one need be in memory.
class StudioImport {
public:
    /// Begins with what the clients refer to. Fails where the database holds a studio already. `atUtc` is the moment, ISO 8601.
    StudioImport(Database& database, const std::string& name, const std::vector<clients::Coach>& coaches,
                 const std::vector<exchange::StudioEquipment>& equipment, const QString& atUtc);

    /// The studio's own templates, limits, hours and closures; may be left out.
    void addOwn(const exchange::StudioDocument& document);
    /// Ids of coaches are those of the document; ids of clients, sessions and cautions are given anew.
    void add(const exchange::DocumentClient& client);
    [[nodiscard]] bool hasFailed() const { return m_database.failure().has_value(); }
    /// Commits everything, or nothing where anything failed: the message names the client then.
    [[nodiscard]] Result<void> finish();

private:
    void refuse(const QString& reason) { m_database.fail({StoreError::Kind::Refused, reason}); }
    [[nodiscard]] base::CoachId coachOf(base::CoachId inDocument);
    void addErased(const exchange::StudioDocument& document);
    void addProfile(const exchange::DocumentClient& client, base::ClientId id);
    void addPlanning(week::ClientPlanning planning, base::ClientId client);
    void addSessions(const std::vector<sessions::Session>& sessions, base::ClientId client);
    void addPlannedLifts(const exchange::DocumentClient& client);
    void addReports(const exchange::DocumentClient& client);
    void addCheckIn(const exchange::DocumentClient& client, base::ClientId id);
    void addDirection(const exchange::DocumentClient& client, base::ClientId id);
    void addLift(const exchange::DocumentLift& lift, base::ClientId client, WeekVolumes& weeks);
    void addEvents(const std::vector<exchange::DocumentEvent>& events, base::LiftId lift);
    void judge(const std::vector<exchange::DocumentEvent>& events, base::LiftId lift, WeekVolumes& weeks);

    Database& m_database;
    Transaction m_transaction;
    EventLog m_log;
    LiftCache m_cache;
    base::ActId m_act;
    std::string m_client;                                     ///< the name of the present one
    std::map<base::CoachId, base::CoachId> m_coaches;         ///< by id in the document
    std::map<std::string, base::SessionId> m_sessionsByCode;  ///< of the present client
    std::map<lifts::Pattern, base::LiftId> m_lifts;           ///< of the present client
    ClientInserts m_inserts;
    Statement m_insertSession;
};

/// Takes in a whole document. Stops, and changes nothing, when `progress` answers false or anything fails.
[[nodiscard]] Result<void> importStudio(Database& database, const exchange::StudioDocument& document, const QString& atUtc,
                                        const Progress& progress = {});

}  // namespace chalk::store
