#include "core/store/lift_cache.h"

#include "core/progression/exposure_facts.h"
#include "core/store/lift_codec.h"

#include <algorithm>

namespace chalk::store {

namespace {

using progression::Event;
using progression::Exposure;
using progression::LiftMachine;
using progression::LiftSetup;
using progression::Rule;

/// Whether a decision says anything about what comes next; what was only kept does not.
bool isTelling(const progression::RuleList& rules)
{
    return std::any_of(rules.begin(), rules.end(), [](Rule rule) {
        return rule != Rule::P3 && rule != Rule::P5 && rule != Rule::V1 && rule != Rule::K3 && rule != Rule::U3;
    });
}

void judge(CachedLift& lift, const Event& event, progression::RuleList& rules)
{
    rules = lift.machine.apply(event.date, event.body);
    if (isTelling(rules)) {
        lift.decided = rules;
    }
    lift.lastEvent = event.date;
    if (!lift.firstWork && lift.machine.state().lastWork == event.date && progression::isLoaded(lift.machine.state().stage)) {
        lift.firstWork = event.date;
    }
}

/// Adds an exposure's load volume to its week; the machine is as before the event.
void addVolume(WeekVolumes& weeks, const LiftMachine& machine, const Event& event)
{
    const auto* exposure = std::get_if<Exposure>(&event.body);
    const double volume = exposure == nullptr ? 0 : volumeKilograms(*exposure, machine.setup(), machine.kit());
    if (volume > 0) {
        weeks[event.date - event.date.weekday()] += volume;
    }
}

std::vector<std::int64_t> idsOf(Statement& rows)
{
    std::vector<std::int64_t> ids;
    while (rows.next()) {
        ids.push_back(rows.integer(0));
    }
    return ids;
}

void failAsDamaged(Database& database, base::LiftId lift)
{
    database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: lift %2 cannot be read").arg(database.target()).arg(lift.value())});
}

}  // namespace

double volumeKilograms(const Exposure& exposure, const LiftSetup& setup, const progression::Kit& kit)
{
    double volume = 0;
    for (const progression::SetRecord& set : exposure.sets) {
        if (!set.isWarmup && set.load.centi() > 0) {
            volume += base::Mass::of(set.load, setup.unit).kilograms() * kit.pieces * progression::repsOf(set.amount, kit.measure, setup.policy);
        }
    }
    return volume;
}

LiftCache::LiftCache(Database& database, EventLog& log)
    : m_database(database),
      m_log(log),
      m_selectLift(database, QStringLiteral("SELECT client_id, pattern, unit, region, body_mass_centi, kit, start_stage, policy, started_day "
                                            "FROM lift WHERE id = ?")),
      m_selectState(database, QStringLiteral("SELECT state, kit, rules, last_event_day, first_work_day FROM lift_state WHERE lift_id = ?")),
      m_putState(database,
                 QStringLiteral("INSERT INTO lift_state (lift_id, exercise_key, stage, cycle, is_on_hold, flags, last_work_day, first_work_day, last_event_day, "
                                "rules, kit, state) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (lift_id) DO UPDATE SET "
                                "exercise_key = excluded.exercise_key, stage = excluded.stage, cycle = excluded.cycle, is_on_hold = excluded.is_on_hold, flags = excluded.flags, "
                                "last_work_day = excluded.last_work_day, first_work_day = excluded.first_work_day, "
                                "last_event_day = excluded.last_event_day, rules = excluded.rules, kit = excluded.kit, state = excluded.state")),
      m_noteStage(database, QStringLiteral("INSERT INTO stage_reached (lift_id, cycle, stage, day) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING")),
      m_addVolume(database, QStringLiteral("INSERT INTO client_week (monday, client_id, load_volume) VALUES (?, ?, ?) ON CONFLICT (monday, client_id) "
                                           "DO UPDATE SET load_volume = load_volume + excluded.load_volume"))
{
}

std::optional<CachedLift> LiftCache::readFresh(base::LiftId lift)
{
    if (!m_selectLift.run(lift)) {
        return std::nullopt;
    }
    if (!m_selectLift.next()) {
        m_database.fail({StoreError::Kind::Refused, QStringLiteral("There is no lift %1").arg(lift.value())});
        return std::nullopt;
    }
    LiftSetup setup;
    setup.unit = unitOf(m_selectLift.qtext(2));
    const auto pattern = lifts::patternOf(m_selectLift.text(1));
    const auto region = lifts::regionOf(m_selectLift.text(3));
    auto kit = kitOf(m_selectLift.qtext(5));
    const auto stage = progression::stageOf(m_selectLift.text(6));
    auto policy = policyOf(m_selectLift.qtext(7), setup.unit);
    if (!pattern || !region || !kit || !stage || !policy) {
        failAsDamaged(m_database, lift);
        return std::nullopt;
    }
    setup.region = *region;
    setup.bodyMass = m_selectLift.optionalLoad(4);
    setup.kit = *std::move(kit);
    setup.startStage = *stage;
    setup.policy = *std::move(policy);
    const base::ClientId client(m_selectLift.integer(0));
    const base::Date started = m_selectLift.date(8);
    auto machine = LiftMachine::create(std::move(setup));
    if (!machine) {
        failAsDamaged(m_database, lift);
        return std::nullopt;
    }
    return CachedLift{lift, client, *pattern, *std::move(machine), {}, {}, {}, started};
}

std::optional<CachedLift> LiftCache::read(base::LiftId lift)
{
    auto cached = readFresh(lift);
    if (!cached || !m_selectState.run(lift) || !m_selectState.next()) {
        return cached;
    }
    const auto state = stateOf(m_selectState.qtext(0));
    auto kit = m_selectState.isNull(1) ? std::optional(cached->machine.setup().kit) : kitOf(m_selectState.qtext(1));
    if (!state || !kit) {
        failAsDamaged(m_database, lift);
        return std::nullopt;
    }
    auto machine = LiftMachine::resume(cached->machine.setup(), *std::move(kit), *state);
    if (!machine) {
        failAsDamaged(m_database, lift);
        return std::nullopt;
    }
    cached->machine = *std::move(machine);
    cached->decided = rulesOf(m_selectState.qtext(2));
    cached->lastEvent = m_selectState.optionalDate(3);
    cached->firstWork = m_selectState.optionalDate(4);
    return cached;
}

void LiftCache::noteStage(const CachedLift& lift, base::Date day)
{
    m_noteStage.run(lift.id, lift.machine.state().cycle, progression::numberOf(lift.machine.state().stage), day);
}

void LiftCache::store(const CachedLift& lift)
{
    const auto& state = lift.machine.state();
    const bool isSwapped = lift.machine.kit() != lift.machine.setup().kit;
    m_putState.run(lift.id, lift.machine.kit().exerciseKey, progression::keyOf(state.stage), state.cycle, state.isOnHold, int{state.flags.bits()}, state.lastWork, lift.firstWork,
                   lift.lastEvent, textOfRules(lift.decided), isSwapped ? std::optional(textOfKit(lift.machine.kit())) : std::nullopt,
                   textOfState(state));
}

progression::RuleList LiftCache::append(CachedLift& lift, const Event& event)
{
    progression::RuleList rules;
    WeekVolumes weeks;
    addVolume(weeks, lift.machine, event);
    judge(lift, event, rules);
    noteStage(lift, event.date);
    store(lift);
    addVolumes(lift.client, weeks);
    return rules;
}

void LiftCache::judgeAll(CachedLift& lift, std::span<const Event> ordered, WeekVolumes* weeks, std::vector<progression::Decision>* decisions)
{
    noteStage(lift, lift.started);
    for (std::size_t i = 0; i < ordered.size(); ++i) {
        const Event& event = ordered[i];
        if (const auto fault = lift.machine.faultOf(event.body)) {
            m_database.fail({StoreError::Kind::Refused, QStringLiteral("%1, lift %2, entry of %3: %4 %5")
                                                            .arg(m_database.target(), QString::number(lift.id.value()), qstringOf(event.date.toString()),
                                                                 qstringOf(fault->field), qstringOf(fault->reason))});
            return;
        }
        if (weeks != nullptr) {
            addVolume(*weeks, lift.machine, event);
        }
        const auto stage = lift.machine.state().stage;
        const int cycle = lift.machine.state().cycle;
        progression::RuleList rules;
        judge(lift, event, rules);
        if (lift.machine.state().stage != stage || lift.machine.state().cycle != cycle) {
            noteStage(lift, event.date);
        }
        if (decisions != nullptr) {
            decisions->push_back({i, event.date, rules, lift.machine.prescriptionOn(event.date)});
        }
    }
    store(lift);
}

std::vector<progression::Decision> LiftCache::rebuild(base::LiftId id, WeekVolumes* weeks)
{
    std::vector<progression::Decision> decisions;
    if (auto lift = readFresh(id)) {
        std::vector<Event> events;
        for (LogEntry& entry : m_log.presentEntries(id)) {
            events.push_back(std::move(entry.event));
        }
        Statement(m_database, QStringLiteral("DELETE FROM stage_reached WHERE lift_id = ?")).run(id);
        judgeAll(*lift, events, weeks, &decisions);
    }
    return decisions;
}

void LiftCache::addVolumes(base::ClientId client, const WeekVolumes& weeks)
{
    for (const auto& [monday, volume] : weeks) {
        m_addVolume.run(monday, client, volume);
    }
}

void LiftCache::rebuildClient(base::ClientId client)
{
    Statement(m_database, QStringLiteral("DELETE FROM client_week WHERE client_id = ?")).run(client);
    Statement rows(m_database, QStringLiteral("SELECT id FROM lift WHERE client_id = ? ORDER BY id"));
    rows.run(client);
    WeekVolumes weeks;
    for (const std::int64_t lift : idsOf(rows)) {
        rebuild(base::LiftId(lift), &weeks);
    }
    addVolumes(client, weeks);
}

void LiftCache::rebuildAll()
{
    for (const char* table : {"lift_state", "stage_reached", "client_week"}) {
        Statement(m_database, QStringLiteral("DELETE FROM ") + QLatin1String(table)).run();
    }
    Statement rows(m_database, QStringLiteral("SELECT id FROM client ORDER BY id"));
    rows.run();
    for (const std::int64_t client : idsOf(rows)) {
        rebuildClient(base::ClientId(client));
    }
}

}  // namespace chalk::store
