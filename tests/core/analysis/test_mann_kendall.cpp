#include "core/analysis/mann_kendall.h"

#include "tests/support/table_file.h"
#include "tests/support/trend_series.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace chalk::test {

namespace {

using analysis::exactUpperTail;
using analysis::MannKendall;
using analysis::mannKendall;
using analysis::TrendPoint;

/// How many of the values' orders there are at each score, by going through them all.
std::vector<std::int64_t> scoresOfAllOrders(std::vector<TrendPoint> points)
{
    std::vector<std::int64_t> scores;
    std::vector<double> values;
    for (const TrendPoint& point : points) {
        values.push_back(point.value);
    }
    std::vector<std::size_t> order(points.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        order[i] = i;
    }
    do {
        std::int64_t score = 0;
        for (std::size_t i = 0; i < points.size(); ++i) {
            for (std::size_t j = 0; j < i; ++j) {
                const double rise = (values[order[i]] - values[order[j]]) * (points[i].time - points[j].time);
                score += rise > 0 ? 1 : rise < 0 ? -1 : 0;
            }
        }
        scores.push_back(score);
    } while (std::next_permutation(order.begin(), order.end()));
    return scores;
}

/// The variance of the score, each order of the values as likely as every other; its mean is 0.
double varianceOverAllOrders(const std::vector<TrendPoint>& points)
{
    const auto scores = scoresOfAllOrders(points);
    double squares = 0;
    for (const std::int64_t score : scores) {
        squares += static_cast<double>(score * score);
    }
    return squares / static_cast<double>(scores.size());
}

}  // namespace

TEST(MannKendall, IsTheKnownAnswersToTwelveDigits)
{
    const auto series = trendSeries();
    for (const TableRow& row : readTable("reference/trend_answers.csv")) {
        const std::string name = row.at("name");
        const auto test = mannKendall(series.at(name));
        ASSERT_TRUE(test.has_value()) << name;
        EXPECT_EQ(test->score, numberIn(row, "score")) << name;
        EXPECT_TRUE(isNear(test->variance, realIn(row, "variance"), 1e-12)) << name;
        EXPECT_TRUE(isNear(test->z, realIn(row, "z"), 1e-12)) << name;
        EXPECT_TRUE(isNear(test->tauA, realIn(row, "tau_a"), 1e-12)) << name;
        EXPECT_TRUE(isNear(test->tauB, realIn(row, "tau_b"), 1e-12)) << name;
        EXPECT_NEAR(test->chance / realIn(row, "chance"), 1, 1e-11) << name;
    }
}

TEST(MannKendall, TakesPointsInAnyOrder)
{
    const auto series = trendSeries();
    for (const TableRow& row : readTable("reference/trend_lines.csv")) {
        if (row.at("score").empty()) {
            continue;
        }
        const auto test = mannKendall(series.at(row.at("name")));
        ASSERT_TRUE(test.has_value());
        EXPECT_EQ(test->score, numberIn(row, "score"));
        EXPECT_TRUE(isNear(test->variance, realIn(row, "variance"), 1e-12));
        EXPECT_TRUE(isNear(test->z, realIn(row, "z"), 1e-12));
        EXPECT_NEAR(test->chance / realIn(row, "chance"), 1, 1e-11);
        EXPECT_TRUE(isNear(test->tauB, realIn(row, "tau_b"), 1e-12));
    }
}

TEST(MannKendall, TheExactTailIsTheCountedOne)
{
    for (const TableRow& row : readTable("reference/mann_kendall_tail.csv")) {
        std::vector<double> values;
        for (int i = 0; i < numberIn(row, "points"); ++i) {
            values.push_back(i);
        }
        const auto tail = exactUpperTail(values, numberIn(row, "score"));
        ASSERT_TRUE(tail.has_value());
        EXPECT_NEAR(*tail / realIn(row, "chance"), 1, 1e-11) << row.at("points") << ' ' << row.at("score");
    }
}

// R 4.2, cor.test, exact: a tree that always grew (Orange, 7 points) and the heights and weights of 15 women.
TEST(MannKendall, TheExactChanceHasTwoSides)
{
    const auto series = trendSeries();
    EXPECT_NEAR(mannKendall(series.at("Orange_1"))->exactChance.value(), 0.000396825396825397, 1e-17);
    EXPECT_NEAR(mannKendall(series.at("women"))->exactChance.value() / 1.52943274636396e-12, 1, 1e-12);
    EXPECT_NEAR(mannKendall(series.at("helsel_hirsch_1to7_outlier16"))->exactChance.value(), 0.00277777777777778, 1e-16);
    EXPECT_EQ(mannKendall(inTurn({1, 3, 2, 1.5}))->exactChance, 1) << "S = 0 is in the middle: never more than certain";
}

TEST(MannKendall, SaysNothingWhereNothingCanBeTested)
{
    EXPECT_FALSE(mannKendall(inTurn({1, 2})).has_value());
    EXPECT_FALSE(mannKendall(inTurn({4, 4, 4, 4})).has_value());
    EXPECT_FALSE(mannKendall(std::vector<TrendPoint>{{1, 1}, {1, 2}, {1, 3}}).has_value());
    EXPECT_FALSE(mannKendall(inTurn({1, std::nan(""), 3})).has_value());
    EXPECT_FALSE(mannKendall(std::vector<TrendPoint>{{1, 1}, {1, 2}, {2, 3}, {3, 4}})->exactChance.has_value()) << "tied times";
    EXPECT_TRUE(mannKendall(inTurn(std::vector<double>{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20}))->exactChance.has_value());
    EXPECT_FALSE(exactUpperTail(std::vector<double>(21, 1.0), 0).has_value());
}

TEST(MannKendall, VarianceIsThatOfAllOrdersWhereThreeAreTiedInBoth)
{
    const std::vector<TrendPoint> points{{1, 4}, {1, 5}, {1, 4}, {2, 4}, {3, 6}, {3, 5}};
    EXPECT_NEAR(mannKendall(points)->variance, varianceOverAllOrders(points), 1e-12);
}

RC_GTEST_PROP(MannKendallProperties, VarianceAndTailAreThoseOfAllOrders, ())
{
    auto points = anySeries(3, 6);
    const std::size_t tiedTimes = *rc::gen::inRange<std::size_t>(1, points.size());
    for (std::size_t i = 1; i < tiedTimes; ++i) {
        points[i].time = points[0].time;
    }
    const auto test = mannKendall(points);
    RC_PRE(test.has_value());
    RC_ASSERT(isNear(test->variance, varianceOverAllOrders(points), 1e-12));
    if (tiedTimes == 1) {
        const auto scores = scoresOfAllOrders(points);
        const auto atLeast = std::count_if(scores.begin(), scores.end(), [&test](std::int64_t score) { return score >= test->score; });
        std::vector<double> values;
        for (const TrendPoint& point : points) {
            values.push_back(point.value);
        }
        RC_ASSERT(isNear(exactUpperTail(values, test->score).value(), static_cast<double>(atLeast) / static_cast<double>(scores.size()), 1e-13));
    }
}

RC_GTEST_PROP(MannKendallProperties, BackwardsInTimeTurnsTheSign, ())
{
    auto points = anySeries(3, 25);
    const auto test = mannKendall(points);
    RC_PRE(test.has_value());
    for (TrendPoint& point : points) {
        point.time = -point.time;
    }
    const auto back = mannKendall(points);
    RC_ASSERT(back->score == -test->score);
    RC_ASSERT(back->z == -test->z);
    RC_ASSERT(back->chance == test->chance);
    RC_ASSERT(back->exactChance == test->exactChance);
}

}  // namespace chalk::test
