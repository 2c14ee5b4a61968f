#pragma once

#include "core/base/id.h"
#include "core/progression/event.h"
#include "core/store/database.h"
#include "core/store/statement.h"

#include <map>
#include <optional>
#include <vector>

namespace chalk::store {

/// A new row for the log.
struct NewEntry {
    base::LiftId lift;
    progression::Event event;
    base::ActId act;
    base::SessionId session;       ///< none where it was done outside of one
    base::EventId replaces;        ///< none for a first version
    bool isVoid = false;           ///< takes back what it replaces
};

/// A row of the log.
struct LogEntry {
    base::EventId id;
    base::EventId root;            ///< the first version, which may be this one: its place in the day
    base::EventId replaces;
    base::LiftId lift;
    base::ActId act;
    base::SessionId session;
    bool isVoid = false;
    progression::Event event;
};

/// The append-only log of events, for one piece of work. Failures go to the database.
class EventLog {
public:
    explicit EventLog(Database& database);

    /// Appends a row and answers its id.
    base::EventId append(const NewEntry& entry);
    /// The entries of a lift that count now, by date and place in the day: last versions, none that were taken back.
    [[nodiscard]] std::vector<LogEntry> presentEntries(base::LiftId lift);
    /// Every row of a lift in the order in which they were appended, all versions and what was taken back.
    [[nodiscard]] std::vector<LogEntry> allEntries(base::LiftId lift);
    /// At most `most` of those that count now, the latest first.
    [[nodiscard]] std::vector<LogEntry> lastEntries(base::LiftId lift, int most);
    /// Every version of the entry that `version` belongs to, the first one first.
    [[nodiscard]] std::vector<LogEntry> versionsOf(const LogEntry& version);
    /// One row; nothing where there is none.
    [[nodiscard]] std::optional<LogEntry> entry(base::EventId id);
    /// The rows that an act appended.
    [[nodiscard]] std::vector<LogEntry> entriesOf(base::ActId act);
    /// The entries that count now of those that were done in a session, by lift.
    [[nodiscard]] std::vector<LogEntry> presentEntriesIn(base::SessionId session);
    /// Whether another row replaces this one.
    [[nodiscard]] bool isReplaced(base::EventId id);

private:
    void appendSets(base::EventId event, const std::vector<progression::SetRecord>& sets);
    /// Inserts that many sets at once.
    [[nodiscard]] Statement& setsInsert(std::size_t count);
    /// Entries without the sets of exposures.
    [[nodiscard]] std::vector<LogEntry> entriesIn(Statement& rows);
    [[nodiscard]] std::vector<LogEntry> collect(Statement& rows);
    /// The same for rows that are many of a lift: its sets are read at once.
    [[nodiscard]] std::vector<LogEntry> collectLift(Statement& rows, base::LiftId lift);

    Database& m_database;
    Statement m_insertEvent;
    std::map<std::size_t, Statement> m_insertSets;  ///< by how many they insert
    Statement m_selectSets;
    Statement m_selectSetsOfLift;
    Statement m_selectAllOfLift;
    Statement m_selectPresentOfLift;
};

}  // namespace chalk::store
