#include "app/commands/plan_desk.h"

#include "app/commands/direction_json.h"
#include "app/commands/direction_text.h"
#include "app/commands/plan_showing.h"
#include "app/commands/plan_wishes.h"
#include "core/direction/fit_facts.h"
#include "core/direction/planned_load.h"
#include "core/store/plan_writer.h"
#include "ui/common/formats.h"
#include "ui/common/plan_words.h"
#include "ui/print/plan_paper.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace chalk::app {

using direction::ClientPlan;
using ui::common::qstring;

bool PlanDesk::read()
{
    auto file = store::ClientReader(m_database).read(m_client, m_context.today);
    auto lifts = m_plans.lifts(m_client, m_context.today);
    auto history = m_plans.history(m_client);
    auto running = m_plans.running(m_client, m_context.today);
    if (!file || !lifts || !history || !running) {
        fail(!file ? file.error() : !lifts ? lifts.error() : !history ? history.error() : running.error());
        return false;
    }
    m_file = *std::move(file);
    m_lifts = *std::move(lifts);
    m_history = *std::move(history);
    m_running = *std::move(running);
    return true;
}

std::optional<ClientPlan> PlanDesk::last() const
{
    for (const ClientPlan& plan : m_history) {
        if (plan.begunOn <= m_context.today) {
            return m_running ? m_running : plan;
        }
    }
    return std::nullopt;
}

int PlanDesk::run()
{
    if (!read()) {
        return m_status;
    }
    if (is("tests")) {
        return showTests();
    }
    if (is("direction")) {
        return showDraft();
    }
    if (is("missed")) {
        return changeMissed();
    }
    if (is("end")) {
        return end();
    }
    const bool isAboutPlan = is("compare") || is("csv") || is("pdf");
    const auto plan = isAboutPlan ? last() : m_running;
    if (isAboutPlan && !plan) {
        return m_context.refuse(QStringLiteral("%1 has no plan").arg(qstring(m_file.client.name)));
    }
    return plan ? show(*plan) : showDirections();
}

int PlanDesk::showDraft()
{
    const auto plan = plannedFor(m_context, m_client, m_file.client.sessionsPerWeek, m_lifts);
    if (!plan) {
        return kWrongUse;
    }
    return is("begin") ? begin(*plan) : show(*plan);
}

int PlanDesk::begin(const ClientPlan& plan)
{
    if (clients::isBlocked(m_file.clearance, m_context.today)) {
        return m_context.giveUp(
            QStringLiteral("no plan was begun with %1: loaded work waits for clearance").arg(qstring(m_file.client.name)));
    }
    const auto follows = [this](const direction::PlannedLift& planned) {
        const direction::LiftForPlan* lift = direction::liftWith(m_lifts, planned.lift);
        return lift != nullptr && lift->canFollow();
    };
    const auto& planned = plan.plan.wishes.lifts;
    if (std::none_of(planned.begin(), planned.end(), follows)) {
        return m_context.giveUp(QStringLiteral("no plan was begun with %1: no lift can follow one yet. Each is on hold, without a load or "
                                               "without a known single; a test of three to five repetitions gives one")
                                    .arg(qstring(m_file.client.name)));
    }
    const auto outcome = store::PlanWriter(m_database, m_context.atUtc).begin(plan);
    if (!outcome) {
        return fail(outcome.error());
    }
    const auto running = m_plans.history(m_client);
    if (!running) {
        return fail(running.error());
    }
    return showWritten(running->front().id,
                       m_running ? QStringLiteral("Begun. The plan that ran before is ended.") : QStringLiteral("Begun."));
}

int PlanDesk::changeMissed()
{
    if (!m_running) {
        return m_context.refuse(
            QStringLiteral("no plan of %1 runs on %2").arg(qstring(m_file.client.name), qstring(m_context.today.toString())));
    }
    const auto wish = missedWish(m_context, m_running->plan);
    if (!wish) {
        return kWrongUse;
    }
    ClientPlan changed = *m_running;
    for (std::size_t i = 0; i < changed.singles.size(); ++i) {
        changed.singles[i] = direction::singleNow(*m_running, i, m_lifts);
    }
    changed.plan = direction::withMissedWeeks(m_running->plan, wish->mondays, wish->way);
    const auto outcome = store::PlanWriter(m_database, m_context.atUtc).change(changed, m_context.today);
    return outcome ? showWritten(changed.id,
                                 wish->way == direction::MissedWeeks::Shift ? QStringLiteral("Shifted.") : QStringLiteral("Squeezed."))
                   : fail(outcome.error());
}

int PlanDesk::end()
{
    if (!m_running) {
        return m_context.refuse(
            QStringLiteral("no plan of %1 runs on %2").arg(qstring(m_file.client.name), qstring(m_context.today.toString())));
    }
    const auto outcome = store::PlanWriter(m_database, m_context.atUtc)
                             .end(m_running->id, m_context.today, m_context.value(QStringLiteral("note")).toStdString());
    return outcome ? showWritten(m_running->id, QStringLiteral("Ended: its lifts go back to the ladder.")) : fail(outcome.error());
}

int PlanDesk::showWritten(base::PlanId id, const QString& said)
{
    const auto plan = m_plans.plan(id);
    if (!plan) {
        return fail(plan.error());
    }
    if (!m_context.isJson()) {
        m_context.out << said << '\n';
    }
    return show(*plan);
}

int PlanDesk::show(const ClientPlan& plan)
{
    const auto paper = ui::print::readPlanPaper(m_database, m_catalogue, plan, m_context.today);
    if (!paper) {
        return fail(paper.error());
    }
    return showPlan(m_context, *paper);
}

int PlanDesk::showTests()
{
    const auto tests = m_plans.tests(m_client);
    if (!tests) {
        return fail(tests.error());
    }
    showTestedMaxima(m_context, *tests, m_lifts, m_catalogue);
    return kDone;
}

int PlanDesk::showDirections()
{
    const direction::FitFacts facts = direction::fitFactsOf(m_lifts, m_file.cautions, m_file.client.sessionsPerWeek);
    const auto fits = direction::fitsOf(facts);
    const auto before = last();
    if (m_context.isJson()) {
        m_context.out << QJsonDocument(
                             QJsonObject{{QStringLiteral("client"), static_cast<qint64>(m_client.value())},
                                         {QStringLiteral("name"), qstring(m_file.client.name)},
                                         {QStringLiteral("last_day"), before ? QJsonValue(qstring(direction::lastDayOf(*before).toString()))
                                                                             : QJsonValue(QJsonValue::Null)},
                                         {QStringLiteral("sessions"), facts.sessionsAWeek},
                                         {QStringLiteral("directions"), directionsJson(fits)}})
                             .toJson();
        return kDone;
    }
    m_context.out << qstring(m_file.client.name) << ": no plan runs"
                  << (before ? QStringLiteral("; the last one is %1").arg(ui::common::planPlaceText(*before, m_context.today)) : QString())
                  << ".\n";
    writeDirections(m_context.out, fits, facts);
    m_context.out << "Staying in the cycle is a choice too: nothing is forced.\n";
    return kDone;
}

}  // namespace chalk::app
