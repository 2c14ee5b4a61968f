#pragma once

#include "core/store/database.h"
#include "core/store/event_log.h"
#include "core/store/lift_tracking.h"

#include <optional>
#include <vector>

namespace chalk::store {

/// A lift's log that was replayed, with the entries that the decisions belong to.
struct LoggedReplay {
    LiftReplay replay;
    std::vector<LogEntry> entries;
};

/// The cached states of lifts, for one piece of work: kept up by every append, and rebuilt from the log at any time. Failures go
/// to the database.
class LiftCache {
public:
    LiftCache(Database& database, EventLog& log);

    /// The lift with its cached state; nothing, and a failure in the database, where it is not there or cannot be read.
    [[nodiscard]] std::optional<CachedLift> read(base::LiftId lift);
    /// The lift as it was set up, before any event.
    [[nodiscard]] std::optional<CachedLift> readFresh(base::LiftId lift);
    /// The stages of all cycles, by cycle and stage.
    [[nodiscard]] std::vector<StageReached> readReached(base::LiftId lift);
    /// Replays the log of a lift; keeps nothing.
    [[nodiscard]] std::optional<LoggedReplay> replay(base::LiftId lift);

    /// Judges one more event, no earlier than the last one and without a fault, and keeps the state.
    progression::RuleList append(CachedLift& lift, const progression::Event& event);
    /// Keeps what a replay found in the place of what is kept now, but for the load volumes.
    void keep(const LiftReplay& replay);
    /// Adds the difference of a lift's load volumes to its client's weeks.
    void changeVolumes(base::ClientId client, const WeekVolumes& before, const WeekVolumes& after);
    /// Throws all caches away and builds them again from the log.
    void rebuildAll();

private:
    struct Setup {
        base::ClientId client;
        lifts::Pattern pattern = lifts::Pattern::Squat;
        base::Date started;
        progression::LiftSetup setup;
    };

    [[nodiscard]] std::optional<Setup> readSetup(base::LiftId lift);
    void putState(const CachedLift& lift);
    void addToLog(base::LiftId lift, const QByteArray& logged);
    void putReached(base::LiftId lift, const std::vector<StageReached>& reached);
    void addVolume(base::ClientId client, base::Date monday, base::Mass volume);

    Database& m_database;
    EventLog& m_log;
    Statement m_selectLift;
    Statement m_selectState;
    Statement m_putState;
    Statement m_selectLog;
    Statement m_putLog;
    Statement m_putReached;
    Statement m_addVolume;
};

/// Builds the caches where a lift's is missing: so a migration that changes their meaning just empties `lift_state`. Fails where they
/// are missing and the database is open for reading only.
[[nodiscard]] Result<void> completeCaches(Database& database);

}  // namespace chalk::store
