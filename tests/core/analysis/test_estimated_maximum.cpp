#include "core/analysis/estimated_maximum.h"

#include "tests/support/table_file.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::test {

namespace {

using analysis::estimatedMaximum;
using analysis::Formula;
using analysis::kFormulas;
using analysis::loadFor;
using analysis::maximumBand;
using analysis::NoEstimate;
using analysis::repsAt;
using base::Mass;
using base::Reps;

Mass wholeKilograms(int kg)
{
    return Mass::of(base::Load::fromCenti(100 * kg), base::MassUnit::Kilogram);
}

Mass anyLoad()
{
    return Mass::of(base::Load::fromCenti(*rc::gen::inRange(100, 50'000)), *rc::gen::element(base::MassUnit::Kilogram, base::MassUnit::Pound));
}

Formula anyFormula()
{
    return *rc::gen::elementOf(std::vector<Formula>(kFormulas.begin(), kFormulas.end()));
}

}  // namespace

TEST(EstimatedMaximum, IsThatOfTheEquationsToTenDigits)
{
    for (const TableRow& row : readTable("reference/maximum_formulas.csv")) {
        const Reps reps(numberIn(row, "reps"));
        for (const Formula formula : kFormulas) {
            const std::string key(keyOf(formula));
            const double maximum = reps == Reps(1) ? 100 : realIn(row, "maximum_" + key);
            EXPECT_NEAR(estimatedMaximum(wholeKilograms(100), reps, formula)->mass.kilograms(), maximum, 1.01e-10) << key << ' ' << reps.value();
            const double load = reps == Reps(1) ? 100 : realIn(row, "share_" + key);
            EXPECT_NEAR(loadFor(wholeKilograms(100), reps, formula)->mass.kilograms(), load, 1.01e-10) << key << ' ' << reps.value();
        }
    }
}

// 50 kg for 8, by the constants as first published. Reprints with e^(-0.75 r) and e^(-0.55 r) would give 102.18 and 94.85.
TEST(EstimatedMaximum, HasTheConstantsOfTheOriginals)
{
    const std::vector<double> expected{63.3333, 62.0810, 62.5546, 61.5572, 63.1432, 60.0000, 63.8357};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_NEAR(estimatedMaximum(wholeKilograms(50), Reps(8), kFormulas[i])->mass.kilograms(), expected[i], 5.1e-5);
    }
}

TEST(EstimatedMaximum, MarksWhatIsAboveTheRangeOfAFormula)
{
    EXPECT_TRUE(estimatedMaximum(wholeKilograms(60), Reps(10), Formula::Epley)->isInRange);
    EXPECT_FALSE(estimatedMaximum(wholeKilograms(60), Reps(11), Formula::Epley)->isInRange);
    EXPECT_TRUE(loadFor(wholeKilograms(60), Reps(12), Formula::Wathan)->isInRange);
    EXPECT_FALSE(loadFor(wholeKilograms(60), Reps(13), Formula::Wathan)->isInRange);
    EXPECT_TRUE(repsAt(wholeKilograms(75), wholeKilograms(100), Formula::Epley)->isInRange);
    EXPECT_FALSE(repsAt(wholeKilograms(74), wholeKilograms(100), Formula::Epley)->isInRange);
}

TEST(EstimatedMaximum, IsRefusedAtPolesAndOutsideOfRanges)
{
    EXPECT_TRUE(estimatedMaximum(wholeKilograms(60), Reps(36), Formula::Brzycki).has_value());
    EXPECT_EQ(estimatedMaximum(wholeKilograms(60), Reps(37), Formula::Brzycki).error(), NoEstimate::PastPole);
    EXPECT_TRUE(estimatedMaximum(wholeKilograms(60), Reps(37), Formula::Lander).has_value());
    EXPECT_EQ(loadFor(wholeKilograms(60), Reps(38), Formula::Lander).error(), NoEstimate::PastPole);
    EXPECT_EQ(estimatedMaximum(wholeKilograms(60), Reps(0), Formula::Epley).error(), NoEstimate::RepsOutOfRange);
    EXPECT_EQ(estimatedMaximum(wholeKilograms(60), Reps(101), Formula::Epley).error(), NoEstimate::RepsOutOfRange);
    EXPECT_EQ(estimatedMaximum(Mass(), Reps(5), Formula::Epley).error(), NoEstimate::LoadOutOfRange);
    EXPECT_EQ(estimatedMaximum(wholeKilograms(10'001), Reps(5), Formula::Epley).error(), NoEstimate::LoadOutOfRange);
    EXPECT_EQ(loadFor(-1 * wholeKilograms(60), Reps(5), Formula::Epley).error(), NoEstimate::LoadOutOfRange);
}

TEST(EstimatedMaximum, RepsAtALoadSayWhyThereAreNone)
{
    EXPECT_EQ(repsAt(wholeKilograms(100), wholeKilograms(100), Formula::Mayhew)->reps, 1);
    EXPECT_EQ(repsAt(wholeKilograms(99), wholeKilograms(100), Formula::Epley)->reps, 1) << "the equation gives 0.30";
    EXPECT_NEAR(repsAt(wholeKilograms(80), wholeKilograms(100), Formula::Epley)->reps, 7.5, 1e-12);
    EXPECT_EQ(repsAt(wholeKilograms(101), wholeKilograms(100), Formula::Epley).error(), NoEstimate::AboveMaximum);
    EXPECT_EQ(repsAt(wholeKilograms(50), wholeKilograms(100), Formula::Mayhew).error(), NoEstimate::AnyReps);
    EXPECT_EQ(repsAt(wholeKilograms(20), wholeKilograms(100), Formula::Epley).error(), NoEstimate::RepsOutOfRange);
    EXPECT_EQ(repsAt(Mass(), wholeKilograms(100), Formula::Epley).error(), NoEstimate::LoadOutOfRange);
}

TEST(EstimatedMaximum, TheBandIsOfTheFormulasInRange)
{
    const auto eight = maximumBand(wholeKilograms(50), Reps(8));
    ASSERT_TRUE(eight.has_value());
    EXPECT_EQ(eight->formulas, 7);
    EXPECT_NEAR(eight->lowest.kilograms(), 60, 1e-9);        // O'Conner
    EXPECT_NEAR(eight->median.kilograms(), 62.5546, 5.1e-5);  // Lander
    EXPECT_NEAR(eight->highest.kilograms(), 63.8357, 5.1e-5); // Wathan
    const auto twelve = maximumBand(wholeKilograms(100), Reps(12));
    ASSERT_TRUE(twelve.has_value());
    EXPECT_EQ(twelve->formulas, 3);
    EXPECT_NEAR(twelve->lowest.kilograms(), 128.2089, 5.1e-5);   // Lombardi
    EXPECT_NEAR(twelve->median.kilograms(), 135.3985, 5.1e-5);   // Mayhew
    EXPECT_NEAR(twelve->highest.kilograms(), 141.4959, 5.1e-5);  // Wathan
    EXPECT_EQ(maximumBand(wholeKilograms(100), Reps(1)), (analysis::MaximumBand{wholeKilograms(100), wholeKilograms(100), wholeKilograms(100), 7}));
    EXPECT_EQ(maximumBand(wholeKilograms(100), Reps(13)).error(), NoEstimate::BeyondEveryRange);
    EXPECT_EQ(maximumBand(wholeKilograms(100), Reps(40)).error(), NoEstimate::BeyondEveryRange);
    EXPECT_EQ(maximumBand(Mass(), Reps(5)).error(), NoEstimate::LoadOutOfRange);
}

RC_GTEST_PROP(EstimatedMaximumProperties, GrowsWithTheRepetitionsAndIsNeverBelowTheLoad, ())
{
    const Mass load = anyLoad();
    const Formula formula = anyFormula();
    const int reps = *rc::gen::inRange(1, 36);
    const Mass fewer = estimatedMaximum(load, Reps(reps), formula)->mass;
    RC_ASSERT(fewer >= load);
    RC_ASSERT(estimatedMaximum(load, Reps(reps + 1), formula)->mass > fewer);
}

RC_GTEST_PROP(EstimatedMaximumProperties, LoadsAndRepetitionsLeadBack, ())
{
    const Mass load = anyLoad();
    const Formula formula = anyFormula();
    const int reps = *rc::gen::inRange(1, 20);
    const Mass maximum = estimatedMaximum(load, Reps(reps), formula)->mass;
    RC_ASSERT(std::abs(loadFor(maximum, Reps(reps), formula)->mass.raw() - load.raw()) <= 1);
    RC_ASSERT(std::abs(repsAt(load, maximum, formula)->reps - reps) < 1e-6);
}

}  // namespace chalk::test
