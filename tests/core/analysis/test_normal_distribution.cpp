#include "core/analysis/normal_distribution.h"

#include <gtest/gtest.h>

#include <cmath>

namespace chalk::test {

// Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, ch. 26, gives them to fewer digits; these are to sixteen.
TEST(NormalDistribution, QuantilesAreThoseOfTheTables)
{
    EXPECT_NEAR(analysis::normalUpperQuantile(0.025), 1.959963984540054, 4e-15);
    EXPECT_NEAR(analysis::normalUpperQuantile(0.05), 1.644853626951473, 4e-15);
    EXPECT_NEAR(analysis::normalUpperQuantile(0.005), 2.575829303548901, 4e-15);
    EXPECT_NEAR(analysis::normalUpperQuantile(0.001), 3.090232306167814, 4e-15);
    EXPECT_EQ(analysis::normalUpperQuantile(0.5), 0);
    EXPECT_NEAR(analysis::normalUpperQuantile(0.975), -1.959963984540054, 1e-14);
}

TEST(NormalDistribution, TheTailLeadsBack)
{
    for (double tail = 1e-300; tail < 0.5; tail *= 7) {
        const double back = analysis::normalUpperTail(analysis::normalUpperQuantile(tail));
        EXPECT_NEAR(back / tail, 1, 1e-12) << tail;
    }
    EXPECT_NEAR(analysis::normalUpperTail(1.96), 0.024997895148220435, 1e-17);
    EXPECT_EQ(analysis::normalUpperTail(0), 0.5);
}

TEST(NormalDistribution, ThereIsNoQuantileOutsideOf0And1)
{
    EXPECT_TRUE(std::isnan(analysis::normalUpperQuantile(0)));
    EXPECT_TRUE(std::isnan(analysis::normalUpperQuantile(1)));
    EXPECT_TRUE(std::isnan(analysis::normalUpperQuantile(std::nan(""))));
}

}  // namespace chalk::test
