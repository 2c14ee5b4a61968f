#include "core/plateau/stage_lever.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

namespace chalk::plateau {

using progression::Stage;

TEST(StageLever, CompleteIsAllSetsWithAllReps)
{
    auto exposure = test::plainExposure();
    EXPECT_TRUE(isComplete(exposure));
    test::setReps(exposure, {8, 8});
    EXPECT_FALSE(isComplete(exposure));
    test::setReps(exposure, {8, 9, 8, 8});
    EXPECT_TRUE(isComplete(exposure));
    test::setReps(exposure, {8, 9, 8, 7});
    EXPECT_FALSE(isComplete(exposure));
}

TEST(StageLever, TheRestCountsInItsOwnStage)
{
    auto exposure = test::plainExposure();
    exposure.rest = base::Seconds(500);
    EXPECT_TRUE(isComplete(exposure));
    exposure.stage = Stage::RestCut;
    EXPECT_FALSE(isComplete(exposure));
    exposure.rest = base::Seconds(150);
    EXPECT_TRUE(isComplete(exposure));
    exposure.rest = base::Seconds(151);
    EXPECT_FALSE(isComplete(exposure));
    exposure.rest = std::nullopt;
    EXPECT_TRUE(isComplete(exposure));
}

TEST(StageLever, AShortRestHasTwentySecondsOfGrace)
{
    auto exposure = test::plainExposure();
    exposure.stage = Stage::RestCut;
    exposure.targetRest = base::Seconds(60);
    exposure.rest = base::Seconds(80);
    EXPECT_TRUE(isComplete(exposure));
    exposure.rest = base::Seconds(81);
    EXPECT_FALSE(isComplete(exposure));
}

TEST(StageLever, APlanIsJudgedByItsSingleAndNotByTheRest)
{
    auto exposure = test::plainExposure();
    exposure.stage = Stage::RestCut;
    exposure.rest = base::Seconds(500);
    exposure.planSingle = base::Load::fromCenti(10250);
    EXPECT_TRUE(isComplete(exposure));
    EXPECT_EQ(leverOf(exposure), 10250);
    test::setReps(exposure, {8, 7, 8});
    EXPECT_FALSE(isComplete(exposure));
}

TEST(StageLever, EachStageMovesItsOwn)
{
    auto exposure = test::plainExposure();
    exposure.load = test::loadOf(50);
    EXPECT_EQ(leverOf(exposure), 4000);
    exposure.stage = Stage::BaseLoad;
    EXPECT_EQ(leverOf(exposure), 4000);
    exposure.stage = Stage::RepBuild;
    EXPECT_EQ(leverOf(exposure), 8);
    exposure.stage = Stage::SetBuild;
    EXPECT_EQ(leverOf(exposure), 3);
    exposure.stage = Stage::RestCut;
    EXPECT_EQ(leverOf(exposure), -120);
}

TEST(StageLever, LaterStagesPutLessIntoStrength)
{
    EXPECT_EQ(strengthShareOf(Stage::BaseLoad), 1);
    EXPECT_EQ(strengthShareOf(Stage::LoadBuild), 1);
    EXPECT_EQ(strengthShareOf(Stage::RepBuild), 0.85);
    EXPECT_EQ(strengthShareOf(Stage::SetBuild), 0.3);
    EXPECT_EQ(strengthShareOf(Stage::RestCut), 0.15);
}

TEST(LeverBest, IsTheFirstAndEveryHigherOne)
{
    LeverBest best;
    EXPECT_TRUE(best.take(-120));
    EXPECT_FALSE(best.take(-120));
    EXPECT_FALSE(best.take(-135));
    EXPECT_TRUE(best.take(-105));
}

}  // namespace chalk::plateau
