#include "core/analysis/best_single.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::test {

namespace {

using analysis::bestSingle;
using analysis::maximumBand;
using base::Reps;

base::Mass massOf(double kilograms)
{
    return base::Mass::of(kilos(kilograms), base::MassUnit::Kilogram);
}

std::optional<analysis::BestSingle> barSingle(const std::vector<Work>& sets)
{
    return bestSingle(exposureOf(sets), lowerLift(), barbellKit());
}

}  // namespace

TEST(BestSingle, IsOfTheSetThatSpeaksForMost)
{
    const auto best = barSingle({{80, 8}, {90, 5}, {95, 1}});
    ASSERT_TRUE(best.has_value());
    EXPECT_EQ(best->load, massOf(90)) << "90 for 5 are about 105, 80 for 8 about 100";
    EXPECT_EQ(best->toFailure, Reps(5));
    EXPECT_EQ(best->band, maximumBand(massOf(90), Reps(5)).value());
    EXPECT_FALSE(best->isReserveKnown);
}

TEST(BestSingle, AReserveIsAdded)
{
    const auto best = barSingle({{80, 8, 2}, {90, 5, 0}});
    ASSERT_TRUE(best.has_value());
    EXPECT_EQ(best->load, massOf(80));
    EXPECT_EQ(best->toFailure, Reps(10));
    EXPECT_TRUE(best->isReserveKnown);
}

TEST(BestSingle, SomeSetsSayNothing)
{
    EXPECT_FALSE(barSingle({}).has_value());
    EXPECT_FALSE(barSingle({{80, 0}}).has_value());
    EXPECT_FALSE(barSingle({{0, 8}}).has_value());
    EXPECT_TRUE(barSingle({{80, 10, 2}}).has_value());
    EXPECT_FALSE(barSingle({{80, 10, 3}}).has_value()) << "13 to failure";
    Work lost{80, 8};
    lost.steadiness = progression::Steadiness::Lost;
    EXPECT_FALSE(barSingle({lost}).has_value());
    auto warmUp = exposureOf({{80, 8}});
    warmUp.sets.front().isWarmup = true;
    EXPECT_FALSE(bestSingle(warmUp, lowerLift(), barbellKit()).has_value());
    progression::Kit carry = barbellKit();
    carry.measure = lifts::Measure::Metres;
    EXPECT_FALSE(bestSingle(exposureOf({{80, 8}}), lowerLift(), carry).has_value());
}

TEST(BestSingle, TheBodyIsLiftedToo)
{
    progression::Kit kit = barbellKit();
    kit.bodyShare = base::Milli(1000);
    progression::LiftSetup setup = lowerLift();
    EXPECT_FALSE(bestSingle(exposureOf({{10, 5}}), setup, kit).has_value()) << "nobody knows how much";
    setup.bodyMass = kilos(70);
    EXPECT_EQ(bestSingle(exposureOf({{10, 5}}), setup, kit)->load, massOf(80));
    EXPECT_EQ(bestSingle(exposureOf({{-30, 1}}), setup, kit)->band.median, massOf(40));
}

RC_GTEST_PROP(BestSingleProperties, OneMoreSetNeverLowersIt, ())
{
    std::vector<Work> sets{{100, 5}};
    auto before = barSingle(sets);
    for (int more = 0; more < 5; ++more) {
        sets.push_back({2.5 * *rc::gen::inRange(0, 60), *rc::gen::inRange(0, 16), *rc::gen::inRange(0, 5)});
        const auto after = barSingle(sets);
        RC_ASSERT(after->band.median >= before->band.median);
        RC_ASSERT(after->band.lowest <= after->band.median && after->band.median <= after->band.highest);
        before = after;
    }
}

}  // namespace chalk::test
