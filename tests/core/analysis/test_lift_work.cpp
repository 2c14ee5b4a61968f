#include "core/analysis/lift_work.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::test {

namespace {

using analysis::BodyShare;
using analysis::massMoved;
using analysis::workOf;
using base::Mass;

constexpr double kNoRoundingKg = 1e-9;

/// Sets of a lift with no body share, as one exposure.
analysis::Work barWork(const std::vector<Work>& sets)
{
    return workOf(exposureOf(sets), lowerLift(), barbellKit(), BodyShare::LeftOut);
}

progression::Kit bodyKit(int milli)
{
    progression::Kit kit = barbellKit();
    kit.bodyShare = base::Milli(milli);
    return kit;
}

progression::LiftSetup setupAt(double bodyKilograms)
{
    progression::LiftSetup setup = lowerLift();
    setup.bodyMass = kilos(bodyKilograms);
    return setup;
}

}  // namespace

// Haff and Triplett (eds.), Essentials of Strength Training and Conditioning, 4th ed. 2016, ch. 17: 2 × 10 with 50 is 1000; 15 repetitions with 100
// are 1500 whatever the sets.
TEST(LiftWork, VolumeIsThatOfTheHandbook)
{
    const analysis::Work two = barWork({{50, 10}, {50, 10}});
    EXPECT_EQ(two.volume.kilograms(), 1000);
    EXPECT_EQ(two.reps, 20);
    EXPECT_EQ(two.sets, 2);
    EXPECT_EQ(barWork({{100, 5}, {100, 5}, {100, 5}}).volume.kilograms(), 1500);
    EXPECT_EQ(barWork({{100, 15}}).volume.kilograms(), 1500);
}

// A worked question of an exam on the handbook: 5 with 50, 5 with 75 and three times 5 with 100 are 2125 in 25 repetitions, 85 on average.
TEST(LiftWork, IntensityIsTheMeanOfARepetition)
{
    const analysis::Work pyramid = barWork({{50, 5}, {75, 5}, {100, 5}, {100, 5}, {100, 5}});
    EXPECT_EQ(pyramid.volume.kilograms(), 2125);
    EXPECT_EQ(pyramid.reps, 25);
    EXPECT_EQ(pyramid.meanLoad()->kilograms(), 85);
    EXPECT_EQ(barWork({{50, 1}, {75, 2}}).meanLoad(), Mass::fromRaw(666'666'666'667)) << "66.67 kg, to the nearest tenth of a microgram";
    EXPECT_FALSE(analysis::Work().meanLoad().has_value());
}

// BMJ Military Health, a table of load measures: 3 × 8 with 65 kg in 45 minutes are 34.7 kg a minute; 10 with 55, 8 with 65 and 6 with 75 are
// 1520 kg, 63 on average. It prints 57 per cent of a single of 110 kg, from the rounded 63.
TEST(LiftWork, DensityAndRelativeLoadAreThePrintedOnes)
{
    const analysis::Work level = barWork({{65, 8}, {65, 8}, {65, 8}});
    EXPECT_EQ(level.volume.kilograms(), 1560);
    EXPECT_NEAR(analysis::densityOf(level.volume, 45).value(), 34.7, 0.05);
    EXPECT_FALSE(analysis::densityOf(level.volume, 0).has_value());
    const analysis::Work rising = barWork({{55, 10}, {65, 8}, {75, 6}});
    EXPECT_EQ(rising.volume.kilograms(), 1520);
    EXPECT_NEAR(rising.meanLoad()->kilograms(), 1520.0 / 24, kNoRoundingKg);
    const Mass single = Mass::of(kilos(110), base::MassUnit::Kilogram);
    EXPECT_NEAR(analysis::relativeLoad(*rising.meanLoad(), single).value(), 1520.0 / 24 / 110, 1e-12);
    EXPECT_NEAR(analysis::relativeLoad(Mass::of(kilos(63), base::MassUnit::Kilogram), single).value(), 0.57, 0.005);
    EXPECT_FALSE(analysis::relativeLoad(single, Mass()).has_value());
}

// The same handbook: a jump squat of 4 × 3 with 40 kg at a body mass of 80 kg is 12 × 120 = 1440 kg.
TEST(LiftWork, BodyMassCountsWhereItIsAskedFor)
{
    const auto exposure = exposureOf(std::vector<Work>(4, Work{40, 3}));
    EXPECT_EQ(workOf(exposure, setupAt(80), bodyKit(1000), BodyShare::Counted).volume.kilograms(), 1440);
    EXPECT_EQ(workOf(exposure, setupAt(80), bodyKit(1000), BodyShare::LeftOut).volume.kilograms(), 480);
    EXPECT_EQ(workOf(exposure, lowerLift(), bodyKit(0), BodyShare::Counted).volume.kilograms(), 480) << "no share, no body mass needed";
    EXPECT_EQ(massMoved(kilos(-30), setupAt(80), bodyKit(650), BodyShare::Counted)->kilograms(), 22) << "0.65 × 80 - 30";
    EXPECT_EQ(massMoved(kilos(-60), setupAt(80), bodyKit(650), BodyShare::Counted), Mass());
}

TEST(LiftWork, SetsThatCannotBeWeighedAreCountedApart)
{
    const auto exposure = exposureOf({{0, 8}, {0, 6}});
    EXPECT_EQ(workOf(exposure, lowerLift(), bodyKit(640), BodyShare::Counted), (analysis::Work{Mass(), 0, 0, 2}));
    EXPECT_EQ(workOf(exposure, lowerLift(), bodyKit(640), BodyShare::LeftOut), analysis::Work());
    EXPECT_EQ(workOf(exposure, setupAt(50), bodyKit(640), BodyShare::Counted), (analysis::Work{14 * Mass::of(kilos(32), base::MassUnit::Kilogram), 14, 2, 0}));
}

TEST(LiftWork, WarmUpsAndEmptySetsAreNoWork)
{
    auto exposure = exposureOf({{60, 5}, {100, 0}, {-20, 5}, {100, 5}});
    exposure.sets.front().isWarmup = true;
    EXPECT_EQ(workOf(exposure, lowerLift(), barbellKit(), BodyShare::LeftOut), (analysis::Work{5 * Mass::of(kilos(100), base::MassUnit::Kilogram), 5, 1, 0}));
}

TEST(LiftWork, PairsHoldsCarriesAndPounds)
{
    progression::Kit pair = fixedKit({10, 12});
    pair.pieces = 2;
    EXPECT_EQ(workOf(exposureOf({{12, 10}}), lowerLift(), pair, BodyShare::LeftOut).volume.kilograms(), 240);
    progression::Kit hold = fixedKit({10});
    hold.measure = lifts::Measure::Seconds;
    EXPECT_EQ(workOf(exposureOf({{10, 31}}), lowerLift(), hold, BodyShare::LeftOut).reps, 10) << "31 s at 3 s a repetition";
    hold.measure = lifts::Measure::Metres;
    EXPECT_EQ(workOf(exposureOf({{10, 20}}), lowerLift(), hold, BodyShare::LeftOut).volume.kilograms(), 50) << "20 m at 4 m a repetition";
    progression::LiftSetup pounds = lowerLift();
    pounds.unit = base::MassUnit::Pound;
    EXPECT_NEAR(workOf(exposureOf({{100, 10}}), pounds, barbellKit(), BodyShare::LeftOut).volume.kilograms(), 453.59237, kNoRoundingKg);
}

TEST(LiftWork, WhatNobodyCanLiftStaysInRange)
{
    auto exposure = exposureOf({{0, 1}});
    exposure.sets.front().load = base::Load::fromCenti(2'000'000'000);
    exposure.sets.front().amount = 2'000'000'000;
    progression::Kit many = fixedKit({10});
    many.pieces = 100;
    EXPECT_EQ(workOf(exposure, lowerLift(), many, BodyShare::LeftOut).volume.kilograms(), 1'000'000);
}

RC_GTEST_PROP(LiftWorkProperties, SetsAddAndTheBodyNeverTakesAway, ())
{
    std::vector<Work> sets;
    for (int left = *rc::gen::inRange(0, 8); left > 0; --left) {
        sets.push_back({2.5 * *rc::gen::inRange(0, 60), *rc::gen::inRange(0, 16)});
    }
    const progression::LiftSetup setup = setupAt(*rc::gen::inRange(40, 140));
    const progression::Kit kit = bodyKit(*rc::gen::inRange(0, 1001));
    analysis::Work sum;
    for (const Work& set : sets) {
        sum += workOf(exposureOf({set}), setup, kit, BodyShare::Counted);
    }
    const analysis::Work whole = workOf(exposureOf(sets), setup, kit, BodyShare::Counted);
    const analysis::Work without = workOf(exposureOf(sets), setup, kit, BodyShare::LeftOut);
    RC_ASSERT(whole == sum);
    RC_ASSERT(whole.volume >= without.volume);
    RC_ASSERT(whole.reps >= without.reps);
    RC_ASSERT(whole.unweighed == 0);
}

}  // namespace chalk::test
