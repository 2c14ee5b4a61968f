#include "core/progression/single_estimate.h"

#include <gtest/gtest.h>

namespace chalk::test {

using base::Load;
using base::Milli;
using base::Reps;

// The chart's 4 repetitions at 90 per cent (Haff and Triplett 2016, table 17.7): 90 kg for 3 with one left speaks for 100 kg.
TEST(SingleEstimate, ASetSpeaksByTheChart)
{
    using progression::SpokenLoad;
    const Load hundred = Load::fromCenti(10000);
    EXPECT_EQ(progression::spokenFor({Load::fromCenti(9000), Reps(3), 1}), (SpokenLoad{hundred, false, false}));
    EXPECT_EQ(progression::spokenFor({Load::fromCenti(8000), Reps(8), 0}), (SpokenLoad{hundred, false, false}));
    EXPECT_FALSE(progression::spokenFor({Load::fromCenti(8000), Reps(8), std::nullopt}).has_value());
    EXPECT_FALSE(progression::spokenFor({Load::fromCenti(8000), Reps(0), 0}).has_value());
    EXPECT_EQ(progression::spokenFor({Load::fromCenti(7000), Reps(9), 2}), (SpokenLoad{hundred, true, false})) << "11 at 70 per cent";
    EXPECT_EQ(progression::spokenFor({Load::fromCenti(6700), Reps(10), 2}), (SpokenLoad{hundred, true, false})) << "12 at 67 per cent";
    EXPECT_EQ(progression::spokenFor({Load::fromCenti(6500), Reps(12), 3}), (SpokenLoad{hundred, true, false})) << "15 at 65 per cent";
    EXPECT_EQ(progression::spokenFor({Load::fromCenti(6500), Reps(12), 10}), (SpokenLoad{hundred, true, true})) << "22: that or more";
}

TEST(SingleEstimate, MovesHalfOfTheWayInsideItsLimits)
{
    EXPECT_EQ(progression::estimateAfter(Load::fromCenti(10000), Load::fromCenti(10200)), Load::fromCenti(10100));
    EXPECT_EQ(progression::estimateAfter(Load::fromCenti(10000), Load::fromCenti(12000)), Load::fromCenti(10250));
    EXPECT_EQ(progression::estimateAfter(Load::fromCenti(10000), Load::fromCenti(9400)), Load::fromCenti(9700));
    EXPECT_EQ(progression::estimateAfter(Load::fromCenti(10000), Load::fromCenti(5000)), Load::fromCenti(9500));
    EXPECT_EQ(progression::estimateAfter(Load::fromCenti(10000), Load::fromCenti(10000)), Load::fromCenti(10000));
}

TEST(SingleEstimate, LoadsAreWhatTheEquipmentGives)
{
    const auto loads = *lifts::LoadTable::of(lifts::Stack{Load::fromCenti(500), Load::fromCenti(10000), Load::fromCenti(500)});
    EXPECT_EQ(progression::loadAt(Load::fromCenti(10000), Milli(850), loads), Load::fromCenti(8500));
    EXPECT_EQ(progression::loadAt(Load::fromCenti(10000), Milli(849), loads), Load::fromCenti(8000));
    EXPECT_EQ(progression::loadAt(Load::fromCenti(300), Milli(500), loads), Load::fromCenti(500)) << "the lightest there is";
    EXPECT_EQ(progression::loadAt(Load::fromCenti(10000), Milli(850), loads, Load::fromCenti(6000)), Load::fromCenti(2500));
}

}  // namespace chalk::test
