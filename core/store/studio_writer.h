#pragma once

#include "core/studio/studio_document.h"
#include "core/store/event_log.h"
#include "core/store/lift_cache.h"

#include <functional>

namespace chalk::store {

/// Told how many of how many clients are done; answers whether to go on.
using Progress = std::function<bool(int done, int of)>;

/// Takes a studio into an empty database, client by client, in one transaction.
class StudioImport {
public:
    /// Begins with what the clients refer to. Fails where the database holds a studio already.
    StudioImport(Database& database, const std::string& name, const std::vector<clients::Coach>& coaches,
                 const std::vector<studio::StudioEquipment>& equipment, const QString& atUtc);

    /// Ids of coaches are those of the document.
    void add(const studio::DocumentClient& client);
    [[nodiscard]] bool hasFailed() const { return m_database.failure().has_value(); }
    /// Commits everything, or nothing where anything failed.
    [[nodiscard]] Result<void> finish() { return m_transaction.commit(); }

private:
    void addProfile(const studio::DocumentClient& client, base::ClientId id);
    void addSessions(const std::vector<sessions::Session>& sessions, base::ClientId client);
    void addLift(const studio::DocumentLift& lift, base::ClientId client, WeekVolumes& weeks);

    Database& m_database;
    Transaction m_transaction;
    EventLog m_log;
    LiftCache m_cache;
    base::ActId m_act;
    std::map<std::int64_t, std::int64_t> m_coaches;          ///< by id in the document
    std::map<std::string, base::SessionId> m_sessionsByCode; ///< of the present client
    Statement m_insertSession;
};

/// Takes in a whole document. Stops, and changes nothing, when `progress` answers false or anything fails.
[[nodiscard]] Result<void> importStudio(Database& database, const studio::StudioDocument& document, const QString& atUtc,
                                        const Progress& progress = {});

}  // namespace chalk::store
