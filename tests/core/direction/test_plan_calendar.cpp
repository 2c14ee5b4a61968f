#include "core/direction/plan_calendar.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::test {

namespace {

using direction::MissedWeeks;
using direction::Phase;
using direction::WeekKind;

const base::Date kStart = base::Date::fromYmd(2026, 11, 30).value();

direction::BlockPlan calendarPlan()
{
    return direction::planFor({direction::Direction::Strength, direction::Wave::Linear, 12, 3, true, kStart,
                               {{base::LiftId(1), direction::LiftRole::Main, 2}}});
}

/// The Mondays of weeks of the plan, counted from 0.
std::vector<base::Date> mondaysOf(std::initializer_list<int> weeks)
{
    std::vector<base::Date> mondays;
    for (const int week : weeks) {
        mondays.push_back(kStart + 7 * week);
    }
    return mondays;
}

std::size_t workWeeks(const direction::BlockPlan& plan, Phase phase)
{
    return static_cast<std::size_t>(
        std::count_if(plan.weeks.begin(), plan.weeks.end(), [phase](const auto& w) { return w.phase == phase && w.kind == WeekKind::Work; }));
}

}  // namespace

TEST(PlanCalendar, AHolidayOfThreeWeeksShiftsWhatFollows)
{
    const auto plan = withMissedWeeks(calendarPlan(), mondaysOf({3, 4, 5}), MissedWeeks::Shift);
    ASSERT_EQ(plan.weeks.size(), 12U);
    EXPECT_EQ(plan.weeks[2].monday, kStart + 14);
    EXPECT_EQ(plan.weeks[3].monday, kStart + 42);
    EXPECT_EQ(plan.weeks[3].kind, WeekKind::Lighter);
    EXPECT_EQ(plan.weeks[11].monday, kStart + 98);
    EXPECT_FALSE(weekOn(plan, kStart + 30).has_value()) << "in the hole";
    EXPECT_EQ(weekOn(plan, kStart + 44), 3U);
}

TEST(PlanCalendar, ASqueezedPlanEndsWhenItWasTo)
{
    const auto plan = withMissedWeeks(calendarPlan(), mondaysOf({3, 4, 5}), MissedWeeks::Squeeze);
    ASSERT_EQ(plan.weeks.size(), 9U);
    EXPECT_EQ(plan.weeks.back().monday, kStart + 77);
    EXPECT_EQ(plan.weeks.back().kind, WeekKind::Test);
    EXPECT_GE(workWeeks(plan, Phase::Build), 1U);
    EXPECT_GE(workWeeks(plan, Phase::Peak), 1U);
}

TEST(PlanCalendar, LighterWeeksGiveWayFirst)
{
    const auto plan = withMissedWeeks(calendarPlan(), mondaysOf({1}), MissedWeeks::Squeeze);
    ASSERT_EQ(plan.weeks.size(), 11U);
    EXPECT_EQ(workWeeks(plan, Phase::Base), 3U);
    EXPECT_EQ(std::count_if(plan.weeks.begin(), plan.weeks.end(), [](const auto& w) { return w.kind == WeekKind::Lighter; }), 1);
}

TEST(PlanCalendar, WhatCannotBeLeftOutIsShifted)
{
    const auto plan = withMissedWeeks(calendarPlan(), mondaysOf({1, 2, 3, 4, 5, 6, 7, 8, 9, 10}), MissedWeeks::Squeeze);
    EXPECT_GE(workWeeks(plan, Phase::Base), 1U);
    EXPECT_GE(workWeeks(plan, Phase::Build), 1U);
    EXPECT_GE(workWeeks(plan, Phase::Peak), 1U);
    EXPECT_EQ(plan.weeks.back().kind, WeekKind::Test);
    EXPECT_GT(plan.weeks.back().monday, kStart + 77);
}

TEST(PlanCalendar, NothingMissedChangesNothing)
{
    EXPECT_EQ(withMissedWeeks(calendarPlan(), {}, MissedWeeks::Shift), calendarPlan());
    EXPECT_EQ(withMissedWeeks(calendarPlan(), mondaysOf({20}), MissedWeeks::Squeeze), calendarPlan());
}

}  // namespace chalk::test
