#include "core/plateau/effort.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

namespace chalk::plateau {
namespace {

void expectEffort(const LoggedExposure& exposure, const std::vector<double>& recorded, double reserve, double spread)
{
    const Effort effort = effortOf(exposure, recorded);
    EXPECT_DOUBLE_EQ(effort.reserve, reserve);
    EXPECT_DOUBLE_EQ(effort.spread, spread);
}

TEST(Effort, TakesWhatIsRecorded)
{
    auto exposure = test::plainExposure();
    exposure.reserve = 0;
    expectEffort(exposure, {4, 4}, 0, 0.8);
    exposure.reserve = 4;
    expectEffort(exposure, {}, 4, 1.8);
    test::setReps(exposure, {7, 7, 6});
    expectEffort(exposure, {}, 4, 1.8);
}

TEST(Effort, FiveOrMoreMeansMany)
{
    auto exposure = test::plainExposure();
    exposure.reserve = 5;
    expectEffort(exposure, {}, 5, 3);
    exposure.reserve = 7;
    expectEffort(exposure, {}, 7, 3);
}

TEST(Effort, WhatCannotBeIsNotRecorded)
{
    auto exposure = test::plainExposure();
    for (const int reserve : {-1, 8, 25}) {
        exposure.reserve = reserve;
        EXPECT_FALSE(soundReserve(exposure));
        expectEffort(exposure, {}, 2.5, 2);
    }
    exposure.reserve = 0;
    EXPECT_EQ(soundReserve(exposure), 0);
}

TEST(Effort, AMissSaysMoreThanTheReservesBefore)
{
    auto exposure = test::plainExposure();
    exposure.reserve = std::nullopt;
    test::setReps(exposure, {7, 8, 8});
    expectEffort(exposure, {4}, 0.7, 0.9);
    test::setReps(exposure, {8, 8, 7});
    expectEffort(exposure, {4}, 1.5, 0.9);
}

TEST(Effort, ElseTheMedianOfTheLastFour)
{
    auto exposure = test::plainExposure();
    exposure.reserve = std::nullopt;
    expectEffort(exposure, {}, 2.5, 2);
    expectEffort(exposure, {3}, 3, 2);
    expectEffort(exposure, {5, 0, 1, 3, 4}, 2, 2);
}

}  // namespace
}  // namespace chalk::plateau
