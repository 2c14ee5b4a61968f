#include "core/base/load.h"

#include <gtest/gtest.h>

namespace chalk::base {

TEST(Mass, PoundIsTheAgreedFraction)
{
    // International yard and pound agreement (1959): 1 lb = 0.45359237 kg exactly; products worked out by hand.
    EXPECT_EQ(Mass::of(Load::fromCenti(100), MassUnit::Pound).raw(), 4'535'923'700);
    EXPECT_DOUBLE_EQ(Mass::of(Load::fromCenti(4500), MassUnit::Pound).kilograms(), 20.41165665);
    EXPECT_DOUBLE_EQ(Mass::of(Load::fromCenti(250), MassUnit::Pound).kilograms(), 1.133980925);
    EXPECT_DOUBLE_EQ(Mass::of(Load::fromCenti(31500), MassUnit::Pound).kilograms(), 142.88159655);
}

TEST(Mass, RoundsToTheNearestHundredth)
{
    EXPECT_EQ(Mass::of(Load::fromCenti(4500), MassUnit::Pound).in(MassUnit::Kilogram), Load::fromCenti(2041));
    EXPECT_EQ(Mass::of(Load::fromCenti(2000), MassUnit::Kilogram).in(MassUnit::Pound), Load::fromCenti(4409));
    EXPECT_EQ(Mass::of(Load::fromCenti(-2000), MassUnit::Kilogram).in(MassUnit::Pound), Load::fromCenti(-4409));
    EXPECT_EQ(Mass::of(Load::fromCenti(7750), MassUnit::Kilogram).in(MassUnit::Kilogram), Load::fromCenti(7750));
}

}  // namespace chalk::base
