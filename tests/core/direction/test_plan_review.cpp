#include "core/direction/plan_review.h"

#include "core/direction/plan_calendar.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

using base::Load;
using base::Reps;
using direction::DoneSet;

const base::Date kReviewStart = base::Date::fromYmd(2026, 11, 30).value();

direction::BlockPlan reviewedPlan()
{
    return direction::planFor({direction::Direction::Strength, direction::Wave::Linear, 12, 3, true, kReviewStart,
                               {{base::LiftId(1), direction::LiftRole::Main, 2}}});
}

}  // namespace

TEST(PlanReview, AWeekIsComparedByHand)
{
    const std::vector<DoneSet> done{{kReviewStart, Load::fromCenti(8000), Reps(4)},     {kReviewStart, Load::fromCenti(8000), Reps(4)},
                                    {kReviewStart + 2, Load::fromCenti(6000), Reps(4)}, {kReviewStart + 6, Load::fromCenti(6000), Reps(4)}};
    const auto weeks = reviewOf(reviewedPlan(), 0, Load::fromCenti(10000), done);
    ASSERT_EQ(weeks.size(), 12U);
    EXPECT_EQ(weeks[0].plannedSets, 8) << "a heavy and a light day of four sets";
    EXPECT_EQ(weeks[0].plannedReps, 32);
    EXPECT_DOUBLE_EQ(weeks[0].plannedShare, (0.8 + 0.64) / 2);
    EXPECT_EQ(weeks[0].doneSets, 4);
    EXPECT_EQ(weeks[0].doneReps, 16);
    EXPECT_DOUBLE_EQ(weeks[0].doneShare, 0.7);
    EXPECT_EQ(weeks[1].doneSets, 0);
    EXPECT_DOUBLE_EQ(weeks[1].doneShare, 0);
}

TEST(PlanReview, ATestIsPlannedAsOneSingle)
{
    const auto last = reviewOf(reviewedPlan(), 0, Load::fromCenti(10000), {}).back();
    const auto plan = reviewedPlan();
    const auto& light = plan.weeks.back().work[0][0].scheme;
    EXPECT_EQ(last.plannedSets, light.sets.value() + 1);
    EXPECT_EQ(last.plannedReps, light.sets.value() * light.reps.value() + 1);
}

TEST(PlanReview, WhatLiesInAHoleOfThePlanIsLeftOut)
{
    const std::vector<base::Date> missed{kReviewStart + 7};
    const auto plan = withMissedWeeks(reviewedPlan(), missed, direction::MissedWeeks::Shift);
    const std::vector<DoneSet> done{{kReviewStart + 8, Load::fromCenti(8000), Reps(4)}, {kReviewStart - 1, Load::fromCenti(8000), Reps(4)}};
    for (const auto& week : reviewOf(plan, 0, Load::fromCenti(10000), done)) {
        EXPECT_EQ(week.doneSets, 0) << week.monday.toString();
    }
}

}  // namespace chalk::test
