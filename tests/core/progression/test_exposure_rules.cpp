#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

using progression::Flag;
using progression::PrescriptionKind;
using progression::Stage;
using progression::Steadiness;

namespace {

LiftOnTest liftInRepBuild()
{
    LiftOnTest lift;
    lift.set(Stage::RepBuild, 60);
    return lift;
}

const Work kGood{60, 8, 2};
const Work kLost{60, 8, 2, -1, Steadiness::Lost};
const Work kShaky{60, 8, 2, -1, Steadiness::Shaky};

}  // namespace

TEST(ExposureRules, PainOfTheHoldPutsOnHold)
{
    LiftOnTest lift = liftInRepBuild();
    EXPECT_EQ(lift.work({kGood, kGood}, 3), "P-2");
    EXPECT_FALSE(lift.state().isOnHold);
    EXPECT_EQ(lift.work({kGood, kGood}, 4), "P-1");
    EXPECT_EQ(lift.due().kind, PrescriptionKind::Hold);
    EXPECT_EQ(lift.work({kGood, kGood}), "P-3");
    EXPECT_EQ(lift.rehearse(), "P-3");
}

TEST(ExposureRules, PainCountsEvenWithoutWork)
{
    LiftOnTest lift = liftInRepBuild();
    EXPECT_EQ(lift.work({}, 3), "V-1");
    EXPECT_EQ(lift.work({}, 4), "P-1");
}

TEST(ExposureRules, SlightPainNeitherAdvancesNorMisses)
{
    LiftOnTest lift = liftInRepBuild();
    const auto before = lift.due();
    EXPECT_EQ(lift.work({{60, 12, 2}, {60, 12, 2}}, 1), "P-2");
    EXPECT_EQ(lift.due(), before);
    EXPECT_EQ(lift.work({{60, 3, 2}, {60, 3, 2}}, 1), "P-2");
    EXPECT_EQ(lift.state().misses, 0);
    EXPECT_EQ(lift.work({{60, 12, 2}, {60, 12, 2}}), "R-1");
}

TEST(ExposureRules, WarmupsAreNoWork)
{
    LiftOnTest lift = liftInRepBuild();
    progression::Exposure exposure = exposureOf({kGood});
    exposure.sets[0].isWarmup = true;
    EXPECT_EQ(lift.apply(exposure), "V-1");
    EXPECT_FALSE(lift.state().lastWork);
    exposure.sets.push_back(exposureOf({kGood}).sets[0]);
    EXPECT_EQ(lift.apply(exposure), "A-2");
    EXPECT_TRUE(lift.state().lastWork);
}

TEST(ExposureRules, WorkBeforeTheLoadIsEarnedIsOnlyKept)
{
    LiftOnTest lift;
    EXPECT_EQ(lift.work({kGood, kGood}), "K-3");
    EXPECT_EQ(lift.due().stage, Stage::Pattern);
    EXPECT_EQ(lift.work({kLost}), "K-3");
}

TEST(ExposureRules, LostTwiceGoesBackToControl)
{
    LiftOnTest lift = liftInRepBuild();
    EXPECT_EQ(lift.work({kGood, kLost}), "C-1");
    EXPECT_TRUE(lift.due().isPauseAsked);
    EXPECT_EQ(lift.work({kLost, kGood}), "C-2");
    EXPECT_EQ(lift.due().stage, Stage::Control);
    EXPECT_EQ(lift.state().returnStage, Stage::RepBuild);
    EXPECT_FALSE(lift.due().isPauseAsked);
}

TEST(ExposureRules, WhatLiesBetweenEndsTheFirstLoss)
{
    const auto isSecondLossAfter = [](auto&& between) {
        LiftOnTest lift = liftInRepBuild();
        lift.work({kLost, kLost});
        between(lift);
        return lift.work({kLost, kLost}) == "C-2";
    };
    EXPECT_TRUE(isSecondLossAfter([](LiftOnTest&) {}));
    EXPECT_TRUE(isSecondLossAfter([](LiftOnTest& lift) { lift.work({}); })) << "V-1";
    EXPECT_TRUE(isSecondLossAfter([](LiftOnTest& lift) { lift.rehearse(); })) << "U-3";
    EXPECT_FALSE(isSecondLossAfter([](LiftOnTest& lift) { lift.work({kGood, kGood}, 1); })) << "P-2";
    EXPECT_FALSE(isSecondLossAfter([](LiftOnTest& lift) { lift.work({kShaky, kGood}); })) << "C-3";
    EXPECT_FALSE(isSecondLossAfter([](LiftOnTest& lift) { lift.work({kGood}); })) << "A-2, a rule of the stage";
    EXPECT_FALSE(isSecondLossAfter([](LiftOnTest& lift) { lift.set(Stage::RepBuild, 60); })) << "O-1";
    EXPECT_FALSE(isSecondLossAfter([](LiftOnTest& lift) { lift.pass(14); })) << "G-1";
    EXPECT_TRUE(isSecondLossAfter([](LiftOnTest& lift) { lift.pass(11); })) << "13 days are no layoff";
}

TEST(ExposureRules, ShakyNeitherAdvancesNorMisses)
{
    LiftOnTest lift = liftInRepBuild();
    EXPECT_EQ(lift.work({kGood, kShaky}), "C-3");
    EXPECT_EQ(lift.state().best, base::Reps(0));
    EXPECT_EQ(lift.state().misses, 0);
    EXPECT_EQ(lift.work({kGood, kGood}), "R-2");
}

TEST(ExposureRules, LostAndShakyAreLookedForInEveryWorkingSet)
{
    LiftOnTest lift = liftInRepBuild();
    EXPECT_EQ(lift.work({kGood, kGood, {50, 8, 2, -1, Steadiness::Shaky}}), "C-3");
    EXPECT_EQ(lift.work({kGood, kGood, {50, 8, 2, -1, Steadiness::Lost}}), "C-1");
}

TEST(ExposureRules, WorkingLoadIsThatOfMostSetsOnATieTheHeavier)
{
    LiftOnTest lift = liftInRepBuild();
    EXPECT_EQ(lift.work({{50, 9, 2}, {50, 9, 2}, {60, 6, 2}}), "R-5 R-3");
    EXPECT_EQ(lift.work({{50, 9, 2}, {50, 9, 2}, {60, 6, 2}, {60, 6, 2}}), "R-2");
    EXPECT_EQ(lift.state().best, base::Reps(6));
}

TEST(ExposureRules, ReserveIsTakenOffWhatTheClientHad)
{
    // 8 reps with 0 left count as 6 with the reserve of 2 kept; 6 with 5 left as 9; without RIR as they are.
    for (const auto& [work, reps] : {std::pair(Work{60, 8, 0}, 6), std::pair(Work{60, 6, 5}, 9), std::pair(Work{60, 7}, 7)}) {
        LiftOnTest lift = liftInRepBuild();
        EXPECT_EQ(lift.work({work, work}), "R-2");
        EXPECT_EQ(lift.state().best, base::Reps(reps));
    }
}

}  // namespace chalk::test
