#include "core/store/lift_cache.h"

#include "core/store/lift_codec.h"
#include "core/store/lift_setup_rows.h"

namespace chalk::store {

namespace {

using progression::LiftMachine;

void failAsDamaged(Database& database, base::LiftId lift)
{
    database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: lift %2 cannot be read").arg(database.target()).arg(lift.value())});
}

const QString& putStateSql()
{
    static const QString sql = QStringLiteral(
        "INSERT INTO lift_state (lift_id, exercise_key, stage, stage_since_day, cycle, held_since_day, hold_pain, misses, flags, last_work_day, "
        "first_work_day, last_event_day, rules, kit, state) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (lift_id) DO UPDATE SET "
        "exercise_key = excluded.exercise_key, stage = excluded.stage, stage_since_day = excluded.stage_since_day, cycle = excluded.cycle, "
        "held_since_day = excluded.held_since_day, hold_pain = excluded.hold_pain, misses = excluded.misses, flags = excluded.flags, "
        "last_work_day = excluded.last_work_day, first_work_day = excluded.first_work_day, last_event_day = excluded.last_event_day, "
        "rules = excluded.rules, kit = excluded.kit, state = excluded.state");
    return sql;
}

}  // namespace

LiftCache::LiftCache(Database& database, EventLog& log)
    : m_database(database),
      m_log(log),
      m_selectLift(database, QStringLiteral("SELECT client_id, pattern, unit, region, body_mass_centi, kit, start_stage, policy, started_day "
                                            "FROM lift WHERE id = ?")),
      m_selectState(database, QStringLiteral("SELECT state, kit, rules, last_event_day, first_work_day, stage_since_day, held_since_day, hold_pain "
                                             "FROM lift_state WHERE lift_id = ?")),
      m_putState(database, putStateSql()),
      m_selectLog(database, QStringLiteral("SELECT log FROM lift_log WHERE lift_id = ?")),
      m_putLog(database, QStringLiteral("INSERT INTO lift_log (lift_id, log) VALUES (?, ?) ON CONFLICT (lift_id) DO UPDATE SET log = excluded.log")),
      m_putReached(database, QStringLiteral("INSERT INTO stage_reached (lift_id, cycle, stage, day) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING")),
      m_addVolume(database, QStringLiteral("INSERT INTO client_week (monday, client_id, load_volume) VALUES (?, ?, ?) ON CONFLICT (monday, client_id) "
                                           "DO UPDATE SET load_volume = client_week.load_volume + excluded.load_volume"))
{
}

std::optional<LiftCache::Setup> LiftCache::readSetup(base::LiftId lift)
{
    if (!m_selectLift.run(lift)) {
        return std::nullopt;
    }
    if (!m_selectLift.next()) {
        m_database.fail({StoreError::Kind::Refused, QStringLiteral("There is no lift %1 in %2").arg(lift.value()).arg(m_database.target())});
        return std::nullopt;
    }
    const auto pattern = lifts::patternOf(m_selectLift.text(1));
    auto setup = setupIn(m_selectLift, 2);
    if (!pattern || !setup) {
        failAsDamaged(m_database, lift);
        return std::nullopt;
    }
    return Setup{base::ClientId(m_selectLift.integer(0)), *pattern, m_selectLift.date(8), *std::move(setup)};
}

std::optional<CachedLift> LiftCache::readFresh(base::LiftId lift)
{
    auto read = readSetup(lift);
    if (!read) {
        return std::nullopt;
    }
    auto machine = LiftMachine::create(std::move(read->setup));
    if (!machine) {
        failAsDamaged(m_database, lift);
        return std::nullopt;
    }
    return CachedLift{lift, read->client, read->pattern, *std::move(machine), read->started, read->started, {}, {}, {}, {}, 0};
}

std::optional<CachedLift> LiftCache::read(base::LiftId lift)
{
    auto read = readSetup(lift);
    if (!read || !m_selectState.run(lift)) {
        return std::nullopt;
    }
    const bool isThere = m_selectState.next();
    const auto state = isThere ? stateOf(m_selectState.opened(0, m_selectState.sealedRow("lift_state", lift), "state")) : std::nullopt;
    auto kit = isThere && m_selectState.isNull(1) ? std::optional(read->setup.kit) : kitOf(m_selectState.qtext(1));
    auto machine = state && kit ? std::optional(LiftMachine::resume(std::move(read->setup), *std::move(kit), *state)) : std::nullopt;
    if (!machine || !*machine) {
        // It is only a cache: the log says the same.
        auto logged = replay(lift);
        return logged ? std::optional(std::move(logged->replay.lift)) : std::nullopt;
    }
    return CachedLift{lift,
                      read->client,
                      read->pattern,
                      **std::move(machine),
                      read->started,
                      m_selectState.date(5),
                      rulesOf(m_selectState.qtext(2)),
                      m_selectState.optionalDate(3),
                      m_selectState.optionalDate(4),
                      m_selectState.optionalDate(6),
                      m_selectState.number(7)};
}

std::vector<StageReached> LiftCache::readReached(base::LiftId lift)
{
    std::vector<StageReached> reached;
    Statement rows(m_database, QStringLiteral("SELECT cycle, stage, day FROM stage_reached WHERE lift_id = ? ORDER BY cycle, stage"));
    rows.run(lift);
    while (rows.next()) {
        reached.push_back({rows.number(0), static_cast<progression::Stage>(rows.number(1)), rows.date(2)});
    }
    return reached;
}

std::optional<LoggedReplay> LiftCache::replay(base::LiftId id)
{
    auto fresh = readFresh(id);
    std::vector<LogEntry> entries = m_log.presentEntries(id);
    if (!fresh || m_database.failure()) {
        return std::nullopt;
    }
    std::vector<const progression::Event*> events;
    for (const LogEntry& entry : entries) {
        events.push_back(&entry.event);
    }
    auto replay = replayOf(*std::move(fresh), events);
    if (!replay) {
        const progression::ReplayFault& fault = replay.error();
        m_database.fail({StoreError::Kind::Refused, QStringLiteral("The entry of %1 cannot stand: %2 %3")
                                                        .arg(qstringOf(events[fault.index.value_or(0)]->date.toString()),
                                                             qstringOf(fault.fault.field), qstringOf(fault.fault.reason))});
        return std::nullopt;
    }
    return LoggedReplay{*std::move(replay), std::move(entries)};
}

progression::RuleList LiftCache::append(CachedLift& lift, const progression::Event& event)
{
    const Step step = advance(lift, event);
    putState(lift);
    putReached(lift.id, step.reached);
    addToLog(lift.id, step.logged);
    addVolume(lift.client, event.date - event.date.weekday(), step.volume);
    return step.rules;
}

void LiftCache::keep(const LiftReplay& replay)
{
    Statement(m_database, QStringLiteral("DELETE FROM stage_reached WHERE lift_id = ?")).run(replay.lift.id);
    putState(replay.lift);
    putReached(replay.lift.id, replay.reached);
    m_putLog.run(replay.lift.id, replay.log);
}

void LiftCache::changeVolumes(base::ClientId client, const WeekVolumes& before, const WeekVolumes& after)
{
    WeekVolumes difference = after;
    for (const auto& [monday, volume] : before) {
        difference[monday] += -1 * volume;
    }
    for (const auto& [monday, volume] : difference) {
        addVolume(client, monday, volume);
    }
}

void LiftCache::putState(const CachedLift& lift)
{
    Vault& vault = m_database.vault();
    const progression::LiftState& state = lift.machine.state();
    const bool isSwapped = lift.machine.kit() != lift.machine.setup().kit;
    m_putState.run(lift.id, lift.machine.kit().exerciseKey, progression::keyOf(state.stage), lift.stageSince, state.cycle, lift.heldSince, lift.holdPain,
                   state.misses, int{state.flags.bits()}, state.lastWork, lift.firstWork, lift.lastEvent, textOfRules(lift.decided),
                   isSwapped ? std::optional(textOfKit(lift.machine.kit())) : std::nullopt,
                   vault.sealed(vault.toWrite("lift_state", lift.id), "state", textOfState(state)));
}

void LiftCache::addToLog(base::LiftId lift, const QByteArray& logged)
{
    if (!logged.isEmpty() && m_selectLog.run(lift)) {
        const QByteArray before = m_selectLog.next() ? m_selectLog.bytes(0) : QByteArray();
        m_putLog.run(lift, before + logged);
    }
}

void LiftCache::putReached(base::LiftId lift, const std::vector<StageReached>& reached)
{
    for (const StageReached& one : reached) {
        m_putReached.run(lift, one.cycle, progression::numberOf(one.stage), one.day);
    }
}

void LiftCache::addVolume(base::ClientId client, base::Date monday, base::Mass volume)
{
    if (volume == base::Mass()) {
        return;
    }
    m_addVolume.run(monday, client, volume);
    if (volume < base::Mass()) {
        Statement(m_database, QStringLiteral("DELETE FROM client_week WHERE monday = ? AND client_id = ? AND load_volume = 0")).run(monday, client);
    }
}

void LiftCache::rebuildAll()
{
    for (const char* table : {"lift_state", "stage_reached", "client_week", "lift_log"}) {
        Statement(m_database, QStringLiteral("DELETE FROM ") + QLatin1String(table)).run();
    }
    std::vector<base::LiftId> lifts;
    Statement rows(m_database, QStringLiteral("SELECT id FROM lift ORDER BY id"));
    rows.run();
    while (rows.next()) {
        lifts.emplace_back(rows.integer(0));
    }
    for (const base::LiftId lift : lifts) {
        if (const auto logged = replay(lift)) {
            keep(logged->replay);
            changeVolumes(logged->replay.lift.client, {}, logged->replay.weeks);
        }
    }
}

Result<void> completeCaches(Database& database)
{
    if (!database.may(Right::Record)) {
        return {};  // who may not see what is cached waits for somebody who may
    }
    {
        const Snapshot snapshot(database);
        Statement missing(database, QStringLiteral("SELECT 1 FROM lift WHERE NOT EXISTS (SELECT 1 FROM lift_state WHERE lift_id = lift.id) "
                                                   "OR NOT EXISTS (SELECT 1 FROM stage_reached WHERE lift_id = lift.id) "
                                                   "OR NOT EXISTS (SELECT 1 FROM lift_log WHERE lift_id = lift.id) LIMIT 1"));
        if (!missing.run() || !missing.next()) {
            return database.failure() ? Result<void>(tl::make_unexpected(*database.failure())) : Result<void>();
        }
    }
    if (database.isReadOnly()) {
        return storeError(StoreError::Kind::Older,
                          QStringLiteral("%1 has to be opened for writing once: what is worked out from its log is not there").arg(database.target()));
    }
    Transaction transaction(database);
    EventLog log(database);
    LiftCache(database, log).rebuildAll();
    return transaction.commit();
}

}  // namespace chalk::store
