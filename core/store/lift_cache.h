#pragma once

#include "core/base/id.h"
#include "core/progression/lift_machine.h"
#include "core/store/database.h"
#include "core/store/event_log.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace chalk::store {

/// A lift as it stands, read from the cache.
struct CachedLift {
    base::LiftId id;
    base::ClientId client;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    progression::LiftMachine machine;
    progression::RuleList decided;                 ///< the rules of the last decision that changed anything
    std::optional<base::Date> lastEvent;
    std::optional<base::Date> firstWork;           ///< the first exposure that counted in a loaded stage
    base::Date started;
};

/// Load volume by week, named by its Monday; kilograms × repetitions.
using WeekVolumes = std::map<base::Date, double>;

/// The cached states of lifts: kept up by every append, and rebuilt from the log at any time.
class LiftCache {
public:
    LiftCache(Database& database, EventLog& log);

    /// The lift with its cached state; nothing, and a failure in the database, where it is not there or cannot be read.
    [[nodiscard]] std::optional<CachedLift> read(base::LiftId lift);
    /// The lift as it was set up, before any event.
    [[nodiscard]] std::optional<CachedLift> readFresh(base::LiftId lift);
    /// Judges one more event, no earlier than the last one, and keeps the state.
    progression::RuleList append(CachedLift& lift, const progression::Event& event);
    /// Judges events in their order on a fresh lift and keeps the state; adds to `weeks` and `decisions` where they are there.
    void judgeAll(CachedLift& lift, std::span<const progression::Event> ordered, WeekVolumes* weeks,
                  std::vector<progression::Decision>* decisions);
    /// Replays the whole history of a lift from the log and keeps the state; answers every decision.
    std::vector<progression::Decision> rebuild(base::LiftId lift, WeekVolumes* weeks = nullptr);
    /// Works out a client's states and load volumes anew.
    void rebuildClient(base::ClientId client);
    /// Throws all caches away and builds them again from the log.
    void rebuildAll();
    /// Adds load volumes to a client's weeks.
    void addVolumes(base::ClientId client, const WeekVolumes& weeks);

private:
    void noteStage(const CachedLift& lift, base::Date day);
    void store(const CachedLift& lift);

    Database& m_database;
    EventLog& m_log;
    Statement m_selectLift;
    Statement m_selectState;
    Statement m_putState;
    Statement m_noteStage;
    Statement m_addVolume;
};

/// Load volume of an exposure's working sets: Σ repetitions × load × pieces, assistance and body mass left out, in kilograms.
[[nodiscard]] double volumeKilograms(const progression::Exposure& exposure, const progression::LiftSetup& setup, const progression::Kit& kit);

}  // namespace chalk::store
