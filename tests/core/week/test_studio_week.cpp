#include "core/week/studio_week.h"

#include <gtest/gtest.h>

namespace chalk::week {

TEST(StudioWeekTest, TheUsualHoursAreThoseThatAreStated)
{
    const clients::WeekHours hours = StudioWeek::usualOpeningHours();
    EXPECT_TRUE(hours.covers(0, 6 * 60, 15 * 60));
    EXPECT_FALSE(hours.covers(0, 6 * 60, 15 * 60 + 30));
    EXPECT_TRUE(hours.covers(5, 8 * 60, 6 * 60));
    EXPECT_FALSE(hours.covers(6, 9 * 60, 60));
}

TEST(StudioWeekTest, WhatIsByDefaultIsSound)
{
    EXPECT_FALSE(faultOf(StudioWeek()));
    EXPECT_FALSE(faultOf(CoachWork()));
    EXPECT_FALSE(faultOf(ClientPlanning()));
}

TEST(StudioWeekTest, AFigureOutOfItsRangeIsNamed)
{
    StudioWeek studio;
    studio.weights.gapPer15 = -1;
    EXPECT_EQ(faultOf(studio)->field, "gap_per_15");
    studio.stations[lifts::Station::Rack] = 21;
    EXPECT_EQ(faultOf(studio)->field, "stations.rack");
    EXPECT_EQ(faultOf(CoachWork{{}, 0, 480})->field, "capacity");
    EXPECT_EQ(faultOf(CoachWork{{}, 4, 59})->field, "soft_max_minutes");
    ClientPlanning planning;
    planning.standing = {{1, 540, base::CoachId(1)}, {1, 600, base::CoachId(1)}};
    EXPECT_EQ(faultOf(planning)->field, "standing");
    planning = {};
    planning.otherCoaches = {{base::CoachId(2), 10}, {base::CoachId(2), 20}};
    EXPECT_EQ(faultOf(planning)->field, "other_coaches");
}

TEST(StudioWeekTest, AClosureEndsAfterItBegins)
{
    const base::Date day = *base::Date::fromYmd(2026, 12, 24);
    EXPECT_FALSE(faultOf(Closure{day, day, 0, kDayMinutes, {}, {}, 0, "Between the years"}));
    EXPECT_EQ(faultOf(Closure{day, day - 1, 0, kDayMinutes, {}, {}, 0, {}})->field, "last");
    EXPECT_EQ(faultOf(Closure{day, day, 600, 600, {}, {}, 0, {}})->field, "to");
    EXPECT_EQ(faultOf(Closure{day, day, 0, 600, base::CoachId(1), lifts::Station::Rack, 1, {}})->field, "coach");
}

}  // namespace chalk::week
