#include "core/store/lift_tracking.h"

#include "tests/support/lift_on_test.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::store {

namespace {

using progression::Stage;
using test::exposureOf;
using test::kilos;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

const base::Date kStart = base::Date::fromDays(20'000);

CachedLift freshLift(progression::LiftSetup setup = test::lowerLift())
{
    return {base::LiftId(1), base::ClientId(1), lifts::Pattern::Squat, progression::LiftMachine::create(std::move(setup)).value(), kStart, kStart,
            {},              {},                {},                    {},                                                       0};
}

progression::CoachSet setTo(Stage stage, double load)
{
    progression::CoachSet set;
    set.stage = stage;
    set.load = kilos(load);
    set.reason = "as it was";
    return set;
}

}  // namespace

TEST(LiftTracking, OneRehearsalCanClimbTwoRungs)
{
    CachedLift lift = freshLift();
    const Step step = advance(lift, {kStart + 2, test::goodRehearsal()});
    EXPECT_EQ(test::namesOf(step.rules), "U-1 K-1");
    EXPECT_THAT(step.reached, ElementsAre(StageReached{1, Stage::Control, kStart + 2}, StageReached{1, Stage::BaseLoad, kStart + 2}));
    EXPECT_EQ(lift.stageSince, kStart + 2);
    EXPECT_FALSE(lift.firstWork);
}

TEST(LiftTracking, AnEquipmentLimitClimbsTwoRungsAndOpensACycle)
{
    CachedLift lift = freshLift(test::lowerLift(test::fixedKit({8, 12})));
    advance(lift, {kStart, setTo(Stage::RestCut, 12)});
    progression::CoachSet shortest = setTo(Stage::RestCut, 12);
    shortest.rest = base::Seconds(60);
    advance(lift, {kStart, shortest});
    const Step step = advance(lift, {kStart + 3, exposureOf(std::vector<test::Work>(5, {12, 12, 2, 60}))});
    EXPECT_EQ(test::namesOf(step.rules), "T-1 L-8");
    EXPECT_THAT(step.reached, ElementsAre(StageReached{2, Stage::LoadBuild, kStart + 3}, StageReached{2, Stage::RepBuild, kStart + 3}));
}

TEST(LiftTracking, WhatTheCoachSetsSkipsTheRungsBetween)
{
    CachedLift lift = freshLift();
    const Step step = advance(lift, {kStart + 1, setTo(Stage::RepBuild, 60)});
    EXPECT_THAT(step.reached, ElementsAre(StageReached{1, Stage::RepBuild, kStart + 1}));
}

TEST(LiftTracking, AFallAndTheWayBackAreNoted)
{
    CachedLift lift = freshLift();
    advance(lift, {kStart, setTo(Stage::RepBuild, 60)});
    advance(lift, {kStart + 2, exposureOf({{60, 8, 2}, {60, 8, 2, -1, progression::Steadiness::Lost}})});
    const Step fall = advance(lift, {kStart + 4, exposureOf({{60, 8, 2}, {60, 8, 2, -1, progression::Steadiness::Lost}})});
    EXPECT_EQ(test::namesOf(fall.rules), "C-2");
    EXPECT_THAT(fall.reached, ElementsAre(StageReached{1, Stage::Control, kStart + 4}));
    const Step back = advance(lift, {kStart + 6, test::goodRehearsal()});
    EXPECT_THAT(back.reached, ElementsAre(StageReached{1, Stage::RepBuild, kStart + 6})) << "the rungs between were not climbed";
    EXPECT_EQ(lift.stageSince, kStart + 6);
}

TEST(LiftTracking, AHoldKeepsItsDayAndPain)
{
    CachedLift lift = freshLift();
    advance(lift, {kStart, setTo(Stage::RepBuild, 60)});
    advance(lift, {kStart + 2, exposureOf({{60, 8, 2}, {60, 8, 2}}, 6)});
    EXPECT_EQ(lift.heldSince, kStart + 2);
    EXPECT_EQ(lift.holdPain, 6);
    advance(lift, {kStart + 4, exposureOf({{60, 8, 2}, {60, 8, 2}}, 8)});
    EXPECT_EQ(lift.heldSince, kStart + 2) << "it was held already";
    EXPECT_EQ(test::namesOf(lift.decided), "P-1") << "what is only kept says nothing about what comes next";
    advance(lift, {kStart + 6, progression::Release{"moves freely"}});
    EXPECT_FALSE(lift.heldSince);
    EXPECT_EQ(lift.holdPain, 0);
}

TEST(LiftTracking, ARehearsalCanHoldToo)
{
    CachedLift lift = freshLift();
    progression::Rehearsal rehearsal = test::goodRehearsal();
    rehearsal.pain = 5;
    advance(lift, {kStart + 1, rehearsal});
    EXPECT_EQ(lift.heldSince, kStart + 1);
    EXPECT_EQ(lift.holdPain, 5);
}

TEST(LiftTracking, TheFirstWorkIsTheFirstThatWasJudgedUnderLoad)
{
    CachedLift lift = freshLift();
    advance(lift, {kStart, exposureOf({{20, 8, 5}})});
    EXPECT_FALSE(lift.firstWork) << "the lift was in Pattern";
    advance(lift, {kStart + 1, test::goodRehearsal()});
    progression::Exposure warmUp = exposureOf({{20, 8, 5}});
    warmUp.sets.front().isWarmup = true;
    advance(lift, {kStart + 2, warmUp});
    EXPECT_FALSE(lift.firstWork) << "nothing but a warm-up";
    advance(lift, {kStart + 3, exposureOf({{20, 8, 5}, {20, 8, 5}})});
    advance(lift, {kStart + 5, exposureOf({{30, 8, 5}, {30, 8, 5}})});
    EXPECT_EQ(lift.firstWork, kStart + 3);
}

TEST(LiftTracking, VolumeCountsWorkingSetsExactly)
{
    progression::LiftSetup setup = test::lowerLift();
    progression::Exposure exposure = exposureOf({{20, 10, 3}, {42.5, 8, 2}, {42.5, 7, 2}, {-10, 8, 2}});
    exposure.sets.front().isWarmup = true;
    EXPECT_DOUBLE_EQ(volumeOf(exposure, setup, setup.kit).kilograms(), 42.5 * 15) << "no warm-up, no assistance";
    setup.kit.pieces = 2;
    EXPECT_DOUBLE_EQ(volumeOf(exposure, setup, setup.kit).kilograms(), 2 * 42.5 * 15);
    setup.unit = base::MassUnit::Pound;
    EXPECT_EQ(volumeOf(exposure, setup, setup.kit).raw(), 2 * 15 * 4250 * std::int64_t{45'359'237}) << "1 lb is 0.45359237 kg";
    setup.kit.measure = lifts::Measure::Seconds;  // 10 s are 3 reps
    exposure = exposureOf({{40, 10, 2}});
    EXPECT_EQ(volumeOf(exposure, setup, setup.kit).raw(), 2 * 3 * 4000 * std::int64_t{45'359'237});
}

TEST(LiftTracking, VolumeStaysInRangeWhateverIsWritten)
{
    progression::LiftSetup setup = test::lowerLift();
    setup.kit.pieces = 1'000'000;
    const progression::Exposure exposure = exposureOf(std::vector<test::Work>(100, {5000, 10'000, 2}));
    EXPECT_DOUBLE_EQ(volumeOf(exposure, setup, setup.kit).kilograms(), 1e6);
}

TEST(LiftTracking, AReplayFailsAtTheEventThatCannotBe)
{
    const progression::Event fine{kStart, test::goodRehearsal()};
    const progression::Event wrong{kStart + 1, setTo(Stage::RepBuild, 61)};
    const auto replay = replayOf(freshLift(), {&fine, &wrong});
    ASSERT_FALSE(replay);
    EXPECT_EQ(replay.error().index, 1U);
    EXPECT_EQ(replay.error().fault.field, "load");
    EXPECT_THAT(replayOf(freshLift(), {}).value().reached, ElementsAre(StageReached{1, Stage::Pattern, kStart})) << "where it began";
    EXPECT_THAT(replayOf(freshLift(), {}).value().decisions, IsEmpty());
}

}  // namespace chalk::store
