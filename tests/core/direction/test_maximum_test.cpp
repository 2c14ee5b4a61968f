#include "core/direction/maximum_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

using base::Load;
using base::Reps;
using base::Seconds;
using direction::MaximumTest;
using direction::NoTest;
using direction::TestEnd;
using direction::TestStep;

lifts::LoadTable barLoads()
{
    return *lifts::LoadTable::of(lifts::Barbell{Load::fromCenti(2000),
                                                {{Load::fromCenti(2500), 4}, {Load::fromCenti(1000), 2}, {Load::fromCenti(500), 2}, {Load::fromCenti(250), 2},
                                                 {Load::fromCenti(125), 2}}});
}

Load kg(double kilograms)
{
    return Load::fromCenti(static_cast<std::int32_t>(kilograms * 100));
}

/// Does what is asked for, and can lift up to `able`.
void walk(MaximumTest& test, Load able)
{
    while (const auto next = test.next()) {
        test.record({next->load, next->load <= able, 0});
    }
}

}  // namespace

// Haff and Triplett 2016, figure 17.1: repetitions 5 to 10, 3 to 5, 2 to 3, 1; rests 1, 2, 2 to 4 minutes; 10 to 20 per cent up for the lower body.
TEST(MaximumTest, TheStepsAreThePrintedOnes)
{
    MaximumTest test(lifts::Region::Lower, barLoads(), kg(100));
    const auto warmUp = *test.next();
    EXPECT_EQ(warmUp.step, TestStep::WarmUp);
    EXPECT_EQ(warmUp.repsLeast, Reps(5));
    EXPECT_EQ(warmUp.repsMost, Reps(10));
    Load before = warmUp.load;
    const std::array<std::pair<TestStep, Reps>, 3> expected{std::pair{TestStep::Ramp, Reps(5)}, {TestStep::NearMaximum, Reps(3)}, {TestStep::Attempt, Reps(1)}};
    const std::array<int, 3> rests{60, 120, 240};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        test.record({before, true, 0});
        ASSERT_TRUE(test.next().has_value());
        EXPECT_EQ(test.next()->step, expected[i].first);
        EXPECT_EQ(test.next()->repsMost, expected[i].second);
        EXPECT_LE(test.next()->restMost, Seconds(rests[i]));
        EXPECT_GE(100 * test.next()->load.centi(), 110 * before.centi() - 25'000) << "10 per cent, less one step of the plates";
        EXPECT_LE(100 * test.next()->load.centi(), 120 * before.centi());
        before = test.next()->load;
    }
    EXPECT_GE(before, kg(90));
    EXPECT_LE(before, kg(100)) << "three steps lead near to the estimate, not above it";
}

TEST(MaximumTest, FindsWhatThePersonCanLiftWithinAStep)
{
    for (const double able : {92.5, 97.5, 102.5, 110.0, 120.0}) {
        MaximumTest test(lifts::Region::Lower, barLoads(), kg(100));
        walk(test, kg(able));
        ASSERT_TRUE(test.best().has_value()) << able;
        EXPECT_LE(*test.best(), kg(able));
        EXPECT_LE(test.attempts(), MaximumTest::kMostAttempts);
        EXPECT_TRUE(test.end().has_value());
    }
}

TEST(MaximumTest, NeverAsksForALoadThatWasMissed)
{
    MaximumTest test(lifts::Region::Upper, barLoads(), kg(60));
    Load missed = kg(1000);
    while (const auto next = test.next()) {
        EXPECT_LT(next->load, missed);
        const bool isMade = next->load <= kg(58.75);
        if (!isMade) {
            missed = next->load;
        }
        test.record({next->load, isMade, 0});
    }
    EXPECT_TRUE(test.best().has_value());
}

TEST(MaximumTest, AnyPainEndsIt)
{
    MaximumTest test(lifts::Region::Lower, barLoads(), kg(100));
    test.record({test.next()->load, true, 1});
    EXPECT_FALSE(test.next().has_value());
    EXPECT_EQ(test.end(), TestEnd::Pain);
    test.record({kg(20), true, 0});
    EXPECT_EQ(test.results().size(), 1U) << "nothing is taken after the end";
}

TEST(MaximumTest, FiveAttemptsAreTheMost)
{
    MaximumTest test(lifts::Region::Upper, barLoads(), kg(40));
    walk(test, kg(200));
    EXPECT_EQ(test.attempts(), 5);
    EXPECT_EQ(test.end(), TestEnd::TooMany);
}

TEST(MaximumTest, TheEndOfTheEquipmentIsSaid)
{
    MaximumTest test(lifts::Region::Lower, *lifts::LoadTable::of(lifts::FixedSet{{kg(20), kg(30), kg(40)}}), kg(38));
    walk(test, kg(200));
    EXPECT_EQ(test.end(), TestEnd::EquipmentEnds);
}

TEST(MaximumTest, AMissedWarmUpOrTheCoachStopsIt)
{
    MaximumTest missed(lifts::Region::Lower, barLoads(), kg(100));
    missed.record({missed.next()->load, false, 0});
    EXPECT_EQ(missed.end(), TestEnd::Stopped);
    MaximumTest stopped(lifts::Region::Lower, barLoads(), kg(100));
    stopped.stop();
    EXPECT_EQ(stopped.end(), TestEnd::Stopped);
    EXPECT_FALSE(stopped.best().has_value());
}

TEST(MaximumTest, OnlySensibleLiftsOfClearedClientsAreTested)
{
    direction::TestCase lift;
    lift.daysSinceFirstLoad = 90;
    EXPECT_FALSE(reasonAgainstTest(lift).has_value());
    lift.daysSinceFirstLoad = 89;
    EXPECT_EQ(reasonAgainstTest(lift), NoTest::TooEarly);
    lift.pattern = lifts::Pattern::SingleLeg;
    EXPECT_EQ(reasonAgainstTest(lift), NoTest::NotThisLift);
    lift.hasCaution = true;
    EXPECT_EQ(reasonAgainstTest(lift), NoTest::Caution);
    lift.isLoaded = false;
    EXPECT_EQ(reasonAgainstTest(lift), NoTest::Unloaded);
    lift.isOnHold = true;
    EXPECT_EQ(reasonAgainstTest(lift), NoTest::OnHold);
    lift.isCleared = false;
    EXPECT_EQ(reasonAgainstTest(lift), NoTest::NotCleared);
}

}  // namespace chalk::test
