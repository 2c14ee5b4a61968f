#pragma once

#include "core/store/event_log.h"

#include <map>
#include <vector>

namespace chalk::store {

/// All versions of one entry of the log, and what each of them stands for.
class EntryVersions {
public:
    /// Of the entry that `version` belongs to; `version` is in the log.
    EntryVersions(Database& database, EventLog& log, const LogEntry& version);

    /// The one that counts now, or takes the entry back.
    [[nodiscard]] const LogEntry& latest() const { return m_versions.back(); }
    /// What a version stands for: itself, or, where an undo wrote it, the version that this brought back. None where the undo took
    /// the whole entry away.
    [[nodiscard]] base::EventId originOf(const LogEntry& version) const;
    /// What was there before a version; nothing before the first.
    [[nodiscard]] const LogEntry* formerOf(const LogEntry& version) const;

private:
    std::vector<LogEntry> m_versions;              ///< the first one first
    std::map<base::ActId, base::ActId> m_undone;   ///< by an act that is an undo: the act that it took back
};

}  // namespace chalk::store
