#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

using progression::Flag;
using progression::Stage;

namespace {

LiftOnTest liftInBaseLoad(progression::Kit kit = barbellKit())
{
    progression::LiftSetup setup = lowerLift(std::move(kit));
    setup.startStage = Stage::BaseLoad;
    return LiftOnTest(std::move(setup));
}

}  // namespace

TEST(BaseLoadRules, AsksForRir)
{
    LiftOnTest lift = liftInBaseLoad();
    EXPECT_EQ(lift.work(2, 30, 8), "B-1");
    EXPECT_EQ(lift.due().load, kilos(30));
    EXPECT_EQ(lift.work({{30, 8}, {30, 8, 5}}), "B-5") << "one RIR is enough";
}

TEST(BaseLoadRules, CapacityDecidesTheLoad)
{
    // Epley's equation for 13.5 repetitions: 30 kg with 16 in them, 30 × (30 + 16) / (30 + 13.5) = 31.72, but at least the next
    // load above; with 20 or more in them 30 × 50 / 43.5 = 34.48.
    LiftOnTest lift = liftInBaseLoad();
    EXPECT_EQ(lift.work(2, 30, 8, 8), "B-2");
    EXPECT_EQ(lift.due().load, kilos(32.5));
    EXPECT_EQ(lift.work(2, 60, 10, 10), "B-2");
    EXPECT_EQ(lift.due().load, kilos(67.5)) << "60 × 50 / 43.5 = 68.97";
    EXPECT_EQ(lift.work(2, 60, 30, 10), "B-2");
    EXPECT_EQ(lift.due().load, kilos(67.5)) << "counted as 20";
    EXPECT_EQ(lift.work(2, 60, 8, 3), "B-3");
    EXPECT_EQ(lift.due().load, kilos(55)) << "60 × 41 / 43.5 = 56.55";
    EXPECT_EQ(lift.work(2, 60, 8, 4), "B-5");
}

TEST(BaseLoadRules, CapacityBordersAreInside)
{
    for (const int rir : {4, 7}) {
        LiftOnTest lift = liftInBaseLoad();
        EXPECT_EQ(lift.work(2, 30, 8, rir), "B-5") << rir;
    }
}

TEST(BaseLoadRules, NothingLighterRaisesAFlagThatTheNextRuleTakesAway)
{
    LiftOnTest lift = liftInBaseLoad();
    EXPECT_EQ(lift.work(2, 20, 6, 2), "B-4");
    EXPECT_TRUE(lift.due().flags.has(Flag::NeedsLighterOption));
    EXPECT_EQ(lift.work(2, 20, 6), "B-1");
    EXPECT_FALSE(lift.due().flags.has(Flag::NeedsLighterOption));
    EXPECT_EQ(lift.work(2, 22.5, 6, 2), "B-3");
}

TEST(BaseLoadRules, FullSetsAndReserveAreAskedFor)
{
    LiftOnTest lift = liftInBaseLoad();
    EXPECT_EQ(lift.work(1, 30, 8, 5), "B-6");
    EXPECT_EQ(lift.work(2, 30, 4, 9), "B-6");
    EXPECT_EQ(lift.work(2, 30, 5, 8), "B-5");

    LiftOnTest other = liftInBaseLoad();
    EXPECT_EQ(other.work({{30, 12, 1}, {30, 12, 2}}), "B-7");
    EXPECT_EQ(other.due().load, kilos(30));
    EXPECT_EQ(other.work(2, 30, 11, 2), "B-5");
}

TEST(BaseLoadRules, ALoadIsFoundAndTheStepTaken)
{
    LiftOnTest lift = liftInBaseLoad();
    EXPECT_EQ(lift.work(2, 30, 8, 5), "B-5");
    EXPECT_EQ(lift.due().stage, Stage::LoadBuild);
    EXPECT_EQ(lift.due().load, kilos(35));
    EXPECT_FALSE(lift.state().lastMade);
}

TEST(BaseLoadRules, ABridgeOrTheLimitFollows)
{
    LiftOnTest bridge = liftInBaseLoad(fixedKit({8, 16}));
    EXPECT_EQ(bridge.work(2, 8, 8, 5), "B-5 L-6");
    EXPECT_EQ(bridge.due().load, kilos(8));
    EXPECT_EQ(bridge.due().repsLow, base::Reps(12)) << "a is 11: one more";

    LiftOnTest crossed = liftInBaseLoad(fixedKit({8, 16}));
    EXPECT_EQ(crossed.work(2, 8, 10, 5), "B-5 L-7");
    EXPECT_EQ(crossed.due().load, kilos(16));

    LiftOnTest limit = liftInBaseLoad(fixedKit({8}));
    EXPECT_EQ(limit.work(2, 8, 10, 10), "B-5 L-8") << "too light, but nothing is above";
    EXPECT_EQ(limit.due().stage, Stage::RepBuild);
    EXPECT_EQ(limit.state().best, base::Reps(18));
}

}  // namespace chalk::test
