#include "core/progression/swap_to.h"

#include <gtest/gtest.h>

namespace chalk::progression {

TEST(SwapTo, TakesEverythingThatTheLiftNeedsFromTheExercise)
{
    lifts::Exercise exercise;
    exercise.key = "loaded_carry";
    exercise.measure = lifts::Measure::Metres;
    exercise.bodyShare = base::Milli(250);
    exercise.pieces = 2;
    const lifts::Equipment bells = lifts::FixedSet{{base::Load::fromCenti(1600)}};
    const Swap swap = swapTo({&exercise, "Bells", bells}, base::Load::fromCenti(1600));
    EXPECT_EQ(swap, (Swap{bells, base::Load::fromCenti(1600), base::Milli(250), lifts::Measure::Metres, "loaded_carry", 2}));
    EXPECT_FALSE(swapTo({&exercise, "Bells", bells}, std::nullopt).startLoad);
}

}  // namespace chalk::progression
