#include "core/store/trend_work.h"

#include "core/progression/lift_machine.h"
#include "core/store/event_log.h"
#include "core/store/lift_codec.h"
#include "core/store/trend_lifts.h"

#include <algorithm>
#include <unordered_map>

namespace chalk::store {

namespace {

using analysis::BodyShare;
using analysis::DatedWork;
using checkin::LiftDay;
using progression::Exposure;
using progression::LiftMachine;

/// An entry without the sets of an exposure.
LogEntry entryIn(const Statement& row, Database& database)
{
    LogEntry entry;
    entry.id = base::EventId(row.integer(0));
    entry.lift = base::LiftId(row.integer(1));
    entry.session = base::SessionId(row.integer(2));
    entry.event.date = row.date(3);
    if (auto body = bodyOf(row.qtext(4), row.opened(5, row.sealedRow("event", row.integer(1), row.integer(3), row.text(4)), "detail"), row.number(6))) {
        entry.event.body = *std::move(body);
    } else {
        database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: entry %2 cannot be read").arg(database.target()).arg(row.integer(0))});
    }
    return entry;
}

void readSetsInto(std::vector<LogEntry>& entries, Database& database, base::ClientId client)
{
    std::unordered_map<std::int64_t, LogEntry*> byId;
    for (LogEntry& entry : entries) {
        byId.emplace(entry.id.value(), &entry);
    }
    Statement rows(database, QStringLiteral("SELECT s.event_id, s.load_centi, s.amount, s.rir, s.rest_s, s.steadiness, s.is_warmup FROM event_set s "
                                            "JOIN event e ON e.id = s.event_id WHERE e.lift_id IN (SELECT id FROM lift WHERE client_id = ?) "
                                            "ORDER BY s.event_id, s.position"));
    rows.run(client);
    while (rows.next()) {
        const auto at = byId.find(rows.integer(0));
        if (auto* exposure = at == byId.end() ? nullptr : std::get_if<Exposure>(&at->second->event.body)) {
            exposure->sets.push_back({base::Load::fromCenti(rows.number(1)), rows.number(2), static_cast<std::int16_t>(rows.number(3)),
                                      static_cast<std::int16_t>(rows.number(4)), static_cast<progression::Steadiness>(rows.number(5)), rows.number(6) != 0});
        }
    }
}

/// What counts now of all lifts of a client: by lift, date and place in the day.
std::vector<LogEntry> readEntries(Database& database, base::ClientId client)
{
    std::vector<LogEntry> entries;
    Statement rows(database, QStringLiteral("SELECT e.id, e.lift_id, e.session_id, e.day, e.type, e.detail, e.pain FROM event e WHERE e.lift_id IN "
                                            "(SELECT id FROM lift WHERE client_id = ?) AND e.is_void = 0 AND NOT EXISTS "
                                            "(SELECT 1 FROM event later WHERE later.replaces_id = e.id) ORDER BY e.lift_id, e.day, coalesce(e.root_id, e.id)"));
    rows.run(client);
    while (rows.next()) {
        entries.push_back(entryIn(rows, database));
    }
    readSetsInto(entries, database, client);
    return entries;
}

/// Puts one lift through its entries. Answers whether all of them could be.
bool replayInto(ClientLog& log, checkin::TrendedLift& record, LiftMachine& machine, const LogEntry& entry)
{
    const progression::Event& event = entry.event;
    if (machine.faultOf(event.body)) {
        return false;
    }
    LiftDay day{event.date, {}, {}, std::holds_alternative<progression::Swap>(event.body), std::holds_alternative<progression::LighterWeek>(event.body)};
    if (const auto* exposure = std::get_if<Exposure>(&event.body)) {
        day.single = analysis::bestSingle(*exposure, machine.setup(), machine.kit());
        log.work.push_back({event.date, entry.session, entry.lift, record.pattern,
                            analysis::workOf(*exposure, machine.setup(), machine.kit(), BodyShare::LeftOut)});
    }
    machine.apply(event.date, event.body);
    day.after = machine.prescriptionOn(event.date);
    record.days.push_back(day);
    return true;
}

checkin::TrendedLift emptyRecordOf(const TrendLift& lift)
{
    checkin::TrendedLift record;
    record.lift = lift.id;
    record.pattern = lift.pattern;
    record.unit = lift.setup.unit;
    record.metresPerRep = lift.setup.policy.metresPerRep;
    return record;
}

void putExercise(checkin::TrendedLift& record, const progression::Kit& kit, const lifts::Catalogue& catalogue)
{
    const lifts::Exercise* exercise = catalogue.find(kit.exerciseKey);
    record.exerciseKey = kit.exerciseKey;
    record.name = exercise == nullptr ? kit.exerciseKey : exercise->name;
    record.measure = kit.measure;
}

/// The work of one entry after another; the rows of an entry stand together.
class WorkSum {
public:
    explicit WorkSum(const std::vector<TrendLift>& lifts)
    {
        for (const TrendLift& lift : lifts) {
            m_lifts.emplace(lift.id.value(), &lift);
        }
    }

    void take(const Statement& row)
    {
        const std::int64_t id = row.integer(0);
        if (id != m_id) {
            finish();
            m_id = id;
            m_lift = row.integer(1);
            m_day = row.date(2);
            m_root = row.integer(3);
        }
        m_exposure.sets.push_back({base::Load::fromCenti(row.number(4)), row.number(5)});
    }

    std::map<base::ClientId, std::vector<DatedWork>> finished()
    {
        finish();
        return std::move(m_work);
    }

private:
    void finish()
    {
        const auto at = m_lifts.find(m_lift);
        if (!m_exposure.sets.empty() && at != m_lifts.end()) {
            const TrendLift& lift = *at->second;
            const analysis::Work work = analysis::workOf(m_exposure, lift.setup, lift.kitAt(m_day, m_root), BodyShare::LeftOut);
            m_work[lift.client].push_back({m_day, {}, lift.id, lift.pattern, work});
        }
        m_exposure.sets.clear();
    }

    std::unordered_map<std::int64_t, const TrendLift*> m_lifts;
    std::map<base::ClientId, std::vector<DatedWork>> m_work;
    std::int64_t m_id = 0;
    std::int64_t m_lift = 0;
    base::Date m_day;
    std::int64_t m_root = 0;
    Exposure m_exposure;
};

}  // namespace

ClientLog readClientLog(Database& database, const lifts::Catalogue& catalogue, base::ClientId client, base::Date day)
{
    ClientLog log;
    const std::vector<LogEntry> entries = readEntries(database, client);
    for (const TrendLift& lift : readTrendLifts(database, client)) {
        auto machine = LiftMachine::create(lift.setup);
        checkin::TrendedLift record = emptyRecordOf(lift);
        bool isWhole = machine.has_value();
        auto entry = std::lower_bound(entries.begin(), entries.end(), lift.id, [](const LogEntry& one, base::LiftId id) { return one.lift < id; });
        for (; isWhole && entry != entries.end() && entry->lift == lift.id && entry->event.date <= day; ++entry) {
            isWhole = replayInto(log, record, *machine, *entry);
        }
        if (!isWhole) {
            database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: lift %2 cannot be replayed").arg(database.target()).arg(lift.id.value())});
            return {};
        }
        putExercise(record, machine->kit(), catalogue);
        log.lifts.push_back(std::move(record));
    }
    return log;
}

std::map<base::ClientId, std::vector<DatedWork>> readAllWork(Database& database, const checkin::DayRange& days)
{
    const std::vector<TrendLift> lifts = readTrendLifts(database);
    WorkSum sum(lifts);
    Statement rows(database, QStringLiteral("SELECT e.id, e.lift_id, e.day, coalesce(e.root_id, e.id), s.load_centi, s.amount FROM event e "
                                            "JOIN event_set s ON s.event_id = e.id WHERE e.day BETWEEN ? AND ? AND e.is_void = 0 AND s.is_warmup = 0 AND "
                                            "NOT EXISTS (SELECT 1 FROM event later WHERE later.replaces_id = e.id) ORDER BY e.id, s.position"));
    rows.run(days.from, days.to);
    while (rows.next()) {
        sum.take(rows);
    }
    return sum.finished();
}

}  // namespace chalk::store
