#include "core/store/roster_reader.h"

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
    m_database.begin();
    std::vector<RosterEntry> entries;
    readClients(entries);
    for (RosterEntry& entry : entries) {
        entry.clearance = readClearance(m_database, entry.client.id);
        entry.cautions = readCautions(m_database, entry.client.id, today);
    }
    readLifts(entries);
    readWeeks(entries, today);
    readSessions(entries, today);
    return m_database.resultOf(std::move(entries));
}

void RosterReader::readClients(std::vector<RosterEntry>& entries)
{
    Statement rows(m_database, QStringLiteral("SELECT ") + clientColumns() +
                                   QStringLiteral(", coach.name FROM client c JOIN coach ON coach.id = c.coach_id ORDER BY c.name, c.id"));
    rows.run();
    while (rows.next()) {
        RosterEntry& entry = entries.emplace_back();
        entry.client = clientOf(rows);
        entry.coachName = rows.text(kClientColumns);
    }
}

void RosterReader::readLifts(std::vector<RosterEntry>& entries)
{
    const auto clients = byClient(entries);
    Statement rows(m_database,
                   QStringLiteral("SELECT l.client_id, l.id, l.pattern, t.exercise_key, t.stage, t.cycle, t.is_on_hold, t.flags, t.last_work_day, "
                                  "t.first_work_day, r.day FROM lift l JOIN lift_state t ON t.lift_id = l.id LEFT JOIN stage_reached r ON "
                                  "r.lift_id = l.id AND r.cycle = t.cycle AND r.stage = CASE t.stage WHEN 'pattern' THEN 1 WHEN 'control' THEN 2 "
                                  "WHEN 'base_load' THEN 3 WHEN 'load_build' THEN 4 WHEN 'rep_build' THEN 5 WHEN 'set_build' THEN 6 ELSE 7 END"));
    rows.run();
    while (rows.next()) {
        const auto client = clients.find(rows.integer(0));
        const auto pattern = lifts::patternOf(rows.text(2));
        const auto stage = progression::stageOf(rows.text(4));
        if (client == clients.end() || !pattern || !stage) {
            continue;
        }
        client->second->lifts.push_back({base::LiftId(rows.integer(1)), *pattern, rows.text(3), *stage, rows.number(5), rows.number(6) != 0,
                                         progression::Flags::fromBits(static_cast<std::uint8_t>(rows.number(7))), rows.optionalDate(8),
                                         rows.optionalDate(9), rows.optionalDate(10)});
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
            client->second->weekVolumes[static_cast<std::size_t>((rows.date(1) - first) / 7)] = rows.real(2);
        }
    }
}

void RosterReader::readSessions(std::vector<RosterEntry>& entries, base::Date today)
{
    Statement past(m_database, QStringLiteral("SELECT day, state FROM session WHERE client_id = ? AND day <= ? AND state NOT IN ('planned', 'printed') "
                                              "ORDER BY day DESC, start_minute DESC LIMIT 12"));
    for (RosterEntry& entry : entries) {
        past.run(entry.client.id, today);
        while (past.next()) {
            const auto state = sessions::sessionStateOf(past.text(1)).value_or(sessions::SessionState::Missed);
            if (!entry.lastSession && state == sessions::SessionState::Recorded) {
                entry.lastSession = past.date(0);
            }
            entry.lastSessions.push_back(state);
        }
        std::reverse(entry.lastSessions.begin(), entry.lastSessions.end());
        const NextSession next = readNextSession(m_database, entry.client.id, today);
        entry.next = next.session;
        entry.nextTaken = next.taken;
    }
}

}  // namespace chalk::store
