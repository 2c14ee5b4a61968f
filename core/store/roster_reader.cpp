#include "core/store/roster_reader.h"

#include "core/store/direction_standings.h"
#include "core/store/profile_rows.h"

#include <algorithm>
#include <unordered_map>

namespace chalk::store {

namespace {

/// The entries by the ids of their clients.
std::unordered_map<std::int64_t, RosterEntry*> byClient(std::vector<RosterEntry>& entries)
{
    std::unordered_map<std::int64_t, RosterEntry*> map;
    for (RosterEntry& entry : entries) {
        map.emplace(entry.client.id.value(), &entry);
    }
    return map;
}

}  // namespace

Result<std::vector<RosterEntry>> RosterReader::read(base::Date today)
{
    const Snapshot snapshot(m_database);
    std::vector<RosterEntry> entries;
    readClients(entries);
    if (m_database.may(Right::SeeHealth)) {
        readCautions(entries, today);
        readLifts(entries);
        readWeeks(entries, today);
        readDirections(entries, today);
    }
    readSessions(entries, today);
    return m_database.resultOf(std::move(entries));
}

void RosterReader::readClients(std::vector<RosterEntry>& entries)
{
    const bool maySee = m_database.may(Right::SeeHealth);
    const QString clearance = maySee ? QStringLiteral(", ") + clearanceColumns() : QString();
    const QString fromClearance = maySee ? QStringLiteral("LEFT JOIN clearance q ON q.client_id = c.id ") : QString();
    Statement rows(m_database, QStringLiteral("SELECT ") + clientColumnsFor(m_database) + QStringLiteral(", coach.name") + clearance +
                                   QStringLiteral(" FROM client c JOIN coach ON coach.id = c.coach_id ") + fromClearance + QStringLiteral("WHERE c.is_withdrawn = 0 ORDER BY c.name, c.id"));
    rows.run();
    while (rows.next()) {
        RosterEntry& entry = entries.emplace_back();
        entry.client = clientOf(rows);
        entry.coachName = rows.text(kClientColumns);
        entry.clearance = maySee ? clearanceOf(rows, kClientColumns + 1) : clients::Clearance();
    }
}

void RosterReader::readCautions(std::vector<RosterEntry>& entries, base::Date today)
{
    const auto clients = byClient(entries);
    Statement rows(m_database, QStringLiteral("SELECT ") + cautionColumns() +
                                   QStringLiteral(", client_id FROM caution WHERE until_day IS NULL OR until_day >= ? ORDER BY id"));
    rows.run(today);
    while (rows.next()) {
        if (const auto client = clients.find(rows.integer(kCautionColumns)); client != clients.end()) {
            client->second->cautions.push_back(cautionOf(rows));
        }
    }
}

void RosterReader::readLifts(std::vector<RosterEntry>& entries)
{
    const auto clients = byClient(entries);
    Statement rows(m_database, QStringLiteral("SELECT l.client_id, l.id, l.pattern, t.exercise_key, t.stage, t.cycle, t.misses, t.held_since_day, t.hold_pain, "
                                              "t.flags, t.last_work_day, t.first_work_day, t.stage_since_day FROM lift l JOIN lift_state t ON t.lift_id = l.id"));
    rows.run();
    while (rows.next()) {
        const auto client = clients.find(rows.integer(0));
        if (client == clients.end()) {
            continue;
        }
        const auto pattern = rows.known(lifts::patternOf(rows.text(2)), 2, "lift", 1);
        const auto stage = rows.known(progression::stageOf(rows.text(4)), 4, "lift", 1);
        const auto heldSince = rows.optionalDate(7);
        client->second->lifts.push_back({base::LiftId(rows.integer(1)), pattern, rows.text(3), stage, rows.number(5), rows.number(6), heldSince.has_value(),
                                         heldSince, rows.number(8), progression::Flags::fromBits(static_cast<std::uint8_t>(rows.number(9))),
                                         rows.optionalDate(10), rows.optionalDate(11), rows.date(12)});
    }
    for (RosterEntry& entry : entries) {
        std::sort(entry.lifts.begin(), entry.lifts.end(),
                  [](const LiftStand& a, const LiftStand& b) { return std::pair(a.pattern, a.id) < std::pair(b.pattern, b.id); });
    }
}

void RosterReader::readWeeks(std::vector<RosterEntry>& entries, base::Date today)
{
    const auto clients = byClient(entries);
    const base::Date monday = today - today.weekday();
    const base::Date first = monday - 7 * (static_cast<int>(kRosterWeeks) - 1);
    Statement rows(m_database, QStringLiteral("SELECT client_id, monday, load_volume FROM client_week WHERE monday BETWEEN ? AND ?"));
    rows.run(first, monday);
    while (rows.next()) {
        if (const auto client = clients.find(rows.integer(0)); client != clients.end()) {
            client->second->weekVolumes[static_cast<std::size_t>((rows.date(1) - first) / 7)] = base::Mass::fromRaw(rows.integer(2)).kilograms();
        }
    }
}

void RosterReader::readDirections(std::vector<RosterEntry>& entries, base::Date today)
{
    const auto standings = directionStandings(m_database, today);
    for (RosterEntry& entry : entries) {
        if (const auto standing = standings.find(entry.client.id); standing != standings.end()) {
            entry.direction = standing->second;
        }
    }
}

void RosterReader::readSessions(std::vector<RosterEntry>& entries, base::Date today)
{
    Statement past(m_database, QStringLiteral("SELECT day, state, id FROM session WHERE client_id = ? AND day <= ? AND state NOT IN ('planned', 'printed', 'withdrawn') "
                                              "ORDER BY day DESC, start_minute DESC LIMIT 12"));
    NextSessionSearch next(m_database);
    for (RosterEntry& entry : entries) {
        past.run(entry.client.id, today);
        while (past.next()) {
            const auto state = past.known(sessions::sessionStateOf(past.text(1)), 1, "session", 2);
            if (!entry.lastSession && state == sessions::SessionState::Recorded) {
                entry.lastSession = past.date(0);
            }
            entry.lastSessions.push_back(state);
        }
        std::reverse(entry.lastSessions.begin(), entry.lastSessions.end());
        const NextSession found = next.find(entry.client.id, today);
        entry.next = found.session;
        entry.nextTaken = found.taken;
    }
}

}  // namespace chalk::store
