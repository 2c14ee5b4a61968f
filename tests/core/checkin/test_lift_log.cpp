#include "core/checkin/lift_log.h"
#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::checkin {

namespace {

using progression::Event;
using progression::LiftMachine;
using progression::LiftSetup;
using progression::Stage;
using test::kilos;

const base::Date kLogStart = *base::Date::parse("2026-09-07");

LiftSetup loadedLift(progression::Kit kit = test::barbellKit())
{
    LiftSetup setup = test::lowerLift(std::move(kit));
    setup.startStage = Stage::BaseLoad;
    return setup;
}

Event exposureAfter(int days, const std::vector<test::Work>& sets, int pain = 0)
{
    return {kLogStart + days, test::exposureOf(sets, pain)};
}

Event putInStage(int days, Stage stage, double load)
{
    progression::CoachSet set;
    set.stage = stage;
    set.load = kilos(load);
    set.reason = "a test";
    return {kLogStart + days, set};
}

std::vector<plateau::LoggedExposure> loggedWith(const LiftSetup& setup, const std::vector<Event>& events)
{
    return logOf(*LiftMachine::create(setup), events);
}

}  // namespace

TEST(LiftLog, SaysWhatWasAskedAndWhatCameOfIt)
{
    // Load build asks for 2 sets of 5 to 10 with 180 s of rest (figures of the policy in design: base_sets, rep_floor, base_rest).
    const auto log = loggedWith(loadedLift(), {putInStage(0, Stage::LoadBuild, 60), exposureAfter(1, {{60, 8, 2}, {60, 7, 1, 200}, {50, 12, 3, 240}})});
    ASSERT_EQ(log.size(), 1U);
    EXPECT_EQ(log[0].date, kLogStart + 1);
    EXPECT_EQ(log[0].stage, Stage::LoadBuild);
    EXPECT_EQ(log[0].targetLoad, kilos(60));
    EXPECT_EQ(log[0].targetSets, base::Sets(2));
    EXPECT_EQ(log[0].targetReps, base::Reps(5));
    EXPECT_EQ(log[0].targetRest, base::Seconds(180));
    EXPECT_EQ(log[0].load, kilos(60));
    EXPECT_EQ(log[0].reps, (std::vector{base::Reps(8), base::Reps(7)}));
    EXPECT_EQ(log[0].reserve, 2);
    EXPECT_EQ(log[0].rest, base::Seconds(200));
    EXPECT_TRUE(log[0].isSteady);
    EXPECT_FALSE(log[0].hasPain);
}

TEST(LiftLog, WhatIsAskedForIsWhatTheRulesSayOnTheDay)
{
    // An easy exposure takes a step up (L-1); after a gap of 20 days the load is cut (G-1), which the target must know.
    const std::vector<Event> events{putInStage(0, Stage::LoadBuild, 60), exposureAfter(1, {{60, 8, 2}, {60, 8, 2}}), exposureAfter(4, {{65, 8, 2}, {65, 8, 2}}),
                                    exposureAfter(24, {{60, 8, 2}, {60, 8, 2}})};
    LiftMachine machine = *LiftMachine::create(loadedLift());
    std::vector<base::Load> asked;
    for (const Event& event : events) {
        if (std::holds_alternative<progression::Exposure>(event.body)) {
            asked.push_back(machine.prescriptionOn(event.date).load);
        }
        machine.apply(event.date, event.body);
    }
    const auto log = loggedWith(loadedLift(), events);
    ASSERT_EQ(log.size(), 3U);
    EXPECT_EQ(log[1].targetLoad, kilos(65));
    for (std::size_t i = 0; i < log.size(); ++i) {
        EXPECT_EQ(log[i].targetLoad, asked[i]) << i;
    }
    EXPECT_LT(log[2].targetLoad, kilos(65));
}

TEST(LiftLog, ASwapBeginsAnotherVariation)
{
    progression::Swap swap;
    swap.equipment = test::fixedKit({8, 12, 16, 20}).equipment;
    swap.startLoad = kilos(12);
    swap.exerciseKey = "goblet_squat";
    const auto log = loggedWith(loadedLift(), {exposureAfter(0, {{20, 8, 4}, {20, 8, 4}}), {kLogStart + 2, swap}, exposureAfter(3, {{12, 8, 4}, {12, 8, 4}}),
                                               exposureAfter(5, {{12, 8, 4}, {12, 8, 4}})});
    ASSERT_EQ(log.size(), 3U);
    EXPECT_NE(log[0].variation, log[1].variation);
    EXPECT_EQ(log[1].variation, log[2].variation);
    EXPECT_EQ(log[1].targetLoad, kilos(12));
}

TEST(LiftLog, TheBodyAndBothPiecesOfAPairAreMoved)
{
    LiftSetup pair = loadedLift(test::fixedKit({8, 12, 16}));
    pair.kit.pieces = 2;
    pair.kit.startLoad = kilos(12);
    const auto dumbbells = loggedWith(pair, {exposureAfter(0, {{12, 8, 4}, {12, 8, 4}})});
    ASSERT_EQ(dumbbells.size(), 1U);
    EXPECT_EQ(dumbbells[0].load, kilos(24));
    // A body of 80 kg of which 65 per cent is moved, with 10 kg of help: 52 - 10 = 42.
    LiftSetup body = loadedLift({lifts::BodyAdded{{kilos(-10), kilos(0), kilos(5)}}, base::Milli(650), {}, kilos(-10), {}});
    body.bodyMass = kilos(80);
    const auto pushUps = loggedWith(body, {exposureAfter(0, {{-10, 8, 4}, {-10, 8, 4}})});
    ASSERT_EQ(pushUps.size(), 1U);
    EXPECT_EQ(pushUps[0].targetLoad, kilos(42));
    EXPECT_EQ(pushUps[0].load, kilos(42));
}

TEST(LiftLog, PainAndAnUnsteadySetAreToldOfAndReserveOnlyWhereItWasWritten)
{
    const auto log = loggedWith(loadedLift(), {exposureAfter(0, {{20, 8}, {20, 8, 3}}, 2),
                                               exposureAfter(3, {{20, 8, 2, -1, progression::Steadiness::Shaky}, {20, 8}}),
                                               exposureAfter(6, {{20, 8, 7}, {20, 8, 2}}), exposureAfter(9, {{20, 8, 8}, {20, 8, 2}})});
    ASSERT_EQ(log.size(), 4U);
    EXPECT_EQ(log[2].reserve, 7);
    EXPECT_FALSE(log[3].reserve) << "more than the detector takes";
    EXPECT_TRUE(log[0].hasPain);
    EXPECT_FALSE(log[0].reserve);
    EXPECT_FALSE(log[0].rest);
    EXPECT_FALSE(log[1].isSteady);
    EXPECT_EQ(log[1].reserve, 2);
}

TEST(LiftLog, NothingIsLoggedWhereNoWorkWasAskedForOrDone)
{
    LiftSetup learning = test::lowerLift();
    EXPECT_TRUE(loggedWith(learning, {{kLogStart, test::goodRehearsal()}}).empty());
    // Pain of 6 puts the lift on hold (P-1): what is done then was not asked for.
    const auto held = loggedWith(loadedLift(), {exposureAfter(0, {{20, 8, 2}, {20, 8, 2}}, 6), exposureAfter(3, {{20, 8, 2}, {20, 8, 2}})});
    EXPECT_EQ(held.size(), 1U);
    progression::Exposure warmUp = test::exposureOf({{20, 8}});
    warmUp.sets.front().isWarmup = true;
    EXPECT_TRUE(loggedWith(loadedLift(), {{kLogStart, warmUp}}).empty());
    // Nothing but the body, and none of it counted.
    EXPECT_TRUE(loggedWith(loadedLift({lifts::BodyAdded{{base::Load()}}, {}, {}, {}, {}}), {exposureAfter(0, {{0, 8, 2}, {0, 8, 2}})}).empty());
}

TEST(LiftLog, ALighterWeekIsToldOfWithItsOwnTargets)
{
    const auto log = loggedWith(loadedLift(), {putInStage(0, Stage::LoadBuild, 60), {kLogStart + 1, progression::LighterWeek{}},
                                               exposureAfter(2, {{52.5, 6, 4}}), exposureAfter(9, {{60, 8, 2}, {60, 8, 2}})});
    ASSERT_EQ(log.size(), 2U);
    EXPECT_TRUE(log[0].isLighterWeek);
    EXPECT_LT(log[0].targetLoad, kilos(60));
    EXPECT_EQ(log[0].targetSets, base::Sets(1));
    EXPECT_FALSE(log[1].isLighterWeek);
    EXPECT_EQ(log[1].targetLoad, kilos(60));
}

TEST(LiftLog, HoldsAreLoggedAsTheRepetitionsThatTheyStandFor)
{
    LiftSetup carry = loadedLift(test::fixedKit({8, 12, 16}));
    carry.kit.measure = lifts::Measure::Seconds;
    // Three seconds stand for a repetition (seconds_per_rep).
    const auto log = loggedWith(carry, {exposureAfter(0, {{8, 31, 2}, {8, 24, 2}})});
    ASSERT_EQ(log.size(), 1U);
    EXPECT_EQ(log[0].reps, (std::vector{base::Reps(10), base::Reps(8)}));
}

TEST(LiftLog, AnExposureOfAPlanIsLoggedWithTheSingleThatItCameFrom)
{
    const base::Date monday = kLogStart + 7;
    const progression::BlockWork work{base::Sets(2), base::Reps(4), base::Reps(4), base::Milli(800), base::Seconds(180), 3};
    const progression::Block block{{{monday, false, {work}}, {monday + 7, true, {work}}}, kilos(100), false, {}};
    const auto log = loggedWith(loadedLift(), {putInStage(0, Stage::RestCut, 60), exposureAfter(1, {{60, 8, 2}, {60, 8, 2}}), {kLogStart + 2, block},
                                               exposureAfter(8, {{80, 4, 5}, {80, 4, 5}}), exposureAfter(15, {{80, 4, 5}, {80, 4, 5}})});
    ASSERT_EQ(log.size(), 3U);
    EXPECT_FALSE(log[0].planSingle);
    EXPECT_EQ(log[1].planSingle, kilos(100));
    EXPECT_EQ(log[1].targetLoad, kilos(80));
    EXPECT_FALSE(log[1].isLighterWeek);
    EXPECT_GT(*log[2].planSingle, kilos(100)) << "nine to failure at 80 kg speak for more";
    EXPECT_TRUE(log[2].isLighterWeek);
}

}  // namespace chalk::checkin
