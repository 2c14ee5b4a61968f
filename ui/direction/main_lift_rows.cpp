#include "ui/direction/main_lift_rows.h"

#include "core/direction/planned_load.h"
#include "core/lifts/repetition_chart.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::direction {

namespace {

using chalk::direction::BlockPlan;
using chalk::direction::LiftForPlan;
using chalk::direction::LiftRole;
using chalk::direction::NoTest;
using chalk::direction::Phase;
using chalk::direction::PlannedWork;
using chalk::direction::Wave;
using chalk::direction::WeekKind;

constexpr base::Milli kWholeSingle{1000};
constexpr base::Reps kTestReps{5};  // in place of a single

struct MainLiftText {
    Q_DECLARE_TR_FUNCTIONS(MainLift)
};

QString dash()
{
    return QStringLiteral("–");
}

/// Least and most of a figure over some weeks.
struct Span {
    int least = 0;
    int most = 0;
    bool isEmpty = true;

    void add(int value)
    {
        least = isEmpty ? value : std::min(least, value);
        most = isEmpty ? value : std::max(most, value);
        isEmpty = false;
    }
    [[nodiscard]] QString text() const { return least == most ? QString::number(least) : QStringLiteral("%1–%2").arg(least).arg(most); }
};

/// The exposures of a lift in the weeks of work of a phase that say what the phase is about.
std::vector<PlannedWork> phaseWork(const BlockPlan& plan, std::size_t lift, Phase phase)
{
    const bool isEachShown = plan.wishes.direction == chalk::direction::Direction::Strength && plan.wishes.wave == Wave::Undulating;
    std::vector<PlannedWork> found;
    for (const chalk::direction::PlanWeek& week : plan.weeks) {
        if (week.phase != phase || week.kind != WeekKind::Work || week.work[lift].empty()) {
            continue;
        }
        const auto last = isEachShown ? week.work[lift].end() : week.work[lift].begin() + 1;
        found.insert(found.end(), week.work[lift].begin(), last);
    }
    return found;
}

bool isAddedToBody(const LiftForPlan& lift)
{
    return std::holds_alternative<lifts::BodyAdded>(lift.machine.kit().equipment);
}

/// A load without its unit, which the column of what is done now says.
QString shortLoad(const LiftForPlan& lift, base::Load load)
{
    if (isAddedToBody(lift)) {
        return common::loadText(load, lift.machine.setup().unit, lift.machine.kit().pieces, true);
    }
    return lift.machine.kit().pieces == 2 ? QStringLiteral("2 × ") + common::numberText(load) : common::numberText(load);
}

QString loadsText(const LiftForPlan& lift, base::Load single, base::Milli least, base::Milli most)
{
    const auto low = chalk::direction::plannedLoad(lift, single, least);
    const auto high = chalk::direction::plannedLoad(lift, single, most);
    if (!low || !high) {
        Span share;
        share.add(least.value() / 10);
        share.add(most.value() / 10);
        return share.text() + QStringLiteral(" %");
    }
    if (*low == *high) {
        return shortLoad(lift, *low);
    }
    return isAddedToBody(lift) ? MainLiftText::tr("%1 to %2").arg(shortLoad(lift, *low), shortLoad(lift, *high))
                               : QStringLiteral("%1–%2").arg(shortLoad(lift, *low), common::numberText(*high));
}

QString phaseText(const std::vector<PlannedWork>& work, const LiftForPlan& lift, base::Load single)
{
    if (work.empty()) {
        return dash();
    }
    Span sets;
    Span reps;
    base::Milli least = work.front().scheme.share;
    base::Milli most = least;
    for (const PlannedWork& one : work) {
        sets.add(one.scheme.sets.value());
        reps.add(one.scheme.reps.value());
        reps.add(one.repsMost.value());
        least = std::min(least, one.scheme.share);
        most = std::max(most, one.scheme.share);
    }
    return MainLiftText::tr("%1 × %2 at %3").arg(sets.text(), reps.text(), loadsText(lift, single, least, most));
}

bool hasTest(const BlockPlan& plan, std::size_t lift)
{
    return std::ranges::any_of(plan.weeks, [lift](const chalk::direction::PlanWeek& week) { return std::ranges::any_of(week.work[lift], &PlannedWork::isTest); });
}

QString testText(const DirectionCase& client, const BlockPlan& plan, std::size_t lift, const DirectionLift& shown, base::Load single)
{
    if (!hasTest(plan, lift)) {
        return dash();
    }
    const bool isSingle = !noTestOf(client, shown);
    const auto load = chalk::direction::plannedLoad(shown.lift, single, isSingle ? kWholeSingle : lifts::chartShare(kTestReps).value_or(kWholeSingle));
    const QString what = isSingle ? MainLiftText::tr("single") : MainLiftText::tr("3–5 reps");
    return load ? MainLiftText::tr("%1, about %2").arg(what, shortLoad(shown.lift, *load)) : what;
}

MainLiftRow rowOf(const DirectionCase& client, const BlockPlan& plan, std::size_t lift, const DirectionLift& shown, base::Load single)
{
    MainLiftRow row{common::qstring(shown.name), nowText(shown), {}};
    for (const Phase phase : {Phase::Base, Phase::Build, Phase::Peak}) {
        row.phases[static_cast<std::size_t>(phase)] = phaseText(phaseWork(plan, lift, phase), shown.lift, single);
    }
    row.phases[static_cast<std::size_t>(Phase::Test)] = testText(client, plan, lift, shown, single);
    return row;
}

bool isTaggedForHeavy(const clients::Caution& caution)
{
    return std::ranges::any_of(caution.tags, [](lifts::CautionTag tag) {
        return tag == lifts::CautionTag::BloodPressure || tag == lifts::CautionTag::Pregnancy || tag == lifts::CautionTag::BoneDensity;
    });
}

}  // namespace

QString nowText(const DirectionLift& lift)
{
    const progression::Prescription& next = lift.next;
    const progression::LiftMachine& machine = lift.lift.machine;
    switch (next.kind) {
    case progression::PrescriptionKind::Hold:
        return MainLiftText::tr("on hold");
    case progression::PrescriptionKind::Rehearse:
        return MainLiftText::tr("without load");
    case progression::PrescriptionKind::Work:
        break;
    }
    return MainLiftText::tr("%1, %2 × %3")
        .arg(common::loadText(next.load, machine.setup().unit, machine.kit().pieces, isAddedToBody(lift.lift)))
        .arg(next.sets.value())
        .arg(common::targetText(next, machine.kit().measure, machine.setup().policy));
}

std::optional<NoTest> noTestOf(const DirectionCase& client, const DirectionLift& lift)
{
    const progression::LiftMachine& machine = lift.lift.machine;
    chalk::direction::TestCase test;
    test.isCleared = !client.isBlocked() && client.clearance.limits.empty();
    test.hasCaution = std::ranges::any_of(client.cautions, isTaggedForHeavy);
    test.isOnHold = machine.state().isOnHold;
    test.isLoaded = progression::isLoaded(machine.state().stage);
    test.pattern = lift.lift.pattern;
    test.measure = machine.kit().measure;
    test.pieces = machine.kit().pieces;
    test.bodyShare = machine.kit().bodyShare;
    test.daysSinceFirstLoad = lift.lift.firstLoad ? client.today - *lift.lift.firstLoad : 0;
    return chalk::direction::reasonAgainstTest(test);
}

std::vector<MainLiftRow> mainLiftRows(const DirectionCase& client, const BlockPlan& plan, const std::vector<chalk::direction::PlanSingle>& singles)
{
    const auto& planned = plan.wishes.lifts;
    const bool hasMain = std::ranges::find(planned, LiftRole::Main, &chalk::direction::PlannedLift::role) != planned.end();
    std::vector<MainLiftRow> rows;
    for (std::size_t i = 0; i < planned.size() && !plan.weeks.empty(); ++i) {
        const DirectionLift* lift = client.lift(planned[i].lift);
        if (lift != nullptr && (planned[i].role == LiftRole::Main || !hasMain)) {
            rows.push_back(rowOf(client, plan, i, *lift, singles[i].load));
        }
    }
    return rows;
}

}  // namespace chalk::ui::direction
