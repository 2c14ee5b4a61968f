#include "core/plateau/trend_witness.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

#include <cmath>

namespace chalk::plateau {
namespace {

/// `count` rows `days` apart; the index rises by `weekly` a week.
std::vector<CleanExposure> risingRows(int count, int days, double weekly, progression::Stage stage = progression::Stage::LoadBuild)
{
    std::vector<CleanExposure> rows;
    for (int i = 0; i < count; ++i) {
        CleanExposure row;
        row.date = test::firstLoggedDay() + i * days;
        row.stage = stage;
        row.index = 4 + weekly * i * days / 7;
        row.variance = 0.0001;
        row.isUsed = true;
        rows.push_back(row);
    }
    return rows;
}

std::optional<TrendReading> trendOf(const std::vector<CleanExposure>& rows)
{
    return trendReadingOf(trainingClockOf(rows));
}

TEST(TrendWitness, NeedsSixExposuresOverTwoWeeks)
{
    EXPECT_FALSE(trendOf(risingRows(5, 7, 0.01)));
    EXPECT_TRUE(trendOf(risingRows(6, 7, 0.01)));
    EXPECT_FALSE(trendOf(risingRows(7, 2, 0.01)));
    EXPECT_TRUE(trendOf(risingRows(9, 2, 0.01)));
    EXPECT_FALSE(trendReadingOf({}));
}

TEST(TrendWitness, ComparesTheSlopeWithTheLeastWorthHaving)
{
    const auto reading = trendOf(risingRows(8, 7, 0.001));
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->exposures, 8);
    EXPECT_NEAR(reading->slope, 0.001, 1e-12);
    EXPECT_NEAR(reading->error, 0.01 / std::sqrt(42), 1e-12);
    EXPECT_DOUBLE_EQ(reading->smallestGain, 0.0025);
    EXPECT_NEAR(reading->z, 0.0015 / reading->error, 1e-9);
}

TEST(TrendWitness, AsksForLessWhereStrengthIsNotTheLever)
{
    auto rows = risingRows(8, 7, 0, progression::Stage::RestCut);
    EXPECT_DOUBLE_EQ(trendOf(rows)->smallestGain, 0.0025 * 0.15);
    for (std::size_t i = 0; i < 4; ++i) {
        rows[i].stage = progression::Stage::LoadBuild;
    }
    EXPECT_DOUBLE_EQ(trendOf(rows)->smallestGain, 0.0025 * 0.575);
}

TEST(TrendWitness, SaysNoMoreThanThree)
{
    EXPECT_EQ(trendOf(risingRows(8, 7, 0.1))->z, -3);
    EXPECT_EQ(trendOf(risingRows(8, 7, -0.1))->z, 3);
}

}  // namespace
}  // namespace chalk::plateau
