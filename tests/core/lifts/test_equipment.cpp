#include "core/lifts/equipment.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <limits>
#include <map>
#include <numeric>
#include <set>

namespace chalk::lifts {

namespace {

using base::Load;
using test::kilos;

/// All sums of subsets, by trying every one.
std::set<Load> everySum(const Barbell& barbell)
{
    std::set<Load> sums{barbell.bar};
    for (const PlatePair& pair : barbell.pairs) {
        for (int n = 0; n < pair.pairs; ++n) {
            std::set<Load> more = sums;
            for (const Load sum : sums) {
                more.insert(sum + 2 * pair.plate);
            }
            sums = std::move(more);
        }
    }
    return sums;
}

Barbell anyBarbell()
{
    Barbell barbell{Load::fromCenti(*rc::gen::inRange(0, 2500)), {}};
    const int kinds = *rc::gen::inRange(0, 5);
    for (int i = 0; i < kinds; ++i) {
        barbell.pairs.push_back({Load::fromCenti(*rc::gen::inRange(1, 2500)), *rc::gen::inRange(0, 4)});
    }
    return barbell;
}

/// Every stack of plates for one side, and the best of each load: the fewest plates, and of those the heaviest first.
void tryEveryStack(const Barbell& barbell, std::size_t kind, std::vector<Load>& plates, std::map<Load, std::vector<Load>>& best)
{
    if (kind == barbell.pairs.size()) {
        std::vector<Load> sorted = plates;
        std::sort(sorted.rbegin(), sorted.rend());
        const Load load = barbell.bar + 2 * std::accumulate(sorted.begin(), sorted.end(), Load());
        const auto [found, isNew] = best.emplace(load, sorted);
        if (!isNew && (sorted.size() < found->second.size() || (sorted.size() == found->second.size() && sorted > found->second))) {
            found->second = sorted;
        }
        return;
    }
    for (int n = 0; n <= barbell.pairs[kind].pairs; ++n) {
        plates.insert(plates.end(), static_cast<std::size_t>(n), barbell.pairs[kind].plate);
        tryEveryStack(barbell, kind + 1, plates, best);
        plates.resize(plates.size() - static_cast<std::size_t>(n));
    }
}

std::string faultFieldOf(const Equipment& equipment)
{
    const auto loads = LoadTable::of(equipment);
    return loads ? "" : loads.error().field;
}

}  // namespace

RC_GTEST_PROP(Equipment, ABarbellGivesEverySubsetAndNothingElse, ())
{
    const Barbell barbell = anyBarbell();
    const auto table = LoadTable::of(barbell).value();
    const auto sums = everySum(barbell);
    RC_ASSERT(std::set<Load>(table.loads().begin(), table.loads().end()) == sums);
}

RC_GTEST_PROP(Equipment, PlatesPerSideMakeTheLoadFromWhatIsOnHand, ())
{
    const Barbell barbell = anyBarbell();
    const auto table = LoadTable::of(barbell).value();
    for (const Load load : table.loads()) {
        const auto plates = platesPerSide(barbell, load);
        RC_ASSERT(plates.has_value());
        RC_ASSERT(barbell.bar + 2 * std::accumulate(plates->begin(), plates->end(), Load()) == load);
        std::map<Load, int> used;
        for (const Load plate : *plates) {
            ++used[plate];
        }
        for (const auto& [plate, count] : used) {
            int onHand = 0;
            for (const PlatePair& pair : barbell.pairs) {
                onHand += pair.plate == plate ? pair.pairs : 0;
            }
            RC_ASSERT(count <= onHand);
        }
    }
    RC_ASSERT(!platesPerSide(barbell, barbell.bar + Load::fromCenti(1)));
}

TEST(Equipment, PlatesAreTakenHeaviestFirstAndFewest)
{
    const auto barbell = std::get<Barbell>(test::barbellKit().equipment);
    EXPECT_EQ(platesPerSide(barbell, kilos(77.5)), (std::vector{kilos(25), kilos(2.5), kilos(1.25)}));
    EXPECT_EQ(platesPerSide(barbell, kilos(20)), std::vector<Load>());
    EXPECT_FALSE(platesPerSide(barbell, kilos(15)));
    EXPECT_FALSE(platesPerSide(barbell, Load::fromCenti(std::numeric_limits<std::int32_t>::max()))) << "more than all plates";
    // 30 a side from 25 + 5 would be two plates, 20 + 10 too, 15 + 15 needs two of a kind: the heaviest of the fewest.
    EXPECT_EQ(platesPerSide({kilos(20), {{kilos(15), 2}, {kilos(25), 1}, {kilos(5), 1}}}, kilos(80)), (std::vector{kilos(25), kilos(5)}));
    EXPECT_EQ(platesPerSide({kilos(20), {{kilos(25), 1}, {kilos(15), 2}}}, kilos(80)), (std::vector{kilos(15), kilos(15)}));
}

RC_GTEST_PROP(Equipment, PlatesPerSideAreTheFewestAndOfThoseTheHeaviestFirst, ())
{
    const Barbell barbell = anyBarbell();
    std::map<Load, std::vector<Load>> best;
    std::vector<Load> plates;
    tryEveryStack(barbell, 0, plates, best);
    for (const auto& [load, wanted] : best) {
        RC_ASSERT(platesPerSide(barbell, load) == wanted);
    }
}

RC_GTEST_PROP(Equipment, NeighbouringLoadsAreThoseThatALookThroughTheListFinds, ())
{
    const auto table = LoadTable::of(anyBarbell()).value();
    const Load wanted = Load::fromCenti(*rc::gen::inRange(-100, 20000));
    std::optional<Load> below;
    std::optional<Load> above;
    for (const Load load : table.loads()) {
        below = load < wanted ? load : below;
        above = load > wanted && !above ? load : above;
    }
    RC_ASSERT(table.nextBelow(wanted) == below);
    RC_ASSERT(table.nextAbove(wanted) == above);
    RC_ASSERT(table.atMost(wanted) == (table.canGive(wanted) ? wanted : below.value_or(table.lightest())));
    RC_ASSERT(table.canGive(wanted) == (std::find(table.loads().begin(), table.loads().end(), wanted) != table.loads().end()));
}

// Bars, discs and collars of competitions. Sources: IWF Technical and Competition Rules and Regulations (bars of 20 and 15 kg,
// discs of 25, 20, 15, 10, 5, 2.5, 2, 1.5, 1 and 0.5 kg, collars of 2.5 kg each); IPF Technical Rules Book (bar with collars
// 25 kg; discs of 25, 20, 15, 10, 5, 2.5 and 1.25 kg; the loads of an attempt are multiples of 2.5 kg).

TEST(Equipment, WeightliftingSetGivesEveryWholeKilogram)
{
    for (const double bar : {20.0, 15.0}) {
        Barbell barbell{kilos(bar) + 2 * kilos(2.5), {}};
        for (const double disc : {25.0, 20.0, 15.0, 10.0, 5.0, 2.5, 2.0, 1.5, 1.0, 0.5}) {
            barbell.pairs.push_back({kilos(disc), 1});
        }
        const auto table = LoadTable::of(barbell).value();
        EXPECT_EQ(table.lightest(), kilos(bar + 5)) << "bar and collars";
        EXPECT_EQ(table.heaviest(), kilos(bar + 5 + 165)) << "one pair of each disc weighs 165 kg";
        for (int kg = static_cast<int>(bar) + 5; kg <= static_cast<int>(bar) + 170; ++kg) {
            EXPECT_TRUE(table.canGive(kilos(kg))) << kg;
        }
        EXPECT_FALSE(table.canGive(kilos(bar + 5.5))) << "half a kilogram would need a disc of a quarter";
    }
}

TEST(Equipment, PowerliftingSetGivesEverySmallestStep)
{
    Barbell barbell{kilos(25), {{kilos(25), 8}}};
    for (const double disc : {20.0, 15.0, 10.0, 5.0, 2.5, 1.25}) {
        barbell.pairs.push_back({kilos(disc), 1});
    }
    const auto table = LoadTable::of(barbell).value();
    for (double kg = 25; kg <= 25 + 2 * (8 * 25 + 53.75); kg += 2.5) {
        EXPECT_TRUE(table.canGive(kilos(kg))) << kg;
    }
    EXPECT_EQ(platesPerSide(barbell, kilos(227.5)), (std::vector{kilos(25), kilos(25), kilos(25), kilos(25), kilos(1.25)}));
}

TEST(Equipment, PoundPlates)
{
    // 45, 35, 25, 10, 5 and 2.5 lb in kilograms by the pound of 1959 (0.45359237 kg), products worked out by hand.
    const std::pair<int, double> rows[] = {{4500, 20.41165665}, {3500, 15.87573295}, {2500, 11.33980925},
                                           {1000, 4.5359237},   {500, 2.26796185},   {250, 1.133980925}};
    for (const auto& [centi, kg] : rows) {
        EXPECT_DOUBLE_EQ(base::Mass::of(Load::fromCenti(centi), base::MassUnit::Pound).kilograms(), kg);
    }
}

TEST(Equipment, TheNearestLoadsAreFound)
{
    const auto table = LoadTable::of(BodyAdded{{kilos(10), kilos(-20), kilos(0), kilos(0), kilos(2.5)}}).value();
    EXPECT_EQ(table.loads().size(), 4U);
    EXPECT_EQ(table.atMost(kilos(9.99)), kilos(2.5));
    EXPECT_EQ(table.atMost(kilos(-50)), kilos(-20));
    EXPECT_EQ(table.nextAbove(kilos(2.5)), kilos(10));
    EXPECT_FALSE(table.nextAbove(kilos(10)));
    EXPECT_EQ(table.nextBelow(kilos(2.5)), kilos(0));
    EXPECT_FALSE(table.nextBelow(kilos(-20)));
    const auto stack = LoadTable::of(Stack{kilos(5), kilos(21), kilos(5)}).value();
    EXPECT_EQ(stack.heaviest(), kilos(20));
}

TEST(Equipment, NonsenseIsNamed)
{
    EXPECT_EQ(faultFieldOf(Barbell{kilos(-1), {}}), "bar");
    EXPECT_EQ(faultFieldOf(Barbell{kilos(20), {{kilos(5), 1}, {kilos(0), 1}}}), "pairs[1]");
    EXPECT_EQ(faultFieldOf(Barbell{kilos(20), {{kilos(5), -1}}}), "pairs[0]");
    EXPECT_EQ(faultFieldOf(Barbell{kilos(20), {{kilos(1000), 50}}}), "pairs");
    EXPECT_EQ(faultFieldOf(Barbell{kilos(20), {{kilos(5), kMaxPairs + 1}}}), "pairs[0]");
    EXPECT_EQ(faultFieldOf(Barbell{kilos(20), {{kilos(49.8), 50}}}), "") << "5,000 kg just fit";
    EXPECT_EQ(faultFieldOf(Barbell{kilos(5001), {}}), "bar");
    EXPECT_EQ(faultFieldOf(FixedSet{}), "loads");
    EXPECT_EQ(faultFieldOf(FixedSet{{kilos(5), kilos(-5)}}), "loads[1]");
    EXPECT_EQ(faultFieldOf(Stack{kilos(5), kilos(4), kilos(1)}), "to");
    EXPECT_EQ(faultFieldOf(Stack{kilos(5), kilos(50), kilos(0)}), "step");
    EXPECT_EQ(faultFieldOf(Stack{kilos(-5), kilos(50), kilos(5)}), "from");
    EXPECT_EQ(faultFieldOf(Stack{kilos(0), kilos(5000), kilos(0.01)}), "") << "the finest stack there can be";
    EXPECT_EQ(faultFieldOf(BodyAdded{{kilos(0), kilos(5001)}}), "loads[1]");
    EXPECT_EQ(faultFieldOf(BodyAdded{{kilos(5)}}), "loads") << "0 must be there";
}

}  // namespace chalk::lifts
