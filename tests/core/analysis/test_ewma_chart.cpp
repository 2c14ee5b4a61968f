#include "core/analysis/ewma_chart.h"

#include "tests/support/table_file.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace chalk::test {

namespace {

using analysis::ewmaChart;
using analysis::EwmaPlan;

constexpr EwmaPlan kHandbookPlan{50, 2.0539, 0.3, 3, true};

std::vector<double> columnOf(const std::vector<TableRow>& rows, const std::string& column)
{
    std::vector<double> numbers;
    for (const TableRow& row : rows) {
        numbers.push_back(realIn(row, column));
    }
    return numbers;
}

}  // namespace

TEST(EwmaChart, IsThatOfTheHandbook)
{
    const auto rows = readTable("reference/ewma_chart.csv");
    const auto chart = ewmaChart(columnOf(rows, "value"), kHandbookPlan);
    ASSERT_TRUE(chart.has_value());
    ASSERT_EQ(chart->size(), 20U);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_NEAR((*chart)[i].average, realIn(rows[i], "exact"), 0.51e-10) << i + 1;
        EXPECT_NEAR((*chart)[i].average, realIn(rows[i], "printed"), 0.005) << i + 1;
        EXPECT_NEAR((*chart)[i].lower, realIn(rows[i], "lower"), 0.51e-6) << i + 1;
        EXPECT_NEAR((*chart)[i].upper, realIn(rows[i], "upper"), 0.51e-6) << i + 1;
        EXPECT_FALSE((*chart)[i].isOut()) << i + 1;
    }
}

// The handbook prints 47.4115 and 52.5884 for every value; the pair does not lie evenly about 50, so its last digit is not sure.
TEST(EwmaChart, LimitsOfALongSeriesHoldFromTheFirstValueOn)
{
    EwmaPlan plan = kHandbookPlan;
    plan.isLimitExact = false;
    const auto chart = ewmaChart(std::vector<double>{50, 60, 60}, plan);
    ASSERT_TRUE(chart.has_value());
    EXPECT_NEAR(chart->front().lower, 47.4115, 1e-4);
    EXPECT_NEAR(chart->front().upper, 52.5884, 1e-4);
    EXPECT_NEAR(chart->front().upper, 52.588431738126616, 1e-13);
    EXPECT_FALSE((*chart)[0].isOut());
    EXPECT_TRUE((*chart)[1].isOut()) << "53.0";
    EXPECT_EQ((*chart)[1].upper, (*chart)[0].upper);
}

TEST(EwmaChart, TellsLowFromHigh)
{
    const auto chart = ewmaChart(std::vector<double>{40}, kHandbookPlan);
    ASSERT_TRUE(chart.has_value());
    EXPECT_TRUE(chart->front().isOut()) << "47.0 below 48.15";
}

TEST(EwmaChart, ThePlanHasRanges)
{
    const std::vector<double> values{1, 2};
    EXPECT_FALSE(ewmaChart(values, {0, 0, 0.3, 3}).has_value());
    EXPECT_FALSE(ewmaChart(values, {0, 1, 0, 3}).has_value());
    EXPECT_FALSE(ewmaChart(values, {0, 1, 1.01, 3}).has_value());
    EXPECT_FALSE(ewmaChart(values, {0, 1, 0.3, 0}).has_value());
    EXPECT_TRUE(ewmaChart({}, {0, 1, 1, 3})->empty());
}

RC_GTEST_PROP(EwmaChartProperties, AWeightOfOneIsTheValuesThemselves, ())
{
    const auto whole = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-1000, 1000));
    const std::vector<double> values(whole.begin(), whole.end());
    const auto chart = ewmaChart(values, {12, 2, 1, 3});
    for (std::size_t i = 0; i < values.size(); ++i) {
        RC_ASSERT((*chart)[i].average == values[i]);
        RC_ASSERT((*chart)[i].isOut() == (std::abs(values[i] - 12) > 6));
    }
}

}  // namespace chalk::test
