#include "core/progression/kit_change.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

TEST(KitChange, WhatASwapLeavesOpenStays)
{
    progression::Kit before = barbellKit();
    before.measure = lifts::Measure::Seconds;
    before.bodyShare = base::Milli(300);
    const progression::Swap swap{fixedKit({20, 24}).equipment, kilos(20), {}, {}, "goblet_squat", 2};
    const progression::Kit after = progression::kitAfter(swap, before);
    EXPECT_EQ(after.equipment, swap.equipment);
    EXPECT_EQ(after.startLoad, kilos(20));
    EXPECT_EQ(after.measure, lifts::Measure::Seconds);
    EXPECT_EQ(after.bodyShare, base::Milli(300));
    EXPECT_EQ(after.exerciseKey, "goblet_squat");
    EXPECT_EQ(after.pieces, 2);
    progression::Swap whole = swap;
    whole.measure = lifts::Measure::Reps;
    whole.bodyShare = base::Milli(0);
    EXPECT_EQ(progression::kitAfter(whole, before).measure, lifts::Measure::Reps);
    EXPECT_EQ(progression::kitAfter(whole, before).bodyShare, base::Milli(0));
}

}  // namespace chalk::test
