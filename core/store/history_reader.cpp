#include "core/store/history_reader.h"

namespace chalk::store {

Result<std::vector<HistoryEntry>> HistoryReader::read(base::LiftId id)
{
    const Snapshot snapshot(m_database);
    EventLog log(m_database);
    LiftCache cache(m_database, log);
    std::vector<HistoryEntry> history;
    auto lift = cache.readFresh(id);
    for (LogEntry& entry : log.presentEntries(id)) {
        if (!lift || lift->machine.faultOf(entry.event.body)) {
            m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: lift %2 cannot be replayed").arg(m_database.target()).arg(id.value())});
            break;
        }
        const lifts::Measure measure = lift->machine.kit().measure;
        const Step step = advance(*lift, entry.event);
        const auto& machine = lift->machine;
        history.push_back({entry.id, entry.session, std::move(entry.event), measure, step.rules, {}, machine.state().stage, machine.state().cycle,
                           !entry.replaces.isNone()});
        history.back().after = machine.prescriptionOn(history.back().event.date);
    }
    return m_database.resultOf(std::move(history));
}

std::vector<progression::JudgedEvent> judgedEvents(const std::vector<HistoryEntry>& history)
{
    std::vector<progression::JudgedEvent> judged;
    judged.reserve(history.size());
    for (const HistoryEntry& entry : history) {
        judged.push_back({entry.event.date, &entry.event.body, entry.rules, entry.stageAfter});
    }
    return judged;
}

Result<std::vector<LogEntry>> HistoryReader::versions(base::EventId id)
{
    const Snapshot snapshot(m_database);
    EventLog log(m_database);
    const auto entry = log.entry(id);
    return m_database.resultOf(entry ? log.versionsOf(*entry) : std::vector<LogEntry>());
}

}  // namespace chalk::store
