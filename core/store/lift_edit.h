#pragma once

#include "core/store/act.h"
#include "core/store/event_log.h"
#include "core/store/lift_cache.h"

#include <map>
#include <set>

namespace chalk::store {

/// Changes lifts' logs for one act and tells what became different. Failures go to the database.
class LiftEdit {
public:
    /// What happens goes to `outcome`, whose act there is already.
    LiftEdit(Database& database, ActOutcome& outcome) : m_database(database), m_outcome(outcome), m_log(database), m_cache(database, m_log) {}

    /// Adds an event: goes on from the cached state where it is the last one, replays the history where it was logged late.
    void add(base::LiftId lift, const progression::Event& event, base::SessionId session);
    /// Puts a version in the place of `old`, or takes it back, and replays the history.
    void replace(const LogEntry& old, const progression::Event& event, bool isVoid);

    /// Appends a row, a new one or one that replaces another, and leaves its lift to be judged by settle(): many rows of a lift cost two replays then.
    void writeLater(const NewEntry& entry);
    /// Replays the lifts that rows were written to.
    void settle();

    [[nodiscard]] EventLog& log() { return m_log; }
    [[nodiscard]] LiftCache& cache() { return m_cache; }

private:
    /// A lift that waits to be judged.
    struct Written {
        LoggedReplay before;
        std::set<base::EventId> roots;
    };

    void addLast(CachedLift lift, const NewEntry& entry);
    void rewrite(const NewEntry& entry);
    void note(const LoggedReplay& before, const LoggedReplay& after, const std::set<base::EventId>& roots);
    /// Refuses an event that the log could not give back: a field out of range.
    [[nodiscard]] bool isWritable(const progression::Event& event, lifts::Measure measure, lifts::Pattern pattern);

    Database& m_database;
    ActOutcome& m_outcome;
    EventLog m_log;
    LiftCache m_cache;
    std::map<base::LiftId, Written> m_written;
};

}  // namespace chalk::store
