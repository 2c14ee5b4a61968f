#pragma once

#include "core/checkin/direction_standing.h"
#include "core/store/lift_cache.h"
#include "core/store/profile_rows.h"

namespace chalk::store {

/// A lift with all that is known of where it stands.
struct ClientLift {
    CachedLift lift;
    std::vector<StageReached> reached;  ///< the first days of the stages of all cycles, by cycle and stage
};

/// Everything about one client but the log itself.
struct ClientFile {
    clients::Client client;
    std::string coachName;
    clients::Clearance clearance;
    std::vector<clients::Caution> cautions;  ///< those in force
    std::vector<ClientLift> lifts;           ///< by pattern
    NextSession next;
    checkin::DirectionStanding direction;
};

/// Reads one client.
class ClientReader {
public:
    explicit ClientReader(Database& database) : m_database(database) {}

    /// Fails where there is no such client.
    [[nodiscard]] Result<ClientFile> read(base::ClientId client, base::Date today);
    /// Ids and names of everybody, by name.
    [[nodiscard]] Result<std::vector<std::pair<base::ClientId, std::string>>> names();

private:
    [[nodiscard]] std::vector<ClientLift> readLifts(base::ClientId client);

    Database& m_database;
};

}  // namespace chalk::store
