#include "core/direction/planned_load.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::direction {

namespace {

LiftForPlan squatWithBar(std::optional<PlanSingle> single)
{
    return {base::LiftId(7), lifts::Pattern::Squat, "back_squat", *progression::LiftMachine::create(test::lowerLift()), single, {}, false};
}

ClientPlan planOfOneLift(base::Load agreed)
{
    ClientPlan plan;
    plan.plan.wishes.lifts = {{base::LiftId(7), LiftRole::Main, 2}};
    plan.singles = {{agreed, false}};
    return plan;
}

}  // namespace

// 80 per cent of 104 kg are 83.2 kg: a bar that gives every 2.5 kg takes 82.5.
TEST(PlannedLoad, IsTheHeaviestOfTheEquipmentThatIsNotAboveTheShare)
{
    const LiftForPlan lift = squatWithBar(std::nullopt);
    EXPECT_EQ(plannedLoad(lift, test::kilos(104), base::Milli(800)), test::kilos(82.5));
    EXPECT_EQ(plannedLoad(lift, test::kilos(100), base::Milli(800)), test::kilos(80));
    EXPECT_EQ(plannedLoad(lift, test::kilos(10), base::Milli(800)), test::kilos(20)) << "the lightest where none is light enough";
    EXPECT_EQ(plannedLoad(lift, base::Load(), base::Milli(800)), std::nullopt);
}

TEST(PlannedLoad, ASingleIsThatOfThePlanWhereTheLiftDoesNotFollowIt)
{
    const std::vector lifts{squatWithBar(PlanSingle{test::kilos(110), true})};
    EXPECT_EQ(singleNow(planOfOneLift(test::kilos(104)), 0, lifts).load, test::kilos(104));
    EXPECT_EQ(singleNow(planOfOneLift(base::Load()), 0, lifts), (PlanSingle{test::kilos(110), true})) << "known by now";
    EXPECT_EQ(singleNow(planOfOneLift(test::kilos(104)), 0, {}).load, test::kilos(104)) << "the lift is not there";
}

TEST(PlannedLoad, ASingleIsAsResultsMovedItWhereTheLiftFollowsThePlan)
{
    test::LiftOnTest lift;
    lift.set(progression::Stage::LoadBuild, 60);
    progression::Block block{{{lift.day() - lift.day().weekday(), false, {{base::Sets(3), base::Reps(5), base::Reps(5), base::Milli(800), base::Seconds(180)}}}},
                             test::kilos(104),
                             false,
                             {}};
    ASSERT_EQ(lift.apply(block), "N-1");
    LiftForPlan following = squatWithBar(PlanSingle{test::kilos(108), false});
    following.machine = lift.machine();
    EXPECT_EQ(singleNow(planOfOneLift(test::kilos(104)), 0, std::vector{following}).load, test::kilos(108));
}

TEST(PlannedLoad, ALiftIsFoundByItsId)
{
    const std::vector lifts{squatWithBar(std::nullopt)};
    EXPECT_EQ(liftWith(lifts, base::LiftId(7)), &lifts[0]);
    EXPECT_EQ(liftWith(lifts, base::LiftId(8)), nullptr);
}

}  // namespace chalk::direction
