#include "core/checkin/direction_standing.h"

#include <gtest/gtest.h>

namespace chalk::checkin {

namespace {

const base::Date kStandingDay = *base::Date::parse("2026-11-25");

}  // namespace

TEST(DirectionStanding, NothingIsSettledWhereNothingWasAgreedOn)
{
    EXPECT_FALSE(isDirectionSettled({}, kStandingDay));
    EXPECT_FALSE(isPlanRunning({}, kStandingDay));
    EXPECT_FALSE(planToReview({}, kStandingDay));
}

TEST(DirectionStanding, APlanSettlesItToItsLastDay)
{
    const DirectionStanding standing{kStandingDay, std::nullopt};
    EXPECT_TRUE(isDirectionSettled(standing, kStandingDay));
    EXPECT_FALSE(planToReview(standing, kStandingDay));
    EXPECT_FALSE(isDirectionSettled(standing, kStandingDay + 1));
    EXPECT_EQ(planToReview(standing, kStandingDay + 1), kStandingDay);
    EXPECT_EQ(planToReview(standing, kStandingDay + 400), kStandingDay) << "until somebody looks at it";
}

// Common practice: a talk rests for one cycle of twelve weeks.
TEST(DirectionStanding, ADecisionSettlesItForACycle)
{
    const DirectionStanding standing{std::nullopt, kStandingDay};
    EXPECT_TRUE(isDirectionSettled(standing, kStandingDay));
    EXPECT_TRUE(isDirectionSettled(standing, kStandingDay + 83));
    EXPECT_FALSE(isDirectionSettled(standing, kStandingDay + 84));
}

TEST(DirectionStanding, OnlyADecisionSinceItsLastDayReviewsAPlan)
{
    const DirectionStanding before{kStandingDay, kStandingDay - 1};
    EXPECT_EQ(planToReview(before, kStandingDay + 1), kStandingDay);
    EXPECT_FALSE(isDirectionSettled(before, kStandingDay + 1));
    const DirectionStanding since{kStandingDay, kStandingDay};
    EXPECT_FALSE(planToReview(since, kStandingDay + 1));
    EXPECT_TRUE(isDirectionSettled(since, kStandingDay + 1));
    EXPECT_FALSE(isDirectionSettled(since, kStandingDay + 84));
    EXPECT_FALSE(planToReview(since, kStandingDay + 84)) << "the talk is due again by the rule, the plan was reviewed";
}

}  // namespace chalk::checkin
