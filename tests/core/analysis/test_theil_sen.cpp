#include "core/analysis/theil_sen.h"

#include "tests/support/table_file.h"
#include "tests/support/trend_series.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace chalk::test {

namespace {

using analysis::theilSen;
using analysis::TrendPoint;

}  // namespace

TEST(TheilSen, SlopeAndIntervalAreTheKnownAnswersToTwelveDigits)
{
    const auto series = trendSeries();
    for (const TableRow& row : readTable("reference/trend_answers.csv")) {
        const std::string name = row.at("name");
        const auto line = theilSen(series.at(name));
        ASSERT_TRUE(line.has_value()) << name;
        EXPECT_EQ(line->slopes, numberIn(row, "slopes")) << name;
        EXPECT_TRUE(isNear(line->slope, realIn(row, "slope"), 1e-12)) << name << ' ' << line->slope;
        EXPECT_TRUE(isNear(line->intercept, realIn(row, "intercept"), 1e-12)) << name << ' ' << line->intercept;
        EXPECT_TRUE(isNear(line->lowest.value(), realIn(row, "lowest_95"), 1e-12)) << name << ' ' << *line->lowest;
        EXPECT_TRUE(isNear(line->highest.value(), realIn(row, "highest_95"), 1e-12)) << name << ' ' << *line->highest;
    }
}

TEST(TheilSen, TakesPointsInAnyOrderAndWithTiedTimes)
{
    const auto series = trendSeries();
    for (const TableRow& row : readTable("reference/trend_lines.csv")) {
        const auto line = theilSen(series.at(row.at("name")));
        ASSERT_TRUE(line.has_value());
        EXPECT_TRUE(isNear(line->slope, realIn(row, "slope"), 1e-12)) << row.at("name") << ' ' << line->slope;
        EXPECT_TRUE(isNear(line->intercept, realIn(row, "intercept"), 1e-12)) << row.at("name") << ' ' << line->intercept;
    }
}

// Helsel and Hirsch: an outlier moves the line of least squares from 1 to 1.71, not this one.
TEST(TheilSen, AnOutlierDoesNotMoveIt)
{
    const auto series = trendSeries();
    EXPECT_EQ(theilSen(series.at("helsel_hirsch_1to7_clean"))->slope, 1);
    EXPECT_EQ(theilSen(series.at("helsel_hirsch_1to7_outlier16"))->slope, 1);
}

// With four points and 95 per cent, z √variance is 5.77 of 6 pairs: ranks 0.11 and 6.89, which are not there. With 80 per cent they are.
TEST(TheilSen, TooFewPointsHaveNoInterval)
{
    const auto four = theilSen(inTurn({1, 2, 4, 8}));
    ASSERT_TRUE(four.has_value());
    EXPECT_FALSE(four->lowest.has_value());
    EXPECT_FALSE(four->highest.has_value());
    EXPECT_TRUE(theilSen(inTurn({1, 2, 4, 8}), 0.8)->lowest.has_value());
    const auto two = theilSen(inTurn({5, 8}));
    ASSERT_TRUE(two.has_value());
    EXPECT_EQ(two->slope, 3);
    EXPECT_FALSE(two->lowest.has_value());
    const auto level = theilSen(inTurn({4, 4, 4, 4}));
    ASSERT_TRUE(level.has_value());
    EXPECT_EQ(level->lowest, 0);
    EXPECT_EQ(level->highest, 0);
}

TEST(TheilSen, SaysNothingWhereThereIsNoSlope)
{
    EXPECT_FALSE(theilSen({}).has_value());
    EXPECT_FALSE(theilSen(std::vector<TrendPoint>{{3, 1}, {3, 2}}).has_value());
    EXPECT_FALSE(theilSen(inTurn({1, std::nan(""), 3})).has_value());
    EXPECT_FALSE(theilSen(inTurn({1, 2, 3}), 1.0).has_value());
    EXPECT_FALSE(theilSen(inTurn({1, 2, 3}), 0.0).has_value());
}

RC_GTEST_PROP(TheilSenProperties, TurnsAndShiftsWithTheSeries, ())
{
    auto points = anySeries(3, 15);
    const auto line = theilSen(points);
    for (TrendPoint& point : points) {
        point.value = 3 * point.value - 2 * point.time + 5;
    }
    const auto turned = theilSen(points);
    RC_ASSERT(isNear(turned->slope, 3 * line->slope - 2, 1e-11));
}

RC_GTEST_PROP(TheilSenProperties, TheIntervalHoldsTheSlopeAndGrowsWithTheConfidence, ())
{
    const auto points = anySeries(5, 20);
    const auto narrow = theilSen(points, 0.5);
    const auto wide = theilSen(points, 0.8);
    RC_PRE(narrow->lowest && narrow->highest && wide->lowest && wide->highest);
    RC_ASSERT(*wide->lowest <= *narrow->lowest && *narrow->lowest <= narrow->slope);
    RC_ASSERT(narrow->slope <= *narrow->highest && *narrow->highest <= *wide->highest);
}

}  // namespace chalk::test
