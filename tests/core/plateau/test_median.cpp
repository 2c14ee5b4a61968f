#include "core/plateau/median.h"

#include <gtest/gtest.h>

namespace chalk::plateau {

TEST(Median, IsTheMiddleOrTheMeanOfTheMiddleTwo)
{
    EXPECT_EQ(medianOf(std::vector<double>{5}), 5);
    EXPECT_EQ(medianOf(std::vector<double>{5, 1, 3}), 3);
    EXPECT_EQ(medianOf(std::vector<double>{8, 1, 3, 4}), 3.5);
}

TEST(Median, LastOfTakesNoMoreThanThereAre)
{
    const std::vector<double> values{1, 2, 3};
    EXPECT_EQ(lastOf(values, 2).front(), 2);
    EXPECT_EQ(lastOf(values, 9).size(), 3U);
    EXPECT_TRUE(lastOf(std::vector<double>{}, 2).empty());
}

}  // namespace chalk::plateau
