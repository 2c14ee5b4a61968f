#include "core/direction/published_range.h"

#include <gtest/gtest.h>

namespace chalk::test {

using base::Milli;
using base::Reps;
using base::Seconds;
using base::Sets;
using direction::Aim;
using direction::NumberRange;
using direction::PlanFigure;
using direction::SetScheme;

// Haff and Triplett 2016, tables 17.9 (strength 85 per cent and more, 6 repetitions and fewer; hypertrophy 67 to 85, 6 to 12), 17.11 (sets 2 to 6
// and 3 to 6), 17.12 (rests 2 to 5 min) and 21.2 (basic strength 80 to 95 per cent, 2 to 6 × 2 to 6).
TEST(PublishedRange, IsThePrintedOne)
{
    EXPECT_EQ(publishedRange(Aim::Strength).share.least, 850);
    EXPECT_EQ(publishedRange(Aim::Strength).reps.most, 6);
    EXPECT_EQ(publishedRange(Aim::Strength).sets, (NumberRange{2, 6}));
    EXPECT_EQ(publishedRange(Aim::Strength).rest, (NumberRange{120, 300}));
    EXPECT_EQ(publishedRange(Aim::BasicStrength).share, (NumberRange{800, 950}));
    EXPECT_EQ(publishedRange(Aim::BasicStrength).sets, (NumberRange{2, 6}));
    EXPECT_EQ(publishedRange(Aim::Muscle).share, (NumberRange{670, 850}));
    EXPECT_EQ(publishedRange(Aim::Muscle).reps, (NumberRange{6, 12}));
    EXPECT_EQ(publishedRange(Aim::Muscle).sets, (NumberRange{3, 6}));
    EXPECT_EQ(publishedRange(Aim::Assistance).share.most, 800) << "8RM is 80 per cent of the single";
}

TEST(PublishedRange, EveryFigureThatLeavesItIsNamedInOrder)
{
    const SetScheme inside{Sets(3), Reps(4), Milli(850), Seconds(180), 2};
    EXPECT_TRUE(departuresOf(inside, Aim::Strength).empty());
    const SetScheme outside{Sets(7), Reps(8), Milli(849), Seconds(90), 2};
    const auto found = departuresOf(outside, Aim::Strength);
    ASSERT_EQ(found.size(), 4U);
    EXPECT_EQ(found[0].figure, PlanFigure::Share);
    EXPECT_EQ(found[0].value, 849);
    EXPECT_EQ(found[1].figure, PlanFigure::Reps);
    EXPECT_EQ(found[2].figure, PlanFigure::Sets);
    EXPECT_EQ(found[3].figure, PlanFigure::Rest);
    EXPECT_FALSE(found[3].source.empty());
}

TEST(PublishedRange, KeysGoThereAndBack)
{
    for (const Aim aim : {Aim::BasicStrength, Aim::Strength, Aim::LightDay, Aim::Muscle, Aim::Assistance, Aim::Upkeep}) {
        EXPECT_EQ(direction::aimOf(keyOf(aim)), aim);
    }
}

}  // namespace chalk::test
