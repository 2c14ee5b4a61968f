#include "core/store/plan_reader.h"

#include "core/progression/block_run.h"
#include "core/progression/load_steps.h"
#include "core/store/client_reader.h"
#include "core/store/lift_cache.h"
#include "core/store/plan_rows.h"

#include <algorithm>
#include <memory>
#include <span>

namespace chalk::store {

namespace {

using direction::PlanSingle;
using direction::SpokenSingle;

/// One lift of a client as a plan is made from it; failures go to the database.
class PlanLiftReading {
public:
    PlanLiftReading(Database& database, base::Date day) : m_day(day), m_log(database), m_cache(database, m_log) {}

    [[nodiscard]] std::optional<direction::LiftForPlan> read(base::LiftId id, const std::vector<direction::TestedMaximum>& tests);

private:
    [[nodiscard]] std::vector<SpokenSingle> spokenFor(base::LiftId id, const progression::LiftMachine& lift,
                                                      const std::vector<direction::TestedMaximum>& tests);

    base::Date m_day;
    EventLog m_log;
    LiftCache m_cache;
};

/// A test of three to five repetitions speaks for a single by the chart.
std::optional<SpokenSingle> testedSingle(const direction::TestedMaximum& test, const progression::LiftMachine& lift)
{
    progression::Exposure exposure;
    exposure.sets.push_back({});
    exposure.sets.back().load = test.load;
    exposure.sets.back().amount = test.reps.value();
    exposure.sets.back().rir = 0;
    return direction::spokenIn(test.day, exposure, lift, true);
}

/// Follows the plan of a lift along its events, so as to know which exposures were its tests (see rule N-2).
class TestsOfThePlan {
public:
    void begin(const progression::Block& block)
    {
        m_run.reset();
        if (!block.weeks.empty()) {
            m_run = progression::BlockRun{std::make_shared<const progression::Block>(block), block.single, base::Date(), 0};
        }
    }
    void end() { m_run.reset(); }

    /// Counts an exposure of a day; whether the plan asked for a test in it.
    [[nodiscard]] bool isTest(base::Date day)
    {
        const auto place = m_run ? progression::placeOn(day, *m_run) : std::nullopt;
        if (!place) {
            return false;
        }
        progression::countExposure(day, *m_run);
        return m_run->block->weeks[place->week].work[place->exposure].isTest;
    }

private:
    std::optional<progression::BlockRun> m_run;
};

/// The single of the plan that a lift follows, as results have moved it: tested where it was so from the start, or as a test of the plan left it.
PlanSingle singleInPlan(const progression::BlockRun& run, std::span<const SpokenSingle> spoken)
{
    const bool isFromStart = run.block->isTested && run.single == run.block->single;
    const base::Date begin = run.block->weeks.front().monday;
    const bool isFound = std::ranges::any_of(spoken, [&](const SpokenSingle& one) { return one.isTested && one.date >= begin && one.load == run.single; });
    return {run.single, isFromStart || isFound};
}

/// What tests and exposures since the last swap spoke for, by date.
std::vector<SpokenSingle> PlanLiftReading::spokenFor(base::LiftId id, const progression::LiftMachine& lift,
                                                     const std::vector<direction::TestedMaximum>& tests)
{
    std::vector<SpokenSingle> spoken;
    base::Date sinceSwap;
    TestsOfThePlan plan;
    for (const LogEntry& entry : m_log.presentEntries(id)) {
        if (entry.event.date > m_day) {
            break;
        }
        if (std::holds_alternative<progression::Swap>(entry.event.body)) {
            spoken.clear();
            sinceSwap = entry.event.date;
            plan.end();
        } else if (const auto* block = std::get_if<progression::Block>(&entry.event.body)) {
            plan.begin(*block);
        } else if (const auto* exposure = std::get_if<progression::Exposure>(&entry.event.body)) {
            if (const auto single = direction::spokenIn(entry.event.date, *exposure, lift, plan.isTest(entry.event.date))) {
                spoken.push_back(*single);
            }
        }
    }
    for (auto test = tests.rbegin(); test != tests.rend(); ++test) {
        const bool isIts = test->lift == id && test->day >= sinceSwap && test->day <= m_day && test->end != direction::TestEnd::Pain;
        if (const auto single = isIts ? testedSingle(*test, lift) : std::nullopt) {
            spoken.push_back(*single);
        }
    }
    std::stable_sort(spoken.begin(), spoken.end(), [](const SpokenSingle& a, const SpokenSingle& b) { return a.date < b.date; });
    return spoken;
}

std::optional<direction::LiftForPlan> PlanLiftReading::read(base::LiftId id, const std::vector<direction::TestedMaximum>& tests)
{
    auto cached = m_cache.read(id);
    if (!cached) {
        return std::nullopt;
    }
    const progression::LiftState& state = cached->machine.state();
    const std::vector<SpokenSingle> spoken = spokenFor(id, cached->machine, tests);
    const auto single = state.block ? std::optional(singleInPlan(*state.block, spoken)) : direction::startingSingle(spoken, m_day);
    const std::string key = cached->machine.kit().exerciseKey;
    const bool isStalled = state.flags.has(progression::Flag::Stalled);
    return direction::LiftForPlan{id, cached->pattern, key, std::move(cached->machine), single, cached->firstWork, isStalled};
}

std::vector<base::LiftId> liftsOf(Database& database, base::ClientId client)
{
    std::vector<base::LiftId> ids;
    Statement rows(database, QStringLiteral("SELECT id FROM lift WHERE client_id = ? ORDER BY id"));
    rows.run(client);
    while (rows.next()) {
        ids.emplace_back(rows.integer(0));
    }
    return ids;
}

/// The working sets of an exposure.
void addSets(std::vector<direction::DoneSet>& done, base::Date date, const progression::Exposure& exposure, const progression::LoadSteps& steps)
{
    for (const progression::SetRecord& set : exposure.sets) {
        if (!set.isWarmup) {
            done.push_back({date, steps.effectiveLoad(set.load), base::Reps(set.amount)});
        }
    }
}

}  // namespace

std::vector<direction::ClientPlan> PlanReader::plansWhere(const QString& condition, std::int64_t id)
{
    std::vector<direction::ClientPlan> plans;
    Statement rows(m_database, QStringLiteral("SELECT ") + planColumns() + QStringLiteral(" FROM plan p WHERE ") + planCounts() + condition +
                                   QStringLiteral(" ORDER BY p.begun_day DESC, coalesce(p.root_id, p.id) DESC"));
    rows.run(id);
    while (rows.next()) {
        plans.push_back(planOf(rows));
    }
    if (m_database.failure()) {
        plans.clear();
    }
    return plans;
}

Result<std::vector<direction::ClientPlan>> PlanReader::history(base::ClientId client)
{
    const Snapshot snapshot(m_database);
    return m_database.resultOf(plansWhere(QStringLiteral(" AND p.client_id = ?"), client.value()));
}

Result<std::optional<direction::ClientPlan>> PlanReader::running(base::ClientId client, base::Date day)
{
    const Snapshot snapshot(m_database);
    std::optional<direction::ClientPlan> found;
    for (direction::ClientPlan& plan : plansWhere(QStringLiteral(" AND p.client_id = ?"), client.value())) {
        if (!found && direction::isRunning(plan, day)) {
            found = std::move(plan);
        }
    }
    return m_database.resultOf(std::move(found));
}

Result<direction::ClientPlan> PlanReader::plan(base::PlanId id)
{
    const Snapshot snapshot(m_database);
    auto plans = plansWhere(QStringLiteral(" AND coalesce(p.root_id, p.id) = ?"), id.value());
    if (plans.empty()) {
        return m_database.failure() ? tl::make_unexpected(*m_database.failure())
                                    : Result<direction::ClientPlan>(storeError(StoreError::Kind::Refused, QStringLiteral("There is no plan %1").arg(id.value())));
    }
    return m_database.resultOf(std::move(plans.front()));
}

Result<std::map<base::ClientId, PlanStanding>> PlanReader::standings(base::Date day)
{
    const Snapshot snapshot(m_database);
    std::map<base::ClientId, PlanStanding> standings;
    Statement rows(m_database, QStringLiteral("SELECT p.client_id, p.begun_day, p.last_day FROM plan p WHERE ") + planCounts() +
                                   QStringLiteral(" AND p.begun_day <= ? ORDER BY p.begun_day, coalesce(p.root_id, p.id)"));
    rows.run(day);
    while (rows.next()) {
        standings[base::ClientId(rows.integer(0))] = {rows.date(1), rows.date(2)};
    }
    return m_database.resultOf(std::move(standings));
}

Result<std::vector<direction::TestedMaximum>> PlanReader::tests(base::ClientId client)
{
    const Snapshot snapshot(m_database);
    std::vector<direction::TestedMaximum> tests;
    Statement rows(m_database, QStringLiteral("SELECT ") + testedMaximumColumns() + QStringLiteral(" FROM tested_maximum m WHERE ") +
                                   testedMaximumCounts() + QStringLiteral(" AND m.client_id = ? ORDER BY m.day DESC, coalesce(m.root_id, m.id) DESC"));
    rows.run(client);
    while (rows.next()) {
        tests.push_back(testedMaximumOf(rows));
    }
    return m_database.resultOf(std::move(tests));
}

Result<std::vector<direction::LiftForPlan>> PlanReader::lifts(base::ClientId client, base::Date day)
{
    const Snapshot snapshot(m_database);
    const auto made = tests(client);
    if (!made) {
        return tl::make_unexpected(made.error());
    }
    PlanLiftReading reading(m_database, day);
    std::vector<direction::LiftForPlan> lifts;
    for (const base::LiftId id : liftsOf(m_database, client)) {
        if (auto lift = reading.read(id, *made)) {
            lifts.push_back(*std::move(lift));
        }
    }
    std::stable_sort(lifts.begin(), lifts.end(), [](const auto& a, const auto& b) { return a.pattern < b.pattern; });
    return m_database.resultOf(std::move(lifts));
}

Result<std::vector<std::vector<direction::DoneSet>>> PlanReader::done(const direction::ClientPlan& plan, base::Date day)
{
    const Snapshot snapshot(m_database);
    EventLog log(m_database);
    LiftCache cache(m_database, log);
    std::vector<std::vector<direction::DoneSet>> done;
    const base::Date last = std::min(day, direction::lastDayOf(plan));
    for (const direction::PlannedLift& planned : plan.plan.wishes.lifts) {
        std::vector<direction::DoneSet>& sets = done.emplace_back();
        const auto lift = cache.read(planned.lift);
        for (const LogEntry& entry : lift ? log.presentEntries(planned.lift) : std::vector<LogEntry>()) {
            const auto* exposure = std::get_if<progression::Exposure>(&entry.event.body);
            if (exposure != nullptr && entry.event.date >= plan.begunOn && entry.event.date <= last) {
                addSets(sets, entry.event.date, *exposure, progression::LoadSteps(lift->machine.setup(), lift->machine.kit(), lift->machine.loads()));
            }
        }
    }
    return m_database.resultOf(std::move(done));
}

}  // namespace chalk::store
