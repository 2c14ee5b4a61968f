#include "core/lifts/equipment.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

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
    // 30 a side from 25 + 5 would be two plates, 20 + 10 too, 15 + 15 needs two of a kind: the heaviest of the fewest.
    EXPECT_EQ(platesPerSide({kilos(20), {{kilos(15), 2}, {kilos(25), 1}, {kilos(5), 1}}}, kilos(80)), (std::vector{kilos(25), kilos(5)}));
    EXPECT_EQ(platesPerSide({kilos(20), {{kilos(25), 1}, {kilos(15), 2}}}, kilos(80)), (std::vector{kilos(15), kilos(15)}));
}

TEST(Equipment, CompetitionBarsAndDiscs)
{
    // IWF Technical and Competition Rules and Regulations: bars of 20 and 15 kg; discs of 25, 20, 15, 10, 5, 2.5, 2, 1.5, 1 and
    // 0.5 kg; a pair of collars of 2.5 kg each, here carried as a plate of every load.
    Barbell barbell{kilos(20), {}};
    for (const double disc : {25.0, 20.0, 15.0, 10.0, 5.0, 2.5, 2.0, 1.5, 1.0, 0.5}) {
        barbell.pairs.push_back({kilos(disc), 1});
    }
    const auto table = LoadTable::of(barbell).value();
    EXPECT_EQ(table.lightest(), kilos(20));
    EXPECT_EQ(table.heaviest(), kilos(20 + 2 * 82.5));
    for (int kg = 20; kg <= 185; ++kg) {
        EXPECT_TRUE(table.canGive(kilos(kg))) << kg;
    }
    EXPECT_EQ(kilos(20) + 2 * kilos(2.5), kilos(25)) << "IPF Technical Rules: bar and collars weigh 25 kg";
    barbell.bar = kilos(15);
    EXPECT_EQ(LoadTable::of(barbell).value().lightest(), kilos(15));
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
    EXPECT_EQ(faultFieldOf(FixedSet{}), "loads");
    EXPECT_EQ(faultFieldOf(FixedSet{{kilos(5), kilos(-5)}}), "loads[1]");
    EXPECT_EQ(faultFieldOf(Stack{kilos(5), kilos(4), kilos(1)}), "to");
    EXPECT_EQ(faultFieldOf(Stack{kilos(5), kilos(50), kilos(0)}), "step");
    EXPECT_EQ(faultFieldOf(BodyAdded{{kilos(5)}}), "loads") << "0 must be there";
}

}  // namespace chalk::lifts
