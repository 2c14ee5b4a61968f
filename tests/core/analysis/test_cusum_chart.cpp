#include "core/analysis/cusum_chart.h"

#include "tests/support/table_file.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::test {

namespace {

using analysis::cusumChart;
using analysis::CusumPlan;

std::vector<double> valuesIn(const std::vector<TableRow>& rows)
{
    std::vector<double> values;
    for (const TableRow& row : rows) {
        values.push_back(realIn(row, "value"));
    }
    return values;
}

}  // namespace

TEST(CusumChart, IsThatOfTheHandbook)
{
    const auto rows = readTable("reference/cusum_groups.csv");
    const auto chart = cusumChart(valuesIn(rows), {325, 0.3175, 4.1959});
    ASSERT_TRUE(chart.has_value());
    ASSERT_EQ(chart->size(), 20U);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_NEAR((*chart)[i].high, realIn(rows[i], "high"), 1e-12) << i + 1;
        EXPECT_NEAR((*chart)[i].low, realIn(rows[i], "low"), 1e-12) << i + 1;
        EXPECT_NEAR((*chart)[i].high, realIn(rows[i], "printed_high"), 0.005 + 1e-12) << i + 1;
        EXPECT_NEAR((*chart)[i].low, realIn(rows[i], "printed_low"), 0.005 + 1e-12) << i + 1;
        EXPECT_EQ((*chart)[i].isHigh, numberIn(rows[i], "signal_high") == 1) << i + 1;
        EXPECT_EQ((*chart)[i].isLow, numberIn(rows[i], "signal_low") == 1) << i + 1;
    }
}

TEST(CusumChart, IsThatOfTheTextbook)
{
    const auto rows = readTable("reference/cusum_viscosity.csv");
    const auto chart = cusumChart(valuesIn(rows), {99, 1, 10});
    ASSERT_TRUE(chart.has_value());
    ASSERT_EQ(chart->size(), 20U);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_NEAR((*chart)[i].high, realIn(rows[i], "high"), 1e-12) << i + 1;
        EXPECT_NEAR((*chart)[i].low, realIn(rows[i], "low"), 1e-12) << i + 1;
        EXPECT_FALSE((*chart)[i].isHigh || (*chart)[i].isLow) << i + 1;
    }
}

// Lucas and Crosier 1982, Technometrics 24:199-205, k = 0.5, h = 5: from half of h the third value signals, from 0 the seventh.
TEST(CusumChart, AHeadStartFindsAnEarlyShiftSooner)
{
    const std::vector<double> values{0.8, 1.9, 1.4, 2.0, 1.1, 0.7, 2.6};
    const std::vector<double> plain{0.3, 1.7, 2.6, 4.1, 4.7, 4.9, 7.0};
    const std::vector<double> ahead{2.8, 4.2, 5.1, 6.6, 7.2, 7.4, 9.5};
    const auto from0 = cusumChart(values, {0, 0.5, 5, 0});
    const auto fromHalf = cusumChart(values, {0, 0.5, 5, 2.5});
    ASSERT_TRUE(from0 && fromHalf);
    for (std::size_t i = 0; i < values.size(); ++i) {
        EXPECT_NEAR((*from0)[i].high, plain[i], 1e-12) << i + 1;
        EXPECT_NEAR((*fromHalf)[i].high, ahead[i], 1e-12) << i + 1;
        EXPECT_EQ((*from0)[i].isHigh, i >= 6) << i + 1;
        EXPECT_EQ((*fromHalf)[i].isHigh, i >= 2) << i + 1;
    }
}

TEST(CusumChart, ThePlanHasRanges)
{
    EXPECT_FALSE(cusumChart({}, {0, -0.1, 5}).has_value());
    EXPECT_FALSE(cusumChart({}, {0, 0.5, 0}).has_value());
    EXPECT_FALSE(cusumChart({}, {0, 0.5, 5, 5.1}).has_value());
    EXPECT_FALSE(cusumChart({}, {0, 0.5, 5, -1}).has_value());
    EXPECT_TRUE(cusumChart({}, {0, 0.5, 5, 5})->empty());
}

RC_GTEST_PROP(CusumChartProperties, ValuesMirroredAtTheTargetSwapTheSums, ())
{
    const auto whole = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-20, 21));
    const std::vector<double> values(whole.begin(), whole.end());
    std::vector<double> mirrored;
    for (const double value : values) {
        mirrored.push_back(6 - value);
    }
    const auto chart = cusumChart(values, {3, 1, 8});
    const auto other = cusumChart(mirrored, {3, 1, 8});
    for (std::size_t i = 0; i < values.size(); ++i) {
        RC_ASSERT((*chart)[i].high >= 0 && (*chart)[i].low >= 0);
        RC_ASSERT((*chart)[i].high == (*other)[i].low && (*chart)[i].low == (*other)[i].high);
        RC_ASSERT((*chart)[i].isHigh == (*other)[i].isLow);
    }
}

}  // namespace chalk::test
