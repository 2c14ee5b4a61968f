#include "core/plateau/training_window.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

namespace chalk::plateau {
namespace {

using test::firstLoggedDay;

/// Rows that count for the trend, on these days after the first.
std::vector<CleanExposure> rowsOn(std::initializer_list<int> days)
{
    std::vector<CleanExposure> rows;
    for (const int day : days) {
        CleanExposure row;
        row.row = rows.size();
        row.date = firstLoggedDay() + day;
        row.isUsed = true;
        rows.push_back(row);
    }
    return rows;
}

std::size_t windowSize(std::span<const CleanExposure> rows, int day)
{
    return trendWindowOf(trainingClockOf(rows), firstLoggedDay() + day).size();
}

TEST(TrainingWindow, TheClockCountsALongGapAsTenDays)
{
    const auto rows = rowsOn({0, 7, 17, 28, 58});
    const auto used = trainingClockOf(rows);
    EXPECT_DOUBLE_EQ(used[1].week, 1);
    EXPECT_DOUBLE_EQ(used[2].week, 1 + 10.0 / 7);
    EXPECT_DOUBLE_EQ(used[3].week, 1 + 20.0 / 7);
    EXPECT_DOUBLE_EQ(used[4].week, 1 + 30.0 / 7);
}

TEST(TrainingWindow, TheClockPassesOverWhatIsNotUsed)
{
    auto rows = rowsOn({0, 9, 18});
    rows[1].isUsed = false;
    const auto used = trainingClockOf(rows);
    ASSERT_EQ(used.size(), 2U);
    EXPECT_DOUBLE_EQ(used[1].week, 10.0 / 7);
}

TEST(TrainingWindow, HoldsLessThanSixWeeks)
{
    const auto rows = rowsOn({0, 1, 7, 14, 21, 28, 35, 36, 37, 38, 39, 40});
    EXPECT_EQ(windowSize(rows, 40), 12U);
    EXPECT_EQ(windowSize(rows, 42), 11U);
    EXPECT_EQ(windowSize(rows, 43), 10U);
}

TEST(TrainingWindow, IsWidenedToEightExposures)
{
    const auto rows = rowsOn({0, 7, 14, 21, 28, 35, 42, 49, 56});
    EXPECT_EQ(windowSize(rows, 56), 8U);
}

TEST(TrainingWindow, ButNeverToTenWeeks)
{
    const auto rows = rowsOn({0, 9, 18, 27, 36, 45, 54, 63});
    EXPECT_EQ(windowSize(rows, 69), 8U);
    EXPECT_EQ(windowSize(rows, 71), 7U);
    EXPECT_EQ(windowSize(rows, 200), 7U);
}

TEST(TrainingWindow, TheLastWeeksAreCountedByTheSameClock)
{
    const auto rows = rowsOn({0, 7, 14});
    const auto used = trainingClockOf(rows);
    EXPECT_EQ(lastWeeksOf(used, firstLoggedDay() + 16, 2).size(), 2U);
    EXPECT_EQ(lastWeeksOf(used, firstLoggedDay() + 16, 3).size(), 3U);
    EXPECT_TRUE(lastWeeksOf({}, firstLoggedDay(), 2).empty());
    EXPECT_TRUE(trendWindowOf({}, firstLoggedDay()).empty());
}

}  // namespace
}  // namespace chalk::plateau
