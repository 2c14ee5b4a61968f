#include "core/direction/physique_block.h"

#include "core/direction/plan_curves.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

direction::BlockPlan physiquePlan(int weeks)
{
    return direction::planFor({direction::Direction::Physique, direction::Wave::Linear, weeks, 4, true, base::Date::fromYmd(2026, 11, 30).value(),
                               {{base::LiftId(1), direction::LiftRole::Main, 2}, {base::LiftId(2), direction::LiftRole::Assistance, 2}}});
}

}  // namespace

TEST(PhysiqueBlock, EveryPlanLiesInThePublishedRanges)
{
    for (int weeks = direction::kLeastWeeks; weeks <= direction::kMostWeeks; ++weeks) {
        EXPECT_TRUE(departuresOf(physiquePlan(weeks)).empty()) << weeks;
        for (const auto& week : physiquePlan(weeks).weeks) {
            EXPECT_LE(week.work[0][0].repsMost.value(), publishedRange(direction::Aim::Muscle).reps.most);
        }
    }
}

TEST(PhysiqueBlock, SetsRiseInsideAPhaseAndThereIsNoTest)
{
    const auto plan = physiquePlan(12);
    EXPECT_LT(plan.weeks[0].work[0][0].scheme.sets, plan.weeks[2].work[0][0].scheme.sets);
    EXPECT_EQ(plan.weeks.back().kind, direction::WeekKind::Work);
}

TEST(PhysiqueBlock, ALighterWeekHasFewerSetsThanTheOneBefore)
{
    const auto curves = curvesOf(physiquePlan(12));
    ASSERT_EQ(curves[3].kind, direction::WeekKind::Lighter);
    EXPECT_LT(curves[3].hardSets, curves[2].hardSets);
    EXPECT_LT(curves[3].intensity, curves[2].intensity);
}

}  // namespace chalk::test
