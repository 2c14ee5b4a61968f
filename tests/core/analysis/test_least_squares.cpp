#include "core/analysis/least_squares.h"

#include "tests/support/table_file.h"
#include "tests/support/trend_series.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace chalk::test {

namespace {

using analysis::leastSquares;
using analysis::TrendPoint;
using analysis::weightedLeastSquares;

}  // namespace

TEST(LeastSquares, SlopesAndErrorsAreTheKnownAnswersToTwelveDigits)
{
    const auto series = trendSeries();
    for (const TableRow& row : readTable("reference/trend_answers.csv")) {
        const auto fit = leastSquares(series.at(row.at("name")));
        ASSERT_TRUE(fit.has_value());
        EXPECT_TRUE(isNear(fit->slope, realIn(row, "line_slope"), 1e-12)) << row.at("name") << ' ' << fit->slope;
        EXPECT_TRUE(isNear(fit->slopeError.value(), realIn(row, "line_slope_error"), 1e-12)) << row.at("name") << ' ' << *fit->slopeError;
        EXPECT_EQ(fit->points, numberIn(row, "points"));
    }
}

TEST(LeastSquares, TakesPointsInAnyOrderAndWithTiedTimes)
{
    const auto series = trendSeries();
    for (const TableRow& row : readTable("reference/trend_lines.csv")) {
        const auto fit = leastSquares(series.at(row.at("name")));
        ASSERT_TRUE(fit.has_value());
        EXPECT_TRUE(isNear(fit->slope, realIn(row, "line_slope"), 1e-12)) << row.at("name");
        EXPECT_TRUE(isNear(fit->intercept, realIn(row, "line_intercept"), 1e-12)) << row.at("name") << ' ' << fit->intercept;
        EXPECT_TRUE(isNear(fit->slopeError.value(), realIn(row, "line_slope_error"), 1e-12)) << row.at("name");
    }
}

// NIST StRD, Norris: certified slope and intercept, and their certified deviations.
TEST(LeastSquares, IsCertified)
{
    const auto fit = leastSquares(trendSeries().at("norris"));
    ASSERT_TRUE(fit.has_value());
    EXPECT_NEAR(fit->slope, 1.00211681802045, 1e-14);
    EXPECT_NEAR(fit->intercept, -0.262323073774029, 1e-12);
}

// By hand, in fractions: weights 1, 2, 3 at times 0, 1, 3 with values 1, 3, 4. Means 11/6 and 19/6; Σ w t² = 53/6 and Σ w t v = 43/6 about
// them, so the slope is 43/53; Σ w residual² = 54/53 with one degree of freedom, so its error is √(54/53 / (53/6)) = 18/53.
TEST(LeastSquares, WeightsCount)
{
    const std::vector<TrendPoint> points{{0, 1}, {1, 3}, {3, 4}};
    const auto fit = weightedLeastSquares(points, std::vector<double>{1, 2, 3});
    ASSERT_TRUE(fit.has_value());
    EXPECT_NEAR(fit->slope, 43.0 / 53, 1e-15);
    EXPECT_NEAR(fit->intercept, 89.0 / 53, 1e-15);
    EXPECT_NEAR(fit->slopeError.value(), 18.0 / 53, 1e-15);
}

TEST(LeastSquares, SaysNothingWhereThereIsNoLine)
{
    const double infinite = std::numeric_limits<double>::infinity();
    EXPECT_FALSE(leastSquares({}).has_value());
    EXPECT_FALSE(leastSquares(inTurn({5})).has_value());
    EXPECT_FALSE(leastSquares(std::vector<TrendPoint>{{3, 1}, {3, 2}, {3, 4}}).has_value());
    EXPECT_FALSE(leastSquares(std::vector<TrendPoint>{{1, 1}, {2, infinite}, {3, 4}}).has_value());
    const auto two = leastSquares(inTurn({5, 8}));
    ASSERT_TRUE(two.has_value());
    EXPECT_EQ(two->slope, 3);
    EXPECT_FALSE(two->slopeError.has_value());
    EXPECT_FALSE(weightedLeastSquares(inTurn({1, 2, 3}), std::vector<double>{1, 1}).has_value());
    EXPECT_FALSE(weightedLeastSquares(inTurn({1, 2, 3}), std::vector<double>{1, 1, -1}).has_value());
    EXPECT_FALSE(weightedLeastSquares(inTurn({1, 2, 3}), std::vector<double>{0, 1, 0}).has_value());
}

RC_GTEST_PROP(LeastSquaresProperties, AWeightOfTwoIsThePointTwice, ())
{
    const auto points = anySeries(3, 12);
    std::vector<TrendPoint> repeated;
    std::vector<double> weights;
    for (const TrendPoint& point : points) {
        const int times = *rc::gen::inRange(1, 4);
        weights.push_back(times);
        repeated.insert(repeated.end(), static_cast<std::size_t>(times), point);
    }
    const auto weighted = weightedLeastSquares(points, weights);
    const auto plain = leastSquares(repeated);
    RC_ASSERT(isNear(weighted->slope, plain->slope, 1e-11));
    RC_ASSERT(isNear(weighted->intercept, plain->intercept, 1e-11));
    const double freedoms = std::sqrt(static_cast<double>(plain->freedom()) / weighted->freedom());
    RC_ASSERT(isNear(*weighted->slopeError, *plain->slopeError * freedoms, 1e-9));
}

RC_GTEST_PROP(LeastSquaresProperties, OnlyTheRatiosOfWeightsCountAndAWeightOfNoneLeavesOut, ())
{
    auto points = anySeries(4, 12);
    std::vector<double> weights;
    std::vector<double> scaled;
    for (std::size_t i = 0; i < points.size(); ++i) {
        weights.push_back(*rc::gen::inRange(1, 9));
        scaled.push_back(weights.back() * 0.37);
    }
    const auto fit = weightedLeastSquares(points, weights);
    RC_ASSERT(isNear(weightedLeastSquares(points, scaled)->slope, fit->slope, 1e-11));
    RC_ASSERT(isNear(*weightedLeastSquares(points, scaled)->slopeError, *fit->slopeError, 1e-11));
    points.push_back({1000, 1000});
    weights.push_back(0);
    RC_ASSERT(weightedLeastSquares(points, weights)->points == fit->points);
    RC_ASSERT(isNear(weightedLeastSquares(points, weights)->slope, fit->slope, 1e-11));
}

}  // namespace chalk::test
