#include "core/direction/lift_for_plan.h"

#include "tests/support/lift_on_test.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::test {

using direction::Direction;
using direction::LiftForPlan;
using direction::LiftRole;
using direction::PlanSingle;
using direction::SpokenSingle;
using direction::spokenIn;
using direction::startingSingle;
using direction::usualWishes;

namespace {

const base::Date kPlanDay = base::Date::fromYmd(2026, 11, 25).value();

LiftForPlan liftForPlan(int id, lifts::Pattern pattern, progression::Stage stage = progression::Stage::BaseLoad)
{
    progression::LiftSetup setup = lowerLift();
    setup.startStage = stage;
    return {base::LiftId(id), pattern, "key", progression::LiftMachine::create(setup).value(), PlanSingle{kilos(100), false}, kPlanDay - 100, false};
}

std::vector<LiftRole> rolesFor(Direction direction, std::span<const LiftForPlan> lifts)
{
    std::vector<LiftRole> roles;
    for (const direction::PlannedLift& lift : usualWishes(direction, lifts, 3, kPlanDay).lifts) {
        roles.push_back(lift.role);
    }
    return roles;
}

}  // namespace

// The chart of repetitions and shares in Haff and Triplett (eds.), Essentials of Strength Training and Conditioning, 4th ed. 2016, table 17.7: 8 repetitions
// at 80 per cent, 5 at 87.
TEST(LiftForPlan, TheBestSetOfAnExposureSpeaksForASingleByTheChart)
{
    const progression::LiftMachine lift = progression::LiftMachine::create(lowerLift()).value();
    EXPECT_EQ(spokenIn(exposureOf({{80, 6, 2}}), lift), kilos(100)) << "6 done and 2 left are 8 to failure";
    EXPECT_EQ(spokenIn(exposureOf({{80, 6, 2}, {87, 5, 0}, {60, 5, 0}}), lift), kilos(100));
    EXPECT_EQ(spokenIn(exposureOf({{80, 6}}), lift), std::nullopt) << "without a reserve nobody knows";
    EXPECT_EQ(spokenIn(exposureOf({{80, 9, 2}}), lift), std::nullopt) << "the chart ends at ten";
    EXPECT_EQ(spokenIn(exposureOf({{80, 6, 2, -1, progression::Steadiness::Lost}}), lift), std::nullopt);
    progression::Exposure warmUp = exposureOf({{80, 6, 2}});
    warmUp.sets[0].isWarmup = true;
    EXPECT_EQ(spokenIn(warmUp, lift), std::nullopt);
}

TEST(LiftForPlan, APlanStartsFromTheMiddleOfTheLatestEstimates)
{
    const std::vector<SpokenSingle> spoken{{kPlanDay - 60, kilos(140)}, {kPlanDay - 20, kilos(100)}, {kPlanDay - 10, kilos(120)}, {kPlanDay - 3, kilos(104)}};
    EXPECT_EQ(startingSingle(spoken, kPlanDay), (PlanSingle{kilos(104), false})) << "the oldest is not among the latest three";
    EXPECT_EQ(startingSingle(std::span(spoken).subspan(1, 2), kPlanDay), (PlanSingle{kilos(100), false})) << "of two the lighter one";
    EXPECT_EQ(startingSingle(std::span(spoken).first(1), kPlanDay + 24), (PlanSingle{kilos(140), false})) << "84 days back counts";
    EXPECT_EQ(startingSingle(std::span(spoken).first(1), kPlanDay + 25), std::nullopt);
    EXPECT_EQ(startingSingle({}, kPlanDay), std::nullopt);
}

TEST(LiftForPlan, ATestOfTheLastNinetyDaysComesFirst)
{
    const std::vector<SpokenSingle> spoken{{kPlanDay - 90, kilos(110), true}, {kPlanDay - 3, kilos(104)}};
    EXPECT_EQ(startingSingle(spoken, kPlanDay), (PlanSingle{kilos(110), true}));
    EXPECT_EQ(startingSingle(spoken, kPlanDay + 1), (PlanSingle{kilos(104), false}));
    EXPECT_EQ(startingSingle(spoken, kPlanDay - 95), std::nullopt) << "what lies ahead is not known yet";
}

TEST(LiftForPlan, StrengthIsLedBySquatHingeAndPush)
{
    const std::vector<LiftForPlan> lifts{liftForPlan(1, lifts::Pattern::Squat), liftForPlan(2, lifts::Pattern::HorizontalPull),
                                         liftForPlan(3, lifts::Pattern::HorizontalPush), liftForPlan(4, lifts::Pattern::SingleLeg)};
    EXPECT_THAT(rolesFor(Direction::Strength, lifts), ::testing::ElementsAre(LiftRole::Main, LiftRole::Assistance, LiftRole::Main, LiftRole::Assistance));
    EXPECT_THAT(rolesFor(Direction::Physique, lifts), ::testing::Each(LiftRole::Main));
    EXPECT_THAT(rolesFor(Direction::Movement, lifts), ::testing::ElementsAre(LiftRole::Main, LiftRole::Upkeep, LiftRole::Upkeep, LiftRole::Main));
}

TEST(LiftForPlan, WishesLeaveOutCarriesAndWhatWasNeverLoaded)
{
    progression::LiftSetup carry = lowerLift(fixedKit({8, 12, 16}));
    carry.kit.measure = lifts::Measure::Metres;
    std::vector<LiftForPlan> lifts{liftForPlan(1, lifts::Pattern::Squat), liftForPlan(2, lifts::Pattern::Hinge),
                                   {base::LiftId(3), lifts::Pattern::CarryBrace, "carry", progression::LiftMachine::create(carry).value(), {}, kPlanDay, false}};
    lifts[1].firstLoad.reset();
    const direction::PlanWishes wishes = usualWishes(Direction::Strength, lifts, 1, kPlanDay);
    ASSERT_EQ(wishes.lifts.size(), 1U);
    EXPECT_EQ(wishes.lifts[0], (direction::PlannedLift{base::LiftId(1), LiftRole::Main, 1})) << "one session a week is one day for it";
    EXPECT_EQ(wishes.start, base::Date::fromYmd(2026, 11, 30).value());
    EXPECT_EQ(usualWishes(Direction::Strength, lifts, 3, wishes.start).start, wishes.start) << "a Monday is its own";
    EXPECT_FALSE(faultOf(wishes).has_value());
    EXPECT_EQ(faultOf(usualWishes(Direction::Strength, {}, 3, kPlanDay))->field, "lifts");
}

TEST(LiftForPlan, ALiftFollowsOnceItIsLoadedAndItsSingleIsKnown)
{
    LiftForPlan lift = liftForPlan(1, lifts::Pattern::Squat);
    EXPECT_TRUE(lift.canFollow());
    lift.single.reset();
    EXPECT_FALSE(lift.canFollow());
    EXPECT_FALSE(liftForPlan(1, lifts::Pattern::Squat, progression::Stage::Control).canFollow());
    lift = liftForPlan(1, lifts::Pattern::Squat);
    lift.machine.apply(kPlanDay, exposureOf({{20, 8, 2}}, 5));
    EXPECT_FALSE(lift.canFollow()) << "pain put it on hold";
}

TEST(LiftForPlan, EveryLiftOfTheWishesHasItsSingle)
{
    std::vector<LiftForPlan> lifts{liftForPlan(1, lifts::Pattern::Squat), liftForPlan(2, lifts::Pattern::Hinge)};
    lifts[1].single.reset();
    direction::PlanWishes wishes = usualWishes(Direction::Physique, lifts, 4, kPlanDay);
    EXPECT_EQ(singlesFor(wishes, lifts), (std::vector<PlanSingle>{{kilos(100), false}, {}}));
    wishes.lifts[1].lift = base::LiftId(9);
    EXPECT_EQ(singlesFor(wishes, lifts)[1], PlanSingle());
}

}  // namespace chalk::test
