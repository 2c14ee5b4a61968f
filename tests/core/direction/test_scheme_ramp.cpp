#include "core/direction/scheme_ramp.h"

#include <gtest/gtest.h>

namespace chalk::test {

using base::Milli;
using base::Reps;
using base::Sets;

TEST(SchemeRamp, GoesFromTheFirstToTheLast)
{
    const direction::Ramp ramp{800, 820};
    EXPECT_EQ(ramp.at(0, 3), 800);
    EXPECT_EQ(ramp.at(1, 3), 810);
    EXPECT_EQ(ramp.at(2, 3), 820);
    EXPECT_EQ(ramp.at(0, 1), 820) << "one week alone is the last";
    EXPECT_EQ((direction::Ramp{3, 4}.at(2, 4)), 4) << "two thirds are nearer to the next";
    EXPECT_EQ((direction::Ramp{4, 2}.at(1, 3)), 3);
}

// The chart: 8 repetitions at 80 per cent, 6 at 85, 4 at 90 (Haff and Triplett 2016, table 17.7).
TEST(SchemeRamp, RepetitionsOfAShareAreThoseOfTheChart)
{
    EXPECT_EQ(direction::chartReps(Milli(800)), 8);
    EXPECT_EQ(direction::chartReps(Milli(850)), 6);
    EXPECT_EQ(direction::chartReps(Milli(900)), 4);
    EXPECT_EQ(direction::chartReps(Milli(901)), 3);
    EXPECT_EQ(direction::chartReps(Milli(1000)), 1);
    EXPECT_EQ(direction::chartReps(Milli(400)), 10) << "the chart ends there";
    EXPECT_EQ(direction::reserveAt(Milli(850), Reps(4)), 2);
    EXPECT_EQ(direction::reserveAt(Milli(950), Reps(2)), 1) << "never to failure";
}

TEST(SchemeRamp, ALighterWeekHasHalfOfTheSetsAtALightDaysLoad)
{
    const direction::PlannedWork work{direction::Aim::Strength, {Sets(5), Reps(3), Milli(850), base::Seconds(210), 3}, Reps(3)};
    const auto light = direction::lightened(work);
    EXPECT_EQ(light.scheme.sets, Sets(3));
    EXPECT_EQ(light.scheme.share, Milli(680));
    EXPECT_EQ(light.scheme.reps, Reps(3));
}

}  // namespace chalk::test
