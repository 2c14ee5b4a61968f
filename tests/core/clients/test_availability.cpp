#include "core/clients/availability.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::clients {

TEST(WeekHours, StretchesThatTouchAreOne)
{
    WeekHours hours;
    EXPECT_TRUE(hours.isEmpty());
    EXPECT_TRUE(hours.add({0, 7 * 60, 8 * 60}));
    EXPECT_TRUE(hours.add({0, 8 * 60, 9 * 60 + 30}));
    EXPECT_TRUE(hours.add({6, 23 * 60, 24 * 60}));
    EXPECT_EQ(hours.stretches(), (std::vector<DayHours>{{0, 420, 570}, {6, 1380, 1440}}));
}

TEST(WeekHours, CoversASessionThatLiesWithin)
{
    WeekHours hours;
    ASSERT_TRUE(hours.add({2, 540, 660}));
    EXPECT_TRUE(hours.covers(2, 540, 120));
    EXPECT_TRUE(hours.covers(2, 545, 60));
    EXPECT_FALSE(hours.covers(2, 539, 60));
    EXPECT_FALSE(hours.covers(2, 601, 60));
    EXPECT_FALSE(hours.covers(3, 540, 60));
    EXPECT_FALSE(hours.covers(2, 1430, 60));
    EXPECT_FALSE(hours.covers(2, 540, 0));
}

TEST(WeekHours, RefusesWhatIsNoStretch)
{
    for (const DayHours& stretch : {DayHours{7, 60, 120}, DayHours{-1, 60, 120}, DayHours{0, 120, 120}, DayHours{0, 120, 60}, DayHours{0, -30, 60},
                                    DayHours{0, 1410, 1470}, DayHours{0, 15, 60}, DayHours{0, 60, 100}}) {
        WeekHours hours;
        EXPECT_FALSE(hours.add(stretch));
        EXPECT_TRUE(hours.isEmpty());
    }
}

RC_GTEST_PROP(WeekHours, StretchesSayAll, ())
{
    WeekHours hours;
    for (int i = 0; i < 7 * WeekHours::kSlotsPerDay; ++i) {
        hours.set(i / WeekHours::kSlotsPerDay, i % WeekHours::kSlotsPerDay, *rc::gen::arbitrary<bool>());
    }
    WeekHours again;
    for (const DayHours& stretch : hours.stretches()) {
        RC_ASSERT(again.add(stretch));
    }
    RC_ASSERT(again == hours);
}

}  // namespace chalk::clients
