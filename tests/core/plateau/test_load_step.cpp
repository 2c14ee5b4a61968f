#include "core/plateau/load_step.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

namespace chalk::plateau {

TEST(LoadStep, CoarsePlatesTakeWeeks)
{
    EXPECT_NEAR(weeksPerLoadStep(test::loadOf(40), base::Load::fromCenti(250)), 6.944, 0.001);
    EXPECT_NEAR(weeksPerLoadStep(test::loadOf(100), base::Load::fromCenti(250)), 2.778, 0.001);
    EXPECT_NEAR(weeksPerLoadStep(test::loadOf(10), base::Load::fromCenti(9)), 1, 0.001);
}

}  // namespace chalk::plateau
