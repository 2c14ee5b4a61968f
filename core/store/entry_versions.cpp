#include "core/store/entry_versions.h"

#include <algorithm>

namespace chalk::store {

EntryVersions::EntryVersions(Database& database, EventLog& log, const LogEntry& version) : m_versions(log.versionsOf(version))
{
    Statement undone(database, QStringLiteral("SELECT undoes_act_id FROM act WHERE id = ? AND undoes_act_id IS NOT NULL"));
    for (const LogEntry& one : m_versions) {
        if (undone.run(one.act) && undone.next()) {
            m_undone[one.act] = base::ActId(undone.integer(0));
        }
    }
    if (m_versions.empty()) {
        m_versions.push_back(version);  // the database has failed: nothing will come of it
    }
}

const LogEntry* EntryVersions::formerOf(const LogEntry& version) const
{
    const auto former = std::find_if(m_versions.begin(), m_versions.end(), [&version](const LogEntry& one) { return one.id == version.replaces; });
    return former == m_versions.end() ? nullptr : &*former;
}

base::EventId EntryVersions::originOf(const LogEntry& version) const
{
    const auto undo = m_undone.find(version.act);
    if (undo == m_undone.end()) {
        return version.id;
    }
    const auto undone = std::find_if(m_versions.begin(), m_versions.end(), [undo](const LogEntry& one) { return one.act == undo->second; });
    const LogEntry* former = undone == m_versions.end() ? nullptr : formerOf(*undone);
    return former == nullptr ? base::EventId() : originOf(*former);
}

}  // namespace chalk::store
