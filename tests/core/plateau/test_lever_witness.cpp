#include "core/plateau/lever_witness.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string_view>

namespace chalk::plateau {
namespace {

/// A row for each letter: `+` met, `-` missed, `.` not valid.
std::optional<LeverReading> leverReadingIn(std::string_view record)
{
    std::vector<CleanExposure> rows;
    for (const char letter : record) {
        CleanExposure row;
        row.isValid = letter != '.';
        row.isComplete = letter == '+';
        rows.push_back(row);
    }
    return leverReadingOf(rows);
}

TEST(LeverWitness, NeedsEightValidExposures)
{
    EXPECT_FALSE(leverReadingIn("+++++++"));
    EXPECT_FALSE(leverReadingIn("++++..+++"));
    EXPECT_TRUE(leverReadingIn("++++.++++"));
}

TEST(LeverWitness, ComparesTheLastFourWithThoseBefore)
{
    const auto reading = leverReadingIn("-++++---");
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->misses, 3);
    EXPECT_DOUBLE_EQ(reading->usualShare, 2.0 / 8);
    EXPECT_DOUBLE_EQ(reading->z, (0.75 - 0.25) / std::sqrt(0.25 * 0.75 / 4));
}

TEST(LeverWitness, LooksBackOnSixteen)
{
    EXPECT_DOUBLE_EQ(leverReadingIn("++++++++++++++++++++")->usualShare, 1.0 / 20);
    EXPECT_DOUBLE_EQ(leverReadingIn("-+++++++++++++++++++")->usualShare, 2.0 / 20);
    EXPECT_DOUBLE_EQ(leverReadingIn("--+++++++++++++++++++")->usualShare, 2.0 / 20);
}

TEST(LeverWitness, SaysNoMoreThanThree)
{
    EXPECT_EQ(leverReadingIn("++++++++++++++++----")->z, 3);
    EXPECT_EQ(leverReadingIn("----------------++++")->z, -3);
}

}  // namespace
}  // namespace chalk::plateau
