#include "core/store/event_log.h"

#include "core/store/lift_codec.h"

namespace chalk::store {

namespace {

using progression::Exposure;
using progression::SetRecord;

const QString& columnsOfEntry()
{
    static const QString columns = QStringLiteral(
        "SELECT e.id, e.root_id, e.replaces_id, e.lift_id, e.act_id, e.session_id, e.is_void, e.day, e.type, e.detail, e.pain FROM event e ");
    return columns;
}

int painOf(const progression::EventBody& body)
{
    const auto* exposure = std::get_if<Exposure>(&body);
    return exposure == nullptr ? 0 : exposure->pain;
}

LogEntry entryOf(const Statement& row, Database& database)
{
    LogEntry entry;
    entry.id = base::EventId(row.integer(0));
    entry.root = base::EventId(row.integer(1));
    entry.replaces = base::EventId(row.integer(2));
    entry.lift = base::LiftId(row.integer(3));
    entry.act = base::ActId(row.integer(4));
    entry.session = base::SessionId(row.integer(5));
    entry.isVoid = row.number(6) != 0;
    entry.event.date = row.date(7);
    if (auto body = bodyOf(row.qtext(8), row.qtext(9), row.number(10))) {
        entry.event.body = *std::move(body);
    } else {
        database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: entry %2 cannot be read").arg(database.target()).arg(row.integer(0))});
    }
    return entry;
}

}  // namespace

EventLog::EventLog(Database& database)
    : m_database(database),
      m_insertEvent(database, QStringLiteral("INSERT INTO event (root_id, replaces_id, lift_id, day, act_id, session_id, is_void, type, pain, detail) "
                                             "VALUES (coalesce(?, (SELECT coalesce(max(id), 0) + 1 FROM event)), ?, ?, ?, ?, ?, ?, ?, ?, ?)")),
      m_insertSet(database, QStringLiteral("INSERT INTO event_set (event_id, position, load_centi, amount, rir, rest_s, steadiness, is_warmup) "
                                           "VALUES (?, ?, ?, ?, ?, ?, ?, ?)")),
      m_selectSets(database, QStringLiteral("SELECT load_centi, amount, rir, rest_s, steadiness, is_warmup FROM event_set "
                                            "WHERE event_id = ? ORDER BY position"))
{
}

base::EventId EventLog::append(const NewEntry& entry)
{
    base::EventId root;
    if (!entry.replaces.isNone()) {
        Statement replaced(m_database, QStringLiteral("SELECT root_id FROM event WHERE id = ?"));
        if (replaced.run(entry.replaces) && replaced.next()) {
            root = base::EventId(replaced.integer(0));
        }
    }
    m_insertEvent.run(root, entry.replaces, entry.lift, entry.event.date, entry.act, entry.session, entry.isVoid,
                      progression::typeKeyOf(entry.event.body), painOf(entry.event.body), textOfBody(entry.event.body));
    const base::EventId id(m_insertEvent.lastInsertId());
    if (const auto* exposure = std::get_if<Exposure>(&entry.event.body)) {
        int position = 0;
        for (const SetRecord& set : exposure->sets) {
            m_insertSet.run(id, position++, set.load, int{set.amount}, int{set.rir}, int{set.restSeconds}, static_cast<int>(set.steadiness),
                            set.isWarmup);
        }
    }
    return id;
}

void EventLog::readSets(LogEntry& entry)
{
    auto* exposure = std::get_if<Exposure>(&entry.event.body);
    if (exposure == nullptr) {
        return;
    }
    m_selectSets.run(entry.id);
    while (m_selectSets.next()) {
        exposure->sets.push_back({base::Load::fromCenti(m_selectSets.number(0)), m_selectSets.number(1),
                                  static_cast<std::int16_t>(m_selectSets.number(2)), static_cast<std::int16_t>(m_selectSets.number(3)),
                                  static_cast<progression::Steadiness>(m_selectSets.number(4)), m_selectSets.number(5) != 0});
    }
}

std::vector<LogEntry> EventLog::collect(Statement& rows)
{
    std::vector<LogEntry> entries;
    while (rows.next()) {
        entries.push_back(entryOf(rows, m_database));
    }
    for (LogEntry& entry : entries) {
        readSets(entry);
    }
    return entries;
}

std::vector<LogEntry> EventLog::presentEntries(base::LiftId lift)
{
    Statement rows(m_database, columnsOfEntry() + QStringLiteral("LEFT JOIN event later ON later.replaces_id = e.id "
                                                                 "WHERE e.lift_id = ? AND e.is_void = 0 AND later.id IS NULL ORDER BY e.day, e.root_id"));
    rows.run(lift);
    return collect(rows);
}

std::vector<LogEntry> EventLog::allEntries(base::LiftId lift)
{
    Statement rows(m_database, columnsOfEntry() + QStringLiteral("WHERE e.lift_id = ? ORDER BY e.id"));
    rows.run(lift);
    return collect(rows);
}

std::optional<LogEntry> EventLog::entry(base::EventId id)
{
    Statement rows(m_database, columnsOfEntry() + QStringLiteral("WHERE e.id = ?"));
    rows.run(id);
    std::vector<LogEntry> entries = collect(rows);
    return entries.empty() ? std::nullopt : std::optional(std::move(entries.front()));
}

std::vector<LogEntry> EventLog::entriesOf(base::ActId act)
{
    Statement rows(m_database, columnsOfEntry() + QStringLiteral("WHERE e.act_id = ? ORDER BY e.id"));
    rows.run(act);
    return collect(rows);
}

bool EventLog::isReplaced(base::EventId id)
{
    Statement later(m_database, QStringLiteral("SELECT 1 FROM event WHERE replaces_id = ?"));
    return later.run(id) && later.next();
}

}  // namespace chalk::store
