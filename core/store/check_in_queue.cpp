#include "core/analysis/attendance.h"
#include "core/checkin/finding.h"
#include "core/store/check_in_reader.h"
#include "core/store/decision_reader.h"
#include "core/store/lift_log_codec.h"
#include "core/store/roster_facts.h"

#include <algorithm>
#include <unordered_map>

namespace chalk::store {

namespace {

using plateau::LoggedExposure;

constexpr int kAttendanceDays = 28;

/// What was decided about a client.
struct Decided {
    std::optional<base::Date> nextReview;
    std::optional<checkin::Decision> thisWeek;
};

/// Everything that the queue is made from, read in a few passes.
class QueueMaking {
public:
    QueueMaking(Database& database, base::Date day) : m_database(database), m_day(day), m_log(database), m_cache(database, m_log) {}

    [[nodiscard]] std::vector<checkin::QueueEntry> entries();

private:
    void readRoster();
    void readDecisions();
    void readAttendance();
    void readLogs();
    void lookAtLayoffs(checkin::ClientFacts& facts, const RosterEntry& client);
    [[nodiscard]] std::vector<checkin::JudgedLift> judgedLifts(const RosterEntry& client, const checkin::ClientFacts& facts);
    [[nodiscard]] std::optional<checkin::QueueEntry> entryOf(const RosterEntry& client);

    Database& m_database;
    base::Date m_day;
    EventLog m_log;
    LiftCache m_cache;
    std::vector<RosterEntry> m_roster;
    std::unordered_map<std::int64_t, Decided> m_decided;
    std::unordered_map<std::int64_t, plateau::CheckDay> m_checks;
    std::unordered_map<std::int64_t, std::vector<LoggedExposure>> m_logs;
};

void QueueMaking::readRoster()
{
    if (auto roster = RosterReader(m_database).read(m_day)) {
        m_roster = *std::move(roster);
    } else {
        m_database.fail(roster.error());
    }
}

void QueueMaking::readDecisions()
{
    const auto decisions = DecisionReader(m_database).decisionsIn({base::Date::fromDays(0), m_day});
    if (!decisions) {
        m_database.fail(decisions.error());
        return;
    }
    const base::Date monday = m_day - m_day.weekday();
    for (const checkin::Decision& decision : *decisions) {
        Decided& decided = m_decided[decision.client.value()];
        decided.nextReview = decision.nextReview;
        if (decision.day >= monday) {
            decided.thisWeek = decision;
        }
    }
}

void QueueMaking::readAttendance()
{
    Statement rows(m_database, QStringLiteral("SELECT client_id, state, count(*), min(id) FROM session WHERE day BETWEEN ? AND ? GROUP BY client_id, state"));
    rows.run(m_day - (kAttendanceDays - 1), m_day);
    while (rows.next()) {
        plateau::CheckDay& check = m_checks[rows.integer(0)];
        if (const auto came = analysis::wasComeTo(rows.known(sessions::sessionStateOf(rows.text(1)), 1, "session", 3))) {
            check.plannedSessions += rows.number(2);
            check.attendedSessions += *came ? rows.number(2) : 0;
        }
    }
}

/// A lift that carries no load has nothing that could be judged.
void QueueMaking::readLogs()
{
    Statement rows(m_database, QStringLiteral("SELECT g.lift_id, g.log FROM lift_log g JOIN lift_state t ON t.lift_id = g.lift_id "
                                              "WHERE t.stage NOT IN ('pattern', 'control') AND t.held_since_day IS NULL"));
    rows.run();
    while (rows.next()) {
        if (auto log = loggedIn(rows.bytes(1))) {
            m_logs.emplace(rows.integer(0), *std::move(log));
        } else {
            m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: the log of lift %2 cannot be read").arg(m_database.target()).arg(rows.integer(0))});
        }
    }
}

void QueueMaking::lookAtLayoffs(checkin::ClientFacts& facts, const RosterEntry& client)
{
    for (std::size_t i = 0; i < facts.lifts.size(); ++i) {
        if (!mayHaveLayoff(facts.lifts[i], m_day)) {
            continue;
        }
        if (const auto lift = m_cache.read(client.lifts[i].id)) {
            applyLayoff(facts.lifts[i], lift->machine.prescriptionOn(m_day));
        }
    }
}

std::vector<checkin::JudgedLift> QueueMaking::judgedLifts(const RosterEntry& client, const checkin::ClientFacts& facts)
{
    plateau::CheckDay check = m_checks[client.client.id.value()];
    check.date = m_day;
    std::vector<checkin::JudgedLift> judged;
    for (std::size_t i = 0; i < facts.lifts.size(); ++i) {
        const auto log = m_logs.find(client.lifts[i].id.value());
        judged.push_back(checkin::judgedLiftOf(client.lifts[i].id, facts.lifts[i],
                                               log == m_logs.end() ? std::span<const LoggedExposure>() : std::span<const LoggedExposure>(log->second), check));
    }
    return judged;
}

std::optional<checkin::QueueEntry> QueueMaking::entryOf(const RosterEntry& client)
{
    checkin::ClientFacts facts = factsOf(client);
    lookAtLayoffs(facts, client);
    const bool mayTrain = !clients::isBlocked(client.clearance, m_day) && !(facts.awayUntil && m_day < *facts.awayUntil);
    const auto judged = judgedLifts(client, facts);
    const Decided& decided = m_decided[client.client.id.value()];
    checkin::QueueEntry entry;
    entry.client = client.client.id;
    entry.name = client.client.name;
    entry.finding = checkin::findingOf(checkin::attentionFor(facts, m_day), judged, mayTrain);
    if (!decided.thisWeek && !checkin::isDue(entry.finding, decided.nextReview, m_day)) {
        return std::nullopt;
    }
    for (const checkin::JudgedLift& lift : judged) {
        if (lift.lift == entry.finding.lift) {
            entry.exerciseKey = lift.exerciseKey;
        }
    }
    for (const sessions::SessionState state : client.lastSessions) {
        if (const auto came = analysis::wasComeTo(state)) {
            ++entry.of;
            entry.came += *came ? 1 : 0;
        }
    }
    entry.decided = decided.thisWeek;
    return entry;
}

std::vector<checkin::QueueEntry> QueueMaking::entries()
{
    readRoster();
    readDecisions();
    readAttendance();
    readLogs();
    std::vector<checkin::QueueEntry> entries;
    for (const RosterEntry& client : m_roster) {
        if (auto entry = entryOf(client)) {
            entries.push_back(*std::move(entry));
        }
    }
    std::sort(entries.begin(), entries.end(), checkin::isBefore);
    return entries;
}

}  // namespace

Result<std::vector<checkin::QueueEntry>> CheckInReader::queue(base::Date day)
{
    const Snapshot snapshot(m_database);
    return m_database.resultOf(QueueMaking(m_database, day).entries());
}

}  // namespace chalk::store
