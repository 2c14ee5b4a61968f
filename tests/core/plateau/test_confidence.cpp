#include "core/plateau/confidence.h"

#include <gtest/gtest.h>

namespace chalk::plateau {

TEST(Confidence, IsThatOfTheNodes)
{
    EXPECT_DOUBLE_EQ(confidenceOf(0, false).isSlow, 0.54);
    EXPECT_DOUBLE_EQ(confidenceOf(2.5, false).isSlow, 0.81);
    EXPECT_DOUBLE_EQ(confidenceOf(2.5, false).isStopped, 0.63);
    EXPECT_DOUBLE_EQ(confidenceOf(-2.5, true).isSlow, 0.26);
    EXPECT_DOUBLE_EQ(confidenceOf(-2.5, true).isStopped, 0.165);
}

TEST(Confidence, IsLinearBetweenThem)
{
    EXPECT_DOUBLE_EQ(confidenceOf(0.25, false).isSlow, 0.555);
    EXPECT_DOUBLE_EQ(confidenceOf(3.5, false).isStopped, 0.78);
    EXPECT_DOUBLE_EQ(confidenceOf(0, true).isSlow, 0.47);
}

TEST(Confidence, IsLevelBeyondTheEnds)
{
    EXPECT_DOUBLE_EQ(confidenceOf(-5, false).isSlow, 0.50);
    EXPECT_DOUBLE_EQ(confidenceOf(5.1, false).isSlow, 0.94);
    EXPECT_DOUBLE_EQ(confidenceOf(-5, true).isStopped, 0.13);
    EXPECT_DOUBLE_EQ(confidenceOf(5, true).isSlow, 0.65);
}

TEST(Confidence, FollowsTheShareOfStalls)
{
    EXPECT_NEAR(stoppedAmong(0.5, 0.29), 0.5, 1e-12);
    EXPECT_NEAR(stoppedAmong(0.5, 0.12), 0.25, 0.005);
}

}  // namespace chalk::plateau
