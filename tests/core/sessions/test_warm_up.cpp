#include "core/sessions/warm_up.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::sessions {

namespace {

using base::Load;
using lifts::Measure;
using test::kilos;

/// `20x10 37.5x5` for a way up.
std::string waysUp(const lifts::Equipment& equipment, double working, WarmUpLength length = WarmUpLength::Full, Measure measure = Measure::Reps)
{
    std::string text;
    for (const WarmUpSet& set : warmUpRamp(equipment, measure, kilos(working), length)) {
        text += text.empty() ? "" : " ";
        text += std::to_string(set.load.centi() / 100) + (set.load.centi() % 100 == 50 ? ".5" : "") + "x" + std::to_string(set.reps.value());
    }
    return text;
}

lifts::Equipment bar()
{
    return test::barbellKit().equipment;
}

lifts::Equipment anyEquipment()
{
    const int kind = *rc::gen::inRange(0, 4);
    std::vector<Load> loads{Load()};
    for (int i = *rc::gen::inRange(0, 8); i > 0; --i) {
        loads.push_back(Load::fromCenti(*rc::gen::inRange(-4000, 12000)));
    }
    switch (kind) {
    case 0:
        return bar();
    case 1:
        return lifts::Stack{kilos(5), kilos(5 * *rc::gen::inRange(1, 30)), kilos(*rc::gen::inRange(1, 10))};
    case 2:
        std::erase_if(loads, [](Load load) { return load < Load(); });
        return lifts::FixedSet{loads};
    default:
        return lifts::BodyAdded{loads};
    }
}

}  // namespace

TEST(WarmUp, OnABarGoesUpInFourSets)
{
    EXPECT_EQ(waysUp(bar(), 100), "20x10 50x5 70x3 85x2");
    EXPECT_EQ(waysUp(bar(), 77.5), "20x10 37.5x5 52.5x3 65x2") << "38.75, 54.25 and 65.875 rounded down to what the bar gives";
    EXPECT_EQ(waysUp(bar(), 100, WarmUpLength::Short), "50x5 70x3");
}

TEST(WarmUp, LightLoadsGetFewerSets)
{
    EXPECT_EQ(waysUp(bar(), 40), "20x10 27.5x3 32.5x2");
    EXPECT_EQ(waysUp(bar(), 25), "20x10");
    EXPECT_EQ(waysUp(bar(), 20), "");
    EXPECT_EQ(waysUp(bar(), 10), "") << "below the bare bar";
}

TEST(WarmUp, OtherEquipmentGetsTwoSets)
{
    const lifts::FixedSet dumbbells{{kilos(4), kilos(8), kilos(12), kilos(16), kilos(24)}};
    EXPECT_EQ(waysUp(dumbbells, 24), "12x5 16x3");
    EXPECT_EQ(waysUp(dumbbells, 24, WarmUpLength::Short), "12x5");
    EXPECT_EQ(waysUp(dumbbells, 4), "");
    EXPECT_EQ(waysUp(lifts::Stack{kilos(5), kilos(100), kilos(5)}, 60), "30x5 40x3");
}

TEST(WarmUp, HoldsAndCarriesGetOneSet)
{
    const lifts::FixedSet kettlebells{{kilos(8), kilos(12), kilos(16), kilos(20), kilos(24), kilos(28)}};
    EXPECT_EQ(waysUp(kettlebells, 28, WarmUpLength::Full, Measure::Metres), "12x5");
}

TEST(WarmUp, LoadOnTheBodyStartsWithTheBody)
{
    const lifts::BodyAdded belt{{kilos(-20), kilos(0), kilos(5), kilos(10)}};
    EXPECT_EQ(waysUp(belt, 10), "0x5");
    EXPECT_EQ(waysUp(belt, 0), "");
    EXPECT_EQ(waysUp(belt, -20), "");
}

RC_GTEST_PROP(WarmUp, EverySetCanBeSetUpAndTheyRiseToTheWorkingLoad, ())
{
    const lifts::Equipment equipment = anyEquipment();
    const auto table = lifts::LoadTable::of(equipment).value();
    const Load working = table.loads()[static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(table.loads().size())))];
    const auto length = *rc::gen::element(WarmUpLength::Full, WarmUpLength::Short);
    const auto measure = *rc::gen::element(Measure::Reps, Measure::Seconds, Measure::Metres);
    const auto ramp = warmUpRamp(equipment, measure, working, length);
    RC_ASSERT(ramp.size() <= 4U);
    for (std::size_t i = 0; i < ramp.size(); ++i) {
        RC_ASSERT(table.canGive(ramp[i].load));
        RC_ASSERT(ramp[i].load < working);
        RC_ASSERT((i == 0 || ramp[i - 1].load < ramp[i].load));
        RC_ASSERT((i == 0 || ramp[i - 1].reps > ramp[i].reps));
    }
}

}  // namespace chalk::sessions
