#include "core/analysis/maximum_formula.h"

#include "tests/support/table_file.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

using analysis::Formula;
using analysis::kFormulas;
using analysis::publishedReps;
using analysis::publishedShare;

/// Half of the last digit that the table prints, and what a double adds to it.
constexpr double kTenthDigit = 0.51e-10;

}  // namespace

TEST(MaximumFormula, SharesAreThoseOfTheEquationsToTenDigits)
{
    for (const TableRow& row : readTable("reference/maximum_formulas.csv")) {
        for (const Formula formula : kFormulas) {
            const std::string key(keyOf(formula));
            const double share = publishedShare(numberIn(row, "reps"), formula);
            EXPECT_NEAR(100 * share, realIn(row, "share_" + key), kTenthDigit) << key << ' ' << row.at("reps");
            EXPECT_NEAR(100 / share, realIn(row, "maximum_" + key), kTenthDigit) << key << ' ' << row.at("reps");
        }
    }
}

TEST(MaximumFormula, RepsAreTheInverseOfTheTable)
{
    for (const TableRow& row : readTable("reference/maximum_formulas.csv")) {
        for (const Formula formula : kFormulas) {
            const auto reps = publishedReps(realIn(row, "share_" + std::string(keyOf(formula))) / 100, formula);
            ASSERT_TRUE(reps.has_value());
            EXPECT_NEAR(*reps, numberIn(row, "reps"), 1e-8) << keyOf(formula);
        }
    }
}

TEST(MaximumFormula, LightLoadsAllowAnyNumberWhereTheEquationLevelsOff)
{
    EXPECT_FALSE(publishedReps(0.522, Formula::Mayhew).has_value());
    EXPECT_TRUE(publishedReps(0.523, Formula::Mayhew).has_value());
    EXPECT_FALSE(publishedReps(0.488, Formula::Wathan).has_value());
    EXPECT_TRUE(publishedReps(0.489, Formula::Wathan).has_value());
}

TEST(MaximumFormula, APoleIsWhereTheShareIsNoLongerAbove0)
{
    for (const Formula formula : kFormulas) {
        const auto pole = poleOf(formula);
        EXPECT_EQ(pole.has_value(), formula == Formula::Brzycki || formula == Formula::Lander);
        EXPECT_GT(publishedShare(pole.value_or(100) - 1, formula), 0) << keyOf(formula);
        EXPECT_EQ(publishedShare(pole.value_or(100), formula) <= 0, pole.has_value()) << keyOf(formula);
    }
}

TEST(MaximumFormula, KeysReadBack)
{
    for (const Formula formula : kFormulas) {
        EXPECT_EQ(analysis::formulaOf(keyOf(formula)), formula);
    }
    EXPECT_EQ(keyOf(Formula::Wathan), "wathan");
    EXPECT_FALSE(analysis::formulaOf("wathen").has_value());
}

}  // namespace chalk::test
