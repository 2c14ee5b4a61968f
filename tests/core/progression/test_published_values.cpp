#include "core/progression/exposure_facts.h"
#include "core/progression/load_steps.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

// Figures of the rules against published ones. The rest of the policy is common practice in the trade.

namespace chalk::test {

namespace {

using base::MassUnit;
using progression::LoadSteps;
using progression::Policy;

base::Load hundredths(int centi)
{
    return base::Load::fromCenti(centi);
}

}  // namespace

TEST(PublishedValues, LoadStepsLieInTheHandbookTable)
{
    // Haff and Triplett (eds.), Essentials of Strength Training and Conditioning, 4th ed. 2016, table 17.10, load increases:
    // upper body 2.5 to 10 lb (1 to 4 kg), lower body 5 to 15 lb (2 to 7 kg), from smaller to larger people.
    const Policy kg = Policy::defaultsFor(MassUnit::Kilogram);
    const Policy lb = Policy::defaultsFor(MassUnit::Pound);
    EXPECT_GE(kg.stepUpper, hundredths(100));
    EXPECT_LE(kg.stepUpper, hundredths(400));
    EXPECT_GE(kg.stepLower, hundredths(200));
    EXPECT_LE(kg.stepLower, hundredths(700));
    EXPECT_GE(lb.stepUpper, hundredths(250));
    EXPECT_LE(lb.stepUpper, hundredths(1000));
    EXPECT_GE(lb.stepLower, hundredths(500));
    EXPECT_LE(lb.stepLower, hundredths(1500));
}

TEST(PublishedValues, TheJumpCapIsThePositionStandsUpperEnd)
{
    // American College of Sports Medicine, Progression models in resistance training for healthy adults, Med Sci Sports Exerc
    // 41:687-708, 2009: a load increase of 2 to 10 per cent.
    EXPECT_EQ(Policy::defaultsFor(MassUnit::Kilogram).jumpCap, base::Milli(100));
}

TEST(PublishedValues, TheReserveIsRpe8)
{
    // Zourdos et al., J Strength Cond Res 30:267-275, 2016: RPE 10 is 0 repetitions in reserve, 9 is 1, 8 is 2, 7 is 3.
    const std::pair<int, int> scale[] = {{10, 0}, {9, 1}, {8, 2}, {7, 3}};
    for (const auto& [rpe, rir] : scale) {
        const auto facts = factsOf(exposureOf({{60, 8, rir}}), lifts::Measure::Reps, Policy::defaultsFor(MassUnit::Kilogram));
        EXPECT_EQ(facts.leastRir, 10 - rpe);
        EXPECT_EQ(facts.adjustedReps, 8 + rir - 2) << "reps with RPE 8 kept";
    }
}

TEST(PublishedValues, EpleysEquation)
{
    // Epley B., Poundage Chart, Boyd Epley Workout, Lincoln 1985: 1RM = w (1 + r / 30). 100 kg for 1, 5, 10 and 15 repetitions:
    // 103.33, 116.67, 133.33 and 150 kg; 225 lb for 10: 300 lb. The load for no repetition more is that maximum.
    const auto maximum = [](int centi, int reps) {
        const progression::LiftSetup setup = lowerLift();
        const auto loads = lifts::LoadTable::of(lifts::Stack{hundredths(centi), hundredths(3 * centi), hundredths(1)}).value();
        return LoadSteps(setup, setup.kit, loads).forCapacity(hundredths(centi), reps, 0);
    };
    EXPECT_EQ(maximum(10000, 1), hundredths(10333));
    EXPECT_EQ(maximum(10000, 5), hundredths(11666));
    EXPECT_EQ(maximum(10000, 10), hundredths(13333));
    EXPECT_EQ(maximum(10000, 15), hundredths(15000));
    EXPECT_EQ(maximum(22500, 10), hundredths(30000));
}

}  // namespace chalk::test
