#include "ui/direction/plan_facts.h"

#include "ui/common/formats.h"
#include "ui/direction/direction_desk.h"

namespace chalk::ui::direction {

namespace {

using chalk::direction::ClientPlan;
using chalk::direction::LiftForPlan;
using chalk::direction::WeekReview;

std::vector<LiftForPlan> plannedFrom(const DirectionCase& client)
{
    std::vector<LiftForPlan> lifts;
    for (const DirectionLift& one : client.lifts) {
        lifts.push_back(one.lift);
    }
    return lifts;
}

/// What was done of a lift; shares are of the single that the plan was made with. Where none was known, nothing is said of shares.
std::vector<WeekReview> reviewed(const DirectionCase& client, const ClientPlan& plan, std::size_t lift)
{
    const bool isKnown = plan.singles[lift].load > base::Load();
    const base::Load single = isKnown ? plan.singles[lift].load : base::Load::fromCenti(1);
    std::vector<WeekReview> weeks = chalk::direction::reviewOf(plan.plan, lift, single, client.done[lift]);
    for (WeekReview& week : weeks) {
        week.doneShare = isKnown ? week.doneShare : 0;
    }
    return weeks;
}

QString nameIn(const DirectionCase& client, base::LiftId id)
{
    const DirectionLift* lift = client.lift(id);
    return lift == nullptr ? QString() : common::qstring(lift->name);
}

}  // namespace

PlanEditorCase editorFacts(const DirectionCase& client, ClientPlan plan)
{
    PlanEditorCase facts;
    facts.plan = std::move(plan);
    facts.lifts = plannedFrom(client);
    for (const DirectionLift& one : client.lifts) {
        facts.names.push_back(common::qstring(one.name));
    }
    facts.client = common::qstring(client.client.name);
    facts.today = client.today;
    return facts;
}

ClientPlan planOf(const DirectionCase& client, const DirectionOffer& offer)
{
    return {{}, client.client.id, client.today, offer.plan, offer.singles, std::nullopt, {}};
}

MissedWeeksCase missedFacts(const DirectionCase& client)
{
    MissedWeeksCase facts{withLiftsTakenUp(client), client.done, {}, common::qstring(client.client.name), client.today};
    for (const ClosedDays& closed : client.closures) {
        facts.away.push_back({closed.first, closed.last, true});
    }
    if (client.client.awayUntil && *client.client.awayUntil > client.today) {
        facts.away.push_back({client.today, *client.client.awayUntil - 1, false});
    }
    return facts;
}

PlanComparisonCase comparisonFacts(const DirectionCase& client, const ClientPlan& plan)
{
    PlanComparisonCase facts{plan.plan, {}, common::qstring(client.client.name), client.today};
    for (std::size_t i = 0; i < plan.plan.wishes.lifts.size(); ++i) {
        facts.lifts.push_back({nameIn(client, plan.plan.wishes.lifts[i].lift), reviewed(client, plan, i)});
    }
    return facts;
}

PlanOutcomeCase outcomeFacts(const DirectionCase& client)
{
    const ClientPlan& plan = *client.over;
    PlanOutcomeCase outcome{plan, common::qstring(client.client.name), {}};
    for (std::size_t i = 0; i < plan.plan.wishes.lifts.size(); ++i) {
        const base::LiftId id = plan.plan.wishes.lifts[i].lift;
        const DirectionLift* lift = client.lift(id);
        OutcomeLift one;
        one.name = nameIn(client, id);
        one.before = plan.singles[i];
        one.weeks = reviewed(client, plan, i);
        one.painDays = client.painDays[i];
        if (lift != nullptr) {
            one.unit = lift->lift.machine.setup().unit;
            one.now = lift->lift.single;
            one.isOnHold = lift->lift.machine.state().isOnHold;
        }
        outcome.lifts.push_back(std::move(one));
    }
    return outcome;
}

}  // namespace chalk::ui::direction
