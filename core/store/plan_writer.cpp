#include "core/store/plan_writer.h"

#include "core/direction/plan_blocks.h"
#include "core/exchange/client_plan_json.h"
#include "core/store/act_work.h"
#include "core/store/plan_reader.h"
#include "core/store/plan_rows.h"
#include "core/store/session_states.h"

#include <algorithm>

namespace chalk::store {

namespace {

using direction::ClientPlan;

/// One act on the plans of a client.
class PlanWork {
public:
    PlanWork(Database& database, base::ClientId client) : m_database(database), m_work(database), m_log(database), m_cache(database, m_log), m_client(client) {}

    void begin(ActKind kind, const QString& atUtc, base::CoachId coach) { m_work.begin(kind, atUtc, coach, m_client); }
    void check(const ClientPlan& plan);
    void write(const ClientPlan& plan) { insertPlan(m_database, plan, m_work.outcome().act); }
    /// The lifts of the plan that can do so follow its weeks from that of `day` on.
    void follow(const ClientPlan& plan, base::Date day);
    /// Lifts of `plan` that follow a block, but those of `kept`, go back to the ladder.
    void leave(const ClientPlan& plan, const ClientPlan* kept, base::Date day);
    [[nodiscard]] ActWork& work() { return m_work; }

private:
    [[nodiscard]] std::optional<progression::LiftState> stateOf(base::LiftId lift);

    Database& m_database;
    ActWork m_work;
    EventLog m_log;
    LiftCache m_cache;
    base::ClientId m_client;
};

void PlanWork::check(const ClientPlan& plan)
{
    if (const auto fault = direction::faultOf(plan)) {
        m_work.refuse(QStringLiteral("The plan cannot be kept: `%1` %2").arg(QString::fromStdString(fault->field), QString::fromUtf8(fault->reason.data(), static_cast<qsizetype>(fault->reason.size()))));
        return;
    }
    for (const direction::PlannedLift& lift : plan.plan.wishes.lifts) {
        if (m_work.clientOf(lift.lift) != m_client) {
            m_work.refuse(QStringLiteral("Lift %1 is not one of client %2").arg(lift.lift.value()).arg(m_client.value()));
        }
    }
}

std::optional<progression::LiftState> PlanWork::stateOf(base::LiftId lift)
{
    const auto cached = m_work.isRefused() ? std::nullopt : m_cache.read(lift);
    return cached ? std::optional(cached->machine.state()) : std::nullopt;
}

void PlanWork::follow(const ClientPlan& plan, base::Date day)
{
    for (std::size_t i = 0; i < plan.singles.size() && !m_work.isRefused(); ++i) {
        const base::LiftId lift = plan.plan.wishes.lifts[i].lift;
        const auto state = stateOf(lift);
        if (!state || !progression::isLoaded(state->stage) || state->isOnHold || plan.singles[i].load == base::Load()) {
            continue;
        }
        const progression::Block block = direction::blockOf(plan.plan, i, day, plan.singles[i].load, plan.singles[i].isTested, plan.note);
        const bool isSame = state->block && state->block->block->weeks == block.weeks && state->block->single == block.single;
        if (!block.weeks.empty() && !isSame) {
            m_work.edit().add(lift, {day, block}, {});
        }
    }
}

void PlanWork::leave(const ClientPlan& plan, const ClientPlan* kept, base::Date day)
{
    for (const direction::PlannedLift& planned : plan.plan.wishes.lifts) {
        const auto isIt = [&planned](const direction::PlannedLift& one) { return one.lift == planned.lift; };
        const bool isKept = kept != nullptr && std::any_of(kept->plan.wishes.lifts.begin(), kept->plan.wishes.lifts.end(), isIt);
        const auto state = isKept ? std::nullopt : stateOf(planned.lift);
        if (state && state->block) {
            m_work.edit().add(planned.lift, {day, progression::Block{}}, {});
        }
    }
}

/// What is there now is not what was seen: a conflict.
void comparePlan(Database& database, const ClientPlan& plan, const ClientPlan& now, const ClientPlan& seen)
{
    Conflict conflict{ConflictAbout::Plan, plan.client};
    conflict.yours = exchange::toJson(plan);
    conflict.theirs = exchange::toJson(now);
    Statement last(database, QStringLiteral("SELECT id FROM plan WHERE root_id = ? OR id = ? ORDER BY id DESC LIMIT 1"));
    if (last.run(plan.id, plan.id) && last.next()) {
        nameLastAct(database, conflict, QStringLiteral("plan"), QStringLiteral("id"), last.integer(0));
    }
    refuseChanged(database, std::move(conflict), exchange::toJson(seen));
}

}  // namespace

PlanWriter::PlanWriter(Database& database, std::function<QString()> atUtc, base::CoachId coach)
    : m_database(database), m_atUtc(std::move(atUtc)), m_coach(coach)
{
}

Result<ActOutcome> PlanWriter::begin(ClientPlan plan)
{
    PlanWork work(m_database, plan.client);
    plan.id = {};
    work.check(plan);
    work.begin(ActKind::Plan, m_atUtc(), m_coach);
    auto former = PlanReader(m_database).running(plan.client, plan.begunOn);
    if (former && *former) {
        work.leave(**former, &plan, plan.begunOn);
        (*former)->endedOn = plan.begunOn;
        work.write(**former);
    }
    if (!work.work().isRefused()) {
        work.write(plan);
        work.follow(plan, plan.begunOn);
    }
    return work.work().finish();
}

Result<ActOutcome> PlanWriter::change(const ClientPlan& plan, base::Date day, const std::optional<ClientPlan>& seen)
{
    PlanWork work(m_database, plan.client);
    work.check(plan);
    const auto running = PlanReader(m_database).running(plan.client, day);
    if (running && (!*running || (*running)->id != plan.id)) {
        work.work().refuse(QStringLiteral("The plan does not run any more"));
    }
    if (seen && running && *running) {
        comparePlan(m_database, plan, **running, *seen);
    }
    work.begin(ActKind::Plan, m_atUtc(), m_coach);
    if (running && !work.work().isRefused()) {
        work.write(plan);
        work.leave(**running, &plan, day);
        work.follow(plan, day);
    }
    return work.work().finish();
}

Result<ActOutcome> PlanWriter::end(base::PlanId plan, base::Date day, const std::string& note)
{
    const auto found = PlanReader(m_database).plan(plan);
    if (!found) {
        return tl::make_unexpected(found.error());
    }
    PlanWork work(m_database, found->client);
    if (!direction::isRunning(*found, day)) {
        work.work().refuse(QStringLiteral("The plan does not run any more"));
    }
    work.begin(ActKind::Plan, m_atUtc(), m_coach);
    if (!work.work().isRefused()) {
        ClientPlan ended = *found;
        ended.endedOn = day;
        ended.note = note.empty() ? ended.note : note;
        work.write(ended);
        work.leave(ended, nullptr, day);
    }
    return work.work().finish();
}

Result<ActOutcome> PlanWriter::recordTest(direction::TestedMaximum test, const std::optional<progression::Exposure>& exposure, base::SessionId session)
{
    ActWork work(m_database);
    if (work.clientOf(test.lift) != test.client) {
        work.refuse(QStringLiteral("Lift %1 is not one of client %2").arg(test.lift.value()).arg(test.client.value()));
    } else if (test.reps < base::Reps(1) || test.reps > base::Reps(direction::kMostTestReps)) {
        work.refuse(QStringLiteral("A test has 1 to %1 repetitions").arg(direction::kMostTestReps));
    }
    work.begin(ActKind::Test, m_atUtc(), m_coach, test.client);
    test.act = work.outcome().act;
    insertTestedMaximum(m_database, test);
    if (exposure && !work.isRefused()) {
        work.edit().add(test.lift, {test.day, *exposure}, session);
        if (!session.isNone()) {
            work.changeSession(session, sessions::SessionState::Recorded);
        }
    }
    return work.finish();
}

}  // namespace chalk::store
