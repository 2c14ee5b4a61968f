#include "core/plateau/strength_index.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

#include <cmath>

namespace chalk::plateau {

TEST(StrengthIndex, IsTheLogarithmOfTheEstimatedMaximum)
{
    auto exposure = test::plainExposure();
    const StrengthIndex index = strengthIndexOf(exposure, {2, 1.3});
    EXPECT_DOUBLE_EQ(index.value, std::log(40 * (1 + 10.0 / 30)));
    EXPECT_DOUBLE_EQ(index.variance, 0.024 * 0.024 + std::pow(1.3 / 40, 2));
}

TEST(StrengthIndex, ManyRepsMakeItLessSure)
{
    auto exposure = test::plainExposure();
    test::setReps(exposure, {12, 12, 12});
    EXPECT_DOUBLE_EQ(strengthIndexOf(exposure, {2, 0}).variance, 0.024 * 0.024 + 0.01 * 0.01);
}

TEST(StrengthIndex, LaterSetsDoNotCount)
{
    auto exposure = test::plainExposure();
    const double before = strengthIndexOf(exposure, {2, 1}).value;
    test::setReps(exposure, {8, 10, 3});
    EXPECT_EQ(strengthIndexOf(exposure, {2, 1}).value, before);
}

TEST(StrengthIndex, NothingLoadedIsNoStrength)
{
    auto exposure = test::plainExposure();
    exposure.load = {};
    EXPECT_EQ(strengthIndexOf(exposure, {2, 1}).value, -HUGE_VAL);
}

}  // namespace chalk::plateau
