#include "core/store/history_reader.h"

#include <algorithm>

namespace chalk::store {

Result<std::vector<HistoryEntry>> HistoryReader::read(base::LiftId id)
{
    m_database.begin();
    EventLog log(m_database);
    LiftCache cache(m_database, log);
    std::vector<HistoryEntry> history;
    auto lift = cache.readFresh(id);
    for (LogEntry& entry : log.presentEntries(id)) {
        if (!lift || m_database.failure() || lift->machine.faultOf(entry.event.body)) {
            break;
        }
        const lifts::Measure measure = lift->machine.kit().measure;
        const auto rules = lift->machine.apply(entry.event.date, entry.event.body);
        const auto after = lift->machine.prescriptionOn(entry.event.date);
        history.push_back({entry.id, entry.session, std::move(entry.event), measure, rules, after, !entry.replaces.isNone()});
    }
    return m_database.resultOf(std::move(history));
}

Result<std::vector<LogEntry>> HistoryReader::versions(base::EventId id)
{
    m_database.begin();
    EventLog log(m_database);
    std::vector<LogEntry> versions;
    if (const auto entry = log.entry(id)) {
        versions = log.allEntries(entry->lift);
        std::erase_if(versions, [&entry](const LogEntry& other) { return other.root != entry->root; });
    }
    return m_database.resultOf(std::move(versions));
}

}  // namespace chalk::store
