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
    const auto spoken = [&lift](const progression::Exposure& exposure) { return spokenIn(kPlanDay, exposure, lift); };
    const SpokenSingle hundred{kPlanDay, kilos(100), false, false};
    EXPECT_EQ(spoken(exposureOf({{80, 6, 2}})), hundred) << "6 done and 2 left are 8 to failure";
    EXPECT_EQ(spoken(exposureOf({{80, 6, 2}, {87, 5, 0}, {60, 5, 0}})), hundred);
    EXPECT_EQ(spoken(exposureOf({{80, 6}})), std::nullopt) << "without a reserve nobody knows";
    EXPECT_EQ(spoken(exposureOf({{70, 9, 2}})), (SpokenSingle{kPlanDay, kilos(100), false, true})) << "11 to failure are rough";
    EXPECT_EQ(spoken(exposureOf({{80, 9, 2}, {40, 8, 0}})), (SpokenSingle{kPlanDay, kilos(50), false, false})) << "a sure set says more";
    EXPECT_EQ(spoken(exposureOf({{65, 14, 10}})), (SpokenSingle{kPlanDay, kilos(100), false, true})) << "more than the chart's last row says is not known";
    EXPECT_EQ(spoken(exposureOf({{80, 6, 2, -1, progression::Steadiness::Lost}})), std::nullopt);
    progression::Exposure warmUp = exposureOf({{80, 6, 2}});
    warmUp.sets[0].isWarmup = true;
    EXPECT_EQ(spoken(warmUp), std::nullopt);
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

TEST(LiftForPlan, ARoughEstimateCountsOnlyWhereNoneIsSure)
{
    const std::vector<SpokenSingle> spoken{{kPlanDay - 20, kilos(100)}, {kPlanDay - 10, kilos(120), false, true}};
    EXPECT_EQ(startingSingle(spoken, kPlanDay), (PlanSingle{kilos(100), false}));
    EXPECT_EQ(startingSingle(std::span(spoken).last(1), kPlanDay), (PlanSingle{kilos(120), false}));
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

TEST(LiftForPlan, ASecondDayIsForTheMainLiftsFirst)
{
    const auto daysFor = [](Direction direction, int sessionsAWeek) {
        std::vector<LiftForPlan> lifts;
        for (int i = 0; i < 7; ++i) {
            lifts.push_back(liftForPlan(i + 1, lifts::kPatterns[static_cast<std::size_t>(i)]));
        }
        std::vector<int> days;
        for (const direction::PlannedLift& lift : usualWishes(direction, lifts, sessionsAWeek, kPlanDay).lifts) {
            days.push_back(lift.exposures);
        }
        return days;
    };
    EXPECT_THAT(daysFor(Direction::Strength, 2), ::testing::ElementsAre(2, 2, 2, 1, 1, 1, 1)) << "five lifts a session";
    EXPECT_THAT(daysFor(Direction::Physique, 2), ::testing::ElementsAre(2, 2, 2, 1, 1, 1, 1));
    EXPECT_THAT(daysFor(Direction::Movement, 2), ::testing::ElementsAre(2, 2, 1, 1, 2, 1, 1));
    EXPECT_THAT(daysFor(Direction::Strength, 3), ::testing::Each(2));
    EXPECT_THAT(daysFor(Direction::Strength, 1), ::testing::Each(1));
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

TEST(LiftForPlan, InATestASetWithoutAReserveIsToFailure)
{
    const progression::LiftMachine lift = progression::LiftMachine::create(lowerLift()).value();
    EXPECT_EQ(spokenIn(kPlanDay, exposureOf({{100, 1}}), lift, true), (SpokenSingle{kPlanDay, kilos(100), true, false}));
    EXPECT_EQ(spokenIn(kPlanDay, exposureOf({{80, 6, 2}}), lift, true), (SpokenSingle{kPlanDay, kilos(100), true, false})) << "a reserve counts as ever";
    EXPECT_EQ(spokenIn(kPlanDay, exposureOf({{100, 0}}), lift, true), std::nullopt) << "missed";
}

}  // namespace chalk::test
