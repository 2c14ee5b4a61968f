#include "core/direction/reps_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

using base::Load;
using base::Reps;
using base::Seconds;
using direction::RepsResult;
using direction::RepsTest;
using direction::TestEnd;
using direction::TestStep;

Load repsKg(double kilograms)
{
    return Load::fromCenti(static_cast<std::int32_t>(kilograms * 100));
}

/// Every 2.5 kg from 20 kg on.
RepsTest testFrom50()
{
    const auto loads = lifts::LoadTable::of(lifts::Barbell{repsKg(20), {{repsKg(25), 2}, {repsKg(10), 2}, {repsKg(5), 1}, {repsKg(2.5), 1}, {repsKg(1.25), 1}}});
    return {*loads, {repsKg(50), repsKg(75), repsKg(87.5)}};
}

void passRepsWarmUp(RepsTest& test)
{
    test.record({test.next()->load, Reps(5)});
    test.record({test.next()->load, Reps(3)});
}

}  // namespace

// Repetitions and rests: Haff and Triplett 2016, figure 17.1.
TEST(RepsTest, ThreeStepsLeadToTheSet)
{
    RepsTest test = testFrom50();
    EXPECT_EQ(*test.next(), (direction::TestSet{TestStep::WarmUp, repsKg(50), Reps(5), Reps(10), Seconds(0), Seconds(0)}));
    test.record({repsKg(50), Reps(8)});
    EXPECT_EQ(*test.next(), (direction::TestSet{TestStep::Ramp, repsKg(75), Reps(3), Reps(5), Seconds(60), Seconds(60)}));
    test.record({repsKg(75), Reps(3)});
    EXPECT_EQ(*test.next(), (direction::TestSet{TestStep::Attempt, repsKg(87.5), Reps(3), Reps(5), Seconds(120), Seconds(240)}));
    test.record({repsKg(87.5), Reps(4)});
    EXPECT_EQ(test.end(), TestEnd::Found);
    EXPECT_EQ(test.best(), (RepsResult{repsKg(87.5), Reps(4), 0}));
    EXPECT_FALSE(test.next());
}

TEST(RepsTest, FiveRepetitionsLeadToAHeavierSetThreeTimesAtMost)
{
    RepsTest test = testFrom50();
    passRepsWarmUp(test);
    test.record({repsKg(87.5), Reps(5)});
    ASSERT_TRUE(test.next());
    EXPECT_EQ(test.next()->load, repsKg(90)) << "5 per cent more are 91.9 kg";
    test.record({repsKg(90), Reps(5)});
    EXPECT_EQ(test.next()->load, repsKg(92.5)) << "5 per cent more are 94.5 kg";
    test.record({repsKg(92.5), Reps(5)});
    EXPECT_EQ(test.end(), TestEnd::TooMany);
    EXPECT_EQ(test.best()->load, repsKg(92.5));
}

TEST(RepsTest, AHeavierSetOfOneOrTwoDoesNotTakeThePlaceOfThree)
{
    RepsTest test = testFrom50();
    passRepsWarmUp(test);
    test.record({repsKg(87.5), Reps(5)});
    test.record({repsKg(90), Reps(2)});
    EXPECT_EQ(test.end(), TestEnd::Found);
    EXPECT_EQ(test.best(), (RepsResult{repsKg(87.5), Reps(5), 0}));
}

TEST(RepsTest, AnyPainEndsItAndKeepsWhatWasMade)
{
    RepsTest test = testFrom50();
    passRepsWarmUp(test);
    test.record({repsKg(87.5), Reps(3), 2});
    EXPECT_EQ(test.end(), TestEnd::Pain);
    EXPECT_EQ(test.best()->reps, Reps(3));
    RepsTest early = testFrom50();
    early.record({repsKg(50), Reps(10), 1});
    EXPECT_EQ(early.end(), TestEnd::Pain);
    EXPECT_FALSE(early.best());
}

TEST(RepsTest, NothingMadeFindsNothing)
{
    RepsTest test = testFrom50();
    passRepsWarmUp(test);
    test.record({repsKg(87.5), Reps(0)});
    EXPECT_EQ(test.end(), TestEnd::Stopped);
    EXPECT_FALSE(test.best());
    RepsTest heavy = testFrom50();
    heavy.record({repsKg(50), Reps(2)});
    EXPECT_EQ(heavy.end(), TestEnd::Stopped) << "the warm-up was too much already";
}

}  // namespace chalk::test
