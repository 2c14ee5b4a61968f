#include "ui/floor/maximum_test_desk.h"

#include "core/lifts/catalogue.h"
#include "core/lifts/repetition_chart.h"
#include "core/progression/load_steps.h"
#include "core/store/plan_reader.h"
#include "core/store/plan_writer.h"
#include "core/store/record_writer.h"

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using lifts::CautionTag;

/// Conditions that speak against heavy single efforts in any lift. Common practice.
bool isAgainstHeavy(CautionTag tag)
{
    return tag == CautionTag::BloodPressure || tag == CautionTag::Pregnancy || tag == CautionTag::BoneDensity;
}

bool hasCautionFor(const lifts::Exercise& exercise, std::span<const clients::Caution> cautions)
{
    std::vector<CautionTag> tags;
    for (const clients::Caution& caution : cautions) {
        tags.insert(tags.end(), caution.tags.begin(), caution.tags.end());
    }
    return lifts::isRuledOut(exercise, tags) || !lifts::caresOf(exercise, tags).empty() || std::any_of(tags.begin(), tags.end(), isAgainstHeavy);
}

/// The single that what is due speaks for: its repetitions and its reserve, by the chart.
std::optional<base::Load> singleDue(const progression::LiftMachine& machine, const progression::Prescription& due)
{
    constexpr int kLastRow = 10;
    if (due.kind != progression::PrescriptionKind::Work) {
        return std::nullopt;
    }
    const auto share = lifts::chartShare(base::Reps(std::clamp(due.repsLow.value() + due.reserve, 1, kLastRow)));
    const progression::LoadSteps steps(machine.setup(), machine.kit(), machine.loads());
    const std::int64_t effective = steps.effectiveLoad(due.load).centi();
    return effective > 0 && share ? std::optional(base::Load::fromCenti(static_cast<std::int32_t>(effective * 1000 / share->value()))) : std::nullopt;
}

chalk::direction::TestCase testCaseOf(const chalk::direction::LiftForPlan& lift, const TestedClient& client, const lifts::Exercise& exercise, base::Date day)
{
    chalk::direction::TestCase facts;
    facts.isCleared = !clients::isBlocked(client.clearance, day);
    facts.hasCaution = hasCautionFor(exercise, client.cautions);
    facts.isOnHold = lift.machine.state().isOnHold;
    facts.isLoaded = progression::isLoaded(lift.machine.prescriptionOn(day).stage);
    facts.pattern = lift.pattern;
    facts.measure = lift.machine.kit().measure;
    facts.pieces = lift.machine.kit().pieces;
    facts.bodyShare = lift.machine.kit().bodyShare;
    facts.daysSinceFirstLoad = lift.firstLoad ? day - *lift.firstLoad : 0;
    return facts;
}

}  // namespace

store::Result<TestedLift> MaximumTestDesk::read(const TestedClient& client, base::LiftId lift, const lifts::Exercise& exercise, base::Date day, base::SessionId session)
{
    const auto known = store::PlanReader(m_database).lifts(client.client.id, day);
    if (!known) {
        return tl::make_unexpected(known.error());
    }
    const auto found = std::find_if(known->begin(), known->end(), [lift](const chalk::direction::LiftForPlan& one) { return one.lift == lift; });
    if (found == known->end()) {
        return store::storeError(store::StoreError::Kind::Refused, QStringLiteral("There is no lift %1 of client %2").arg(lift.value()).arg(client.client.id.value()));
    }
    const progression::Prescription due = found->machine.prescriptionOn(day);
    const bool isKnown = found->single && found->single->load > base::Load();
    const auto single = isKnown ? std::optional(found->single->load) : singleDue(found->machine, due);
    const auto reason = chalk::direction::reasonAgainstTest(testCaseOf(*found, client, exercise, day));
    const bool isPlanTest = due.block && due.block->isTest;
    return TestedLift{client.client.id, client.client.name, lift, exercise, found->machine, single.value_or(base::Load()), reason, isPlanTest, day,
                      isPlanTest ? session : base::SessionId()};
}

store::Result<store::ActOutcome> MaximumTestDesk::keep(const TestedLift& lift, const MaximumTestRun& run, const std::string& note)
{
    const auto exposure = run.exposure();
    if (const auto found = run.found(note)) {
        return store::PlanWriter(m_database, m_atUtc).recordTest(*found, exposure, lift.session);
    }
    if (!exposure) {
        return store::storeError(store::StoreError::Kind::Refused, QStringLiteral("Nothing was done"));
    }
    return store::RecordWriter(m_database, m_atUtc).record(lift.client, lift.session, {{lift.lift, {lift.day, *exposure}}});
}

}  // namespace chalk::ui::floor
