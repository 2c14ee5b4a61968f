#include "core/store/event_log.h"

#include "core/store/lift_codec.h"

#include <algorithm>
#include <unordered_map>

namespace chalk::store {

namespace {

using progression::Exposure;
using progression::SetRecord;

/// Reads entries, with the columns that entryOf takes.
QString entriesWhere(const char* condition)
{
    return QStringLiteral("SELECT e.id, coalesce(e.root_id, e.id), e.replaces_id, e.lift_id, e.act_id, e.session_id, e.is_void, e.day, e.type, e.detail, "
                          "e.pain FROM event e WHERE ") +
           QLatin1String(condition);
}

int painOf(const progression::EventBody& body)
{
    if (const auto* rehearsal = std::get_if<progression::Rehearsal>(&body)) {
        return rehearsal->pain;
    }
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
    const SealedRow sealed = row.sealedRow("event", entry.lift, row.integer(7), row.text(8));
    if (auto body = bodyOf(row.qtext(8), row.opened(9, sealed, "detail"), row.number(10))) {
        entry.event.body = *std::move(body);
    } else {
        database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: entry %2 cannot be read").arg(database.target()).arg(row.integer(0))});
    }
    return entry;
}

/// A set, by the columns that both selections of sets begin with.
SetRecord setOf(const Statement& row)
{
    return {base::Load::fromCenti(row.number(0)), row.number(1), static_cast<std::int16_t>(row.number(2)), static_cast<std::int16_t>(row.number(3)),
            static_cast<progression::Steadiness>(row.number(4)), row.number(5) != 0};
}

}  // namespace

EventLog::EventLog(Database& database)
    : m_database(database),
      m_insertEvent(database, QStringLiteral("INSERT INTO event (root_id, replaces_id, lift_id, day, act_id, session_id, is_void, type, pain, detail) "
                                             "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id")),
      m_selectSets(database, QStringLiteral("SELECT load_centi, amount, rir, rest_s, steadiness, is_warmup FROM event_set "
                                            "WHERE event_id = ? ORDER BY position")),
      m_selectSetsOfLift(database, QStringLiteral("SELECT s.load_centi, s.amount, s.rir, s.rest_s, s.steadiness, s.is_warmup, s.event_id FROM event e "
                                                  "JOIN event_set s ON s.event_id = e.id WHERE e.lift_id = ? ORDER BY e.day, e.id, s.position")),
      m_selectAllOfLift(database, entriesWhere("e.lift_id = ? ORDER BY e.id")),
      m_selectPresentOfLift(database, entriesWhere("e.lift_id = ? AND e.is_void = 0 AND NOT EXISTS (SELECT 1 FROM event later WHERE later.replaces_id = e.id) "
                                                   "ORDER BY e.day, coalesce(e.root_id, e.id)"))
{
}

base::EventId EventLog::append(const NewEntry& entry)
{
    base::EventId root;
    if (!entry.replaces.isNone()) {
        Statement replaced(m_database, QStringLiteral("SELECT coalesce(root_id, id) FROM event WHERE id = ?"));
        root = base::EventId(replaced.run(entry.replaces) && replaced.next() ? replaced.integer(0) : 0);
    }
    const auto* exposure = std::get_if<Exposure>(&entry.event.body);
    const auto detail = exposure == nullptr ? std::optional(textOfBody(entry.event.body)) : std::nullopt;
    Vault& vault = m_database.vault();
    const SealedRow row = vault.toWrite("event", entry.lift, entry.event.date.daysSince1970(), progression::typeKeyOf(entry.event.body));
    const base::EventId id(m_insertEvent.runForId(root, entry.replaces, entry.lift, entry.event.date, entry.act, entry.session, entry.isVoid,
                                                  progression::typeKeyOf(entry.event.body), painOf(entry.event.body),
                                                  detail ? std::optional(vault.sealed(row, "detail", *detail)) : std::nullopt));
    if (exposure != nullptr) {
        appendSets(id, exposure->sets);
    }
    return id;
}

void EventLog::appendSets(base::EventId event, const std::vector<SetRecord>& sets)
{
    constexpr std::size_t kMostAtOnce = 10;
    for (std::size_t first = 0; first < sets.size(); first += kMostAtOnce) {
        const std::size_t count = std::min(kMostAtOnce, sets.size() - first);
        Statement& insert = setsInsert(count);
        int at = 0;
        for (std::size_t i = first; i < first + count; ++i) {
            const SetRecord& set = sets[i];
            insert.bindAt(at++, event);
            insert.bindAt(at++, static_cast<int>(i));
            insert.bindAt(at++, set.load);
            insert.bindAt(at++, int{set.amount});
            insert.bindAt(at++, int{set.rir});
            insert.bindAt(at++, int{set.restSeconds});
            insert.bindAt(at++, static_cast<int>(set.steadiness));
            insert.bindAt(at++, set.isWarmup);
        }
        insert.runBound();
    }
}

Statement& EventLog::setsInsert(std::size_t count)
{
    if (const auto there = m_insertSets.find(count); there != m_insertSets.end()) {
        return there->second;
    }
    QString sql = QStringLiteral("INSERT INTO event_set (event_id, position, load_centi, amount, rir, rest_s, steadiness, is_warmup) VALUES ");
    for (std::size_t i = 0; i < count; ++i) {
        sql += QLatin1String(i == 0 ? "(?, ?, ?, ?, ?, ?, ?, ?)" : ", (?, ?, ?, ?, ?, ?, ?, ?)");
    }
    return m_insertSets.try_emplace(count, m_database, sql).first->second;
}

std::vector<LogEntry> EventLog::entriesIn(Statement& rows)
{
    std::vector<LogEntry> entries;
    while (rows.next()) {
        entries.push_back(entryOf(rows, m_database));
    }
    return entries;
}

std::vector<LogEntry> EventLog::collect(Statement& rows)
{
    std::vector<LogEntry> entries = entriesIn(rows);
    for (LogEntry& entry : entries) {
        auto* exposure = std::get_if<Exposure>(&entry.event.body);
        if (exposure != nullptr) {
            m_selectSets.run(entry.id);
            while (m_selectSets.next()) {
                exposure->sets.push_back(setOf(m_selectSets));
            }
        }
    }
    return entries;
}

std::vector<LogEntry> EventLog::collectLift(Statement& rows, base::LiftId lift)
{
    std::vector<LogEntry> entries = entriesIn(rows);
    std::unordered_map<std::int64_t, Exposure*> exposures;
    for (LogEntry& entry : entries) {
        if (auto* exposure = std::get_if<Exposure>(&entry.event.body)) {
            exposures.emplace(entry.id.value(), exposure);
        }
    }
    m_selectSetsOfLift.run(lift);
    std::int64_t event = 0;
    Exposure* exposure = nullptr;
    while (m_selectSetsOfLift.next()) {
        constexpr int kEventColumn = 6;
        if (const std::int64_t id = m_selectSetsOfLift.integer(kEventColumn); id != event) {
            event = id;
            const auto found = exposures.find(id);
            exposure = found == exposures.end() ? nullptr : found->second;
        }
        if (exposure != nullptr) {
            exposure->sets.push_back(setOf(m_selectSetsOfLift));
        }
    }
    return entries;
}

std::vector<LogEntry> EventLog::presentEntries(base::LiftId lift)
{
    m_selectPresentOfLift.run(lift);
    return collectLift(m_selectPresentOfLift, lift);
}

std::vector<LogEntry> EventLog::allEntries(base::LiftId lift)
{
    m_selectAllOfLift.run(lift);
    return collectLift(m_selectAllOfLift, lift);
}

std::vector<LogEntry> EventLog::presentEntriesIn(base::SessionId session)
{
    Statement rows(m_database, entriesWhere("e.session_id = ? AND e.is_void = 0 AND NOT EXISTS (SELECT 1 FROM event later WHERE later.replaces_id = e.id) "
                                            "ORDER BY e.lift_id, e.day, coalesce(e.root_id, e.id)"));
    rows.run(session);
    return collect(rows);
}

std::vector<LogEntry> EventLog::lastEntries(base::LiftId lift, int most)
{
    Statement rows(m_database, entriesWhere("e.lift_id = ? AND e.is_void = 0 AND NOT EXISTS (SELECT 1 FROM event later WHERE later.replaces_id = e.id) "
                                            "ORDER BY e.day DESC, coalesce(e.root_id, e.id) DESC LIMIT ?"));
    rows.run(lift, most);
    return collect(rows);
}

std::vector<LogEntry> EventLog::versionsOf(const LogEntry& version)
{
    Statement rows(m_database, entriesWhere("e.lift_id = ? AND coalesce(e.root_id, e.id) = ? ORDER BY e.id"));
    rows.run(version.lift, version.root);
    return collect(rows);
}

std::optional<LogEntry> EventLog::entry(base::EventId id)
{
    Statement rows(m_database, entriesWhere("e.id = ?"));
    rows.run(id);
    std::vector<LogEntry> entries = collect(rows);
    return entries.empty() ? std::nullopt : std::optional(std::move(entries.front()));
}

std::vector<LogEntry> EventLog::entriesOf(base::ActId act)
{
    Statement rows(m_database, entriesWhere("e.act_id = ? ORDER BY e.id"));
    rows.run(act);
    return collect(rows);
}

bool EventLog::isReplaced(base::EventId id)
{
    Statement later(m_database, QStringLiteral("SELECT 1 FROM event WHERE replaces_id = ?"));
    return later.run(id) && later.next();
}

}  // namespace chalk::store
