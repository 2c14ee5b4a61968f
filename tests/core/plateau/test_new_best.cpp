#include "core/plateau/new_best.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

namespace chalk::plateau {
namespace {

std::vector<CleanExposure> rowsWith(std::initializer_list<double> indices)
{
    std::vector<CleanExposure> rows;
    for (const double index : indices) {
        CleanExposure row;
        row.row = rows.size();
        row.date = test::firstLoggedDay() + static_cast<int>(7 * rows.size());
        row.index = index;
        row.isUsed = true;
        rows.push_back(row);
    }
    return rows;
}

TEST(NewBest, TheSmoothedIndexIsHighestWhereItFirstWas)
{
    const auto day = test::firstLoggedDay() + 28;
    EXPECT_EQ(bestReadingOf(rowsWith({4, 5, 4, 4}), day).daysSinceIndex, 21);
    EXPECT_EQ(bestReadingOf(rowsWith({4, 4, 4, 4}), day).daysSinceIndex, 28);
    EXPECT_EQ(bestReadingOf(rowsWith({4, 4.1, 4.05, 4.2}), day).daysSinceIndex, 7);
    EXPECT_FALSE(bestReadingOf({}, day).daysSinceIndex);
}

// NIST/SEMATECH e-Handbook 6.3.2.4: lambda 0.3 gives 50.60, 49.52, 50.56 from 52, 47, 53 after 50. So the third is no new height.
TEST(NewBest, SmoothsAsTheHandbookDoes)
{
    EXPECT_EQ(bestReadingOf(rowsWith({50, 52, 47, 53}), test::firstLoggedDay() + 21).daysSinceIndex, 14);
}

TEST(NewBest, WhatIsNotUsedIsNoHeight)
{
    auto rows = rowsWith({4, 4.1, 9});
    rows[2].isUsed = false;
    EXPECT_EQ(bestReadingOf(rows, test::firstLoggedDay() + 14).daysSinceIndex, 7);
}

TEST(NewBest, TheLastBestOfTheLeverCounts)
{
    auto rows = rowsWith({4, 4, 4});
    EXPECT_FALSE(bestReadingOf(rows, test::firstLoggedDay() + 14).daysSinceLever);
    rows[0].isLeverBest = rows[1].isLeverBest = true;
    const auto best = bestReadingOf(rows, test::firstLoggedDay() + 14);
    EXPECT_EQ(best.daysSinceLever, 7);
    EXPECT_EQ(best.leverRow, 1U);
}

TEST(NewBest, HoldsForTenDaysOrSeven)
{
    EXPECT_FALSE(BestReading{}.isNew());
    EXPECT_TRUE((BestReading{10, 0, 99}).isNew());
    EXPECT_FALSE((BestReading{11, 0, 8}).isNew());
    EXPECT_TRUE((BestReading{11, 0, 7}).isNew());
    EXPECT_TRUE((BestReading{std::nullopt, std::nullopt, 0}).isNew());
}

}  // namespace
}  // namespace chalk::plateau
