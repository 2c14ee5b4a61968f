#include "core/planning/session_days.h"

#include "tests/support/small_plan.h"

#include <gtest/gtest.h>

namespace chalk::planning {

namespace {

using lifts::Pattern;

constexpr int kMonday = 0;
constexpr int kTuesday = 1;
constexpr int kWednesday = 2;
constexpr int kThursday = 3;
constexpr int kFriday = 4;
constexpr int kNine = 9 * 60;

SessionHours hoursOn(std::initializer_list<clients::DayHours> stretches)
{
    SessionHours hours;
    for (const clients::DayHours& stretch : stretches) {
        EXPECT_TRUE(hours.free.add(stretch));
    }
    return hours;
}

PlanTemplate alike(std::size_t sessions)
{
    return test::templateOf(std::vector<std::vector<Pattern>>(sessions, {Pattern::Squat}));
}

std::vector<int> weekdaysOf(const WeekOfSessions& week)
{
    std::vector<int> days;
    for (const WeekSlot& slot : week.slots) {
        days.push_back(slot.weekday);
    }
    return days;
}

}  // namespace

TEST(SessionDays, ThreeAlikeAreTwoDaysApart)
{
    const WeekOfSessions week = weekOf(alike(3), {}, kMonday);
    EXPECT_EQ(weekdaysOf(week), (std::vector{kMonday, kWednesday, kFriday}));
    EXPECT_EQ(week.slots[0].startMinute, kNine);
    EXPECT_TRUE(week.tooClose.empty());
}

TEST(SessionDays, LowerAndUpperMayFollowEachOther)
{
    const auto plan = test::templateOf({{Pattern::Squat}, {Pattern::HorizontalPush}, {Pattern::Squat}, {Pattern::HorizontalPush}});
    EXPECT_TRUE(weekOf(plan, {}, kMonday).tooClose.empty());
    const auto hours = hoursOn({{kMonday, kNine, 720}, {kTuesday, kNine, 720}, {kThursday, kNine, 720}, {kFriday, kNine, 720}});
    const WeekOfSessions week = weekOf(plan, hours, kMonday);
    EXPECT_EQ(weekdaysOf(week), (std::vector{kMonday, kTuesday, kThursday, kFriday}));
    EXPECT_TRUE(week.tooClose.empty());
}

TEST(SessionDays, ATimeOfDayCanSaveThe48Hours)
{
    const auto hours = hoursOn({{kMonday, 18 * 60, 20 * 60}, {kWednesday, kNine, 19 * 60}});
    const WeekOfSessions week = weekOf(alike(2), hours, kMonday);
    EXPECT_TRUE(week.tooClose.empty()) << "18:00 on both days";
    EXPECT_EQ(week.slots[1], (WeekSlot{1, kWednesday, 18 * 60}));
}

TEST(SessionDays, WhatIsTooCloseIsSaid)
{
    const auto hours = hoursOn({{kMonday, kNine, 600}, {kTuesday, 18 * 60, 19 * 60}});
    const WeekOfSessions week = weekOf(alike(2), hours, kMonday);
    ASSERT_EQ(week.tooClose.size(), 1U);
    EXPECT_EQ(week.tooClose[0], (CloseSessions{0, 1, 33 * 60, {Pattern::Squat}}));
}

TEST(SessionDays, SundayAndMondayAreNeighbours)
{
    const auto hours = hoursOn({{kMonday, kNine, 600}, {6, kNine, 600}});
    const WeekOfSessions week = weekOf(alike(2), hours, kMonday);
    ASSERT_EQ(week.tooClose.size(), 1U);
    EXPECT_EQ(week.tooClose[0].first, 1U);
    EXPECT_EQ(week.tooClose[0].minutesBetween, 24 * 60);
}

TEST(SessionDays, WithoutADayItStaysUnplaced)
{
    const auto hours = hoursOn({{kMonday, kNine, 600}, {kTuesday, kNine, 570}});
    const WeekOfSessions week = weekOf(alike(2), hours, kMonday);
    EXPECT_EQ(weekdaysOf(week), std::vector{kMonday}) << "half an hour is too short for an hour";
    EXPECT_EQ(week.unplaced, std::vector<std::size_t>{1});
}

TEST(SessionDays, PreferredHoursCountAfterThe48)
{
    SessionHours hours;
    EXPECT_TRUE(hours.preferred.add({kTuesday, 17 * 60, 19 * 60}));
    EXPECT_TRUE(hours.preferred.add({kWednesday, 17 * 60, 19 * 60}));
    const WeekOfSessions one = weekOf(alike(1), hours, kMonday);
    EXPECT_EQ(one.slots[0], (WeekSlot{0, kTuesday, 17 * 60}));
    EXPECT_TRUE(weekOf(alike(2), hours, kMonday).tooClose.empty());
}

TEST(SessionDays, TheWeekStartsOnAnyDay)
{
    EXPECT_EQ(weekdaysOf(weekOf(alike(3), {}, kThursday)), (std::vector{kThursday, 5, kMonday}));
}

TEST(SessionDays, SevenSessionsFindSevenDays)
{
    const WeekOfSessions week = weekOf(alike(7), {}, kMonday);
    EXPECT_EQ(week.slots.size(), 7U);
    EXPECT_EQ(week.tooClose.size(), 7U);
}

TEST(SessionDays, MinutesRunForwardThroughTheWeek)
{
    EXPECT_EQ(minutesBetween({0, kMonday, 600}, {1, kTuesday, 540}), 23 * 60);
    EXPECT_EQ(minutesBetween({0, kTuesday, 540}, {1, kMonday, 600}), 7 * 24 * 60 - 23 * 60);
    EXPECT_EQ(minutesBetween({0, kMonday, 600}, {0, kMonday, 600}), 0);
}

}  // namespace chalk::planning
