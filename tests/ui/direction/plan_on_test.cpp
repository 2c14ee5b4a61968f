#include "tests/ui/direction/plan_on_test.h"

#include "tests/support/lift_on_test.h"

namespace chalk::ui::direction {

namespace {

using chalk::direction::LiftForPlan;
using chalk::direction::LiftRole;
using chalk::direction::PlanSingle;

LiftForPlan liftOnPlan(int id, lifts::Pattern pattern, progression::LiftSetup setup, std::optional<PlanSingle> single)
{
    return {base::LiftId(id), pattern, "lift", progression::LiftMachine::create(std::move(setup)).value(), single, firstMonday() - 200, false};
}

}  // namespace

base::Date firstMonday()
{
    return *base::Date::fromYmd(2026, 11, 30);
}

std::vector<LiftForPlan> liftsOnTest()
{
    progression::LiftSetup pounds = test::lowerLift(test::fixedKit({20, 25, 30, 35, 40, 50}));
    pounds.unit = base::MassUnit::Pound;
    pounds.policy = progression::Policy::defaultsFor(pounds.unit);
    return {liftOnPlan(1, lifts::Pattern::Squat, test::lowerLift(), PlanSingle{test::kilos(100), false}),
            liftOnPlan(2, lifts::Pattern::HorizontalPush, test::lowerLift(), PlanSingle{test::kilos(80), true}),
            liftOnPlan(3, lifts::Pattern::HorizontalPull, pounds, std::nullopt)};
}

chalk::direction::PlanWishes wishesOnTest()
{
    chalk::direction::PlanWishes wishes;
    wishes.start = firstMonday();
    wishes.lifts = {{base::LiftId(1), LiftRole::Main, 2}, {base::LiftId(2), LiftRole::Main, 2}, {base::LiftId(3), LiftRole::Assistance, 1}};
    return wishes;
}

PlanEditorCase caseOnTest(base::Date today)
{
    PlanEditorCase facts;
    facts.lifts = liftsOnTest();
    facts.names = {QStringLiteral("Back squat"), QStringLiteral("Bench press"), QStringLiteral("Dumbbell row")};
    facts.client = QStringLiteral("Sefa Reid");
    facts.today = today;
    facts.plan.client = base::ClientId(7);
    facts.plan.begunOn = firstMonday() - 4;
    facts.plan.plan = planFor(wishesOnTest());
    facts.plan.singles = singlesFor(wishesOnTest(), facts.lifts);
    return facts;
}

}  // namespace chalk::ui::direction
