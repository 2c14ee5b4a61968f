#pragma once

#include "core/checkin/direction_standing.h"
#include "core/clients/client.h"
#include "core/lifts/pattern.h"
#include "core/progression/rule.h"
#include "core/progression/stage.h"
#include "core/sessions/session.h"
#include "core/store/database.h"

#include <array>
#include <optional>
#include <vector>

namespace chalk::store {

/// Where one lift of a client stands, as far as a list of everybody needs it.
struct LiftStand {
    base::LiftId id;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    progression::Stage stage = progression::Stage::Pattern;
    int cycle = 1;
    int misses = 0;                        ///< in a row
    bool isOnHold = false;
    std::optional<base::Date> heldSince;
    int holdPain = 0;                      ///< the pain that put it on hold
    progression::Flags flags;
    std::optional<base::Date> lastWork;
    std::optional<base::Date> firstWork;   ///< the first exposure in a loaded stage
    base::Date stageSince;                 ///< since when it is in this stage
};

inline constexpr std::size_t kRosterWeeks = 9;  ///< eight finished weeks and the present one
inline constexpr int kRosterSessions = 12;

/// One client's line of the roster.
struct RosterEntry {
    clients::Client client;
    std::string coachName;
    clients::Clearance clearance;
    std::vector<clients::Caution> cautions;             ///< those in force
    std::vector<LiftStand> lifts;                       ///< by pattern
    std::optional<sessions::Session> next;              ///< planned or printed, today or later
    int nextTaken = 0;                                  ///< clients in that slot
    std::vector<sessions::SessionState> lastSessions;   ///< at most 12 past ones, oldest first
    std::optional<base::Date> lastSession;              ///< the last one that was recorded
    checkin::DirectionStanding direction;
    std::array<double, kRosterWeeks> weekVolumes{};     ///< kg × repetitions by ISO week, the present week last
};

/// Reads everybody in one cheap pass from the caches.
class RosterReader {
public:
    explicit RosterReader(Database& database) : m_database(database) {}

    /// By name; `today` says what is past.
    [[nodiscard]] Result<std::vector<RosterEntry>> read(base::Date today);

private:
    void readClients(std::vector<RosterEntry>& entries);
    void readCautions(std::vector<RosterEntry>& entries, base::Date today);
    void readLifts(std::vector<RosterEntry>& entries);
    void readWeeks(std::vector<RosterEntry>& entries, base::Date today);
    void readDirections(std::vector<RosterEntry>& entries, base::Date today);
    void readSessions(std::vector<RosterEntry>& entries, base::Date today);

    Database& m_database;
};

}  // namespace chalk::store
