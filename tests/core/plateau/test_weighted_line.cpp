#include "core/plateau/weighted_line.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace chalk::plateau {
namespace {

// Heights and weights of 15 women (World Almanac 1975): slope 3.45 and its standard error, as scipy 1.10 gives. With variances below
// the scatter the error is that of ordinary least squares.
TEST(WeightedLine, IsOrdinaryLeastSquaresWhereAllWeighTheSame)
{
    const std::vector<double> weights{115, 117, 120, 123, 126, 129, 132, 135, 139, 142, 146, 150, 154, 159, 164};
    std::vector<WeightedPoint> points;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        points.push_back({58.0 + static_cast<double>(i), weights[i], 0.25});
    }
    const auto line = weightedLineThrough(points);
    ASSERT_TRUE(line);
    EXPECT_NEAR(line->slope, 3.45, 1e-12);
    EXPECT_NEAR(line->error, 0.0911364954661997, 1e-12);
}

TEST(WeightedLine, TheErrorIsNeverBelowWhatTheVariancesSay)
{
    const std::vector<WeightedPoint> points{{0, 0, 4}, {1, 1, 4}, {2, 2, 4}};
    const auto line = weightedLineThrough(points);
    ASSERT_TRUE(line);
    EXPECT_DOUBLE_EQ(line->slope, 1);
    EXPECT_DOUBLE_EQ(line->error, std::sqrt(4.0 / 2));
}

TEST(WeightedLine, AnUnsurePointCountsLess)
{
    const std::vector<WeightedPoint> points{{0, 0, 1}, {1, 0, 1}, {2, 1, 10}};
    const auto line = weightedLineThrough(points);
    ASSERT_TRUE(line);
    const double mean = 1.2 / 2.1;
    const double squares = mean * mean + (1 - mean) * (1 - mean) + (2 - mean) * (2 - mean) / 10;
    EXPECT_NEAR(line->slope, (2 - mean) / 10 / squares, 1e-15);
}

TEST(WeightedLine, NeedsThreePointsAndWidth)
{
    const std::vector<WeightedPoint> two{{0, 0, 1}, {1, 1, 1}};
    EXPECT_FALSE(weightedLineThrough(two));
    const std::vector<WeightedPoint> above{{1, 0, 1}, {1, 1, 1}, {1, 2, 1}};
    EXPECT_FALSE(weightedLineThrough(above));
}

}  // namespace
}  // namespace chalk::plateau
