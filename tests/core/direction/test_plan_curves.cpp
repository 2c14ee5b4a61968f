#include "core/direction/plan_curves.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

using direction::LiftRole;
using direction::MuscleGroup;

direction::BlockPlan curvePlan()
{
    return direction::planFor({direction::Direction::Strength, direction::Wave::Linear, 12, 3, true, base::Date::fromYmd(2026, 11, 30).value(),
                               {{base::LiftId(1), LiftRole::Main, 1}, {base::LiftId(2), LiftRole::Assistance, 2}}});
}

}  // namespace

TEST(PlanCurves, AWeekIsAddedUpByHand)
{
    const auto curve = curvesOf(curvePlan()).front();
    EXPECT_DOUBLE_EQ(curve.intensity, 0.80) << "of the main lift alone";
    EXPECT_EQ(curve.hardSets, 4 + 2 * 3);
    EXPECT_EQ(curve.reps, 16 + 2 * 24);
}

TEST(PlanCurves, IntensityRisesFromPhaseToPhaseAndDropsInLighterWeeks)
{
    const auto curves = curvesOf(curvePlan());
    EXPECT_LT(curves[0].intensity, curves[4].intensity);
    EXPECT_LT(curves[4].intensity, curves[8].intensity);
    EXPECT_LT(curves[3].intensity, curves[0].intensity);
    EXPECT_DOUBLE_EQ(curves[11].intensity, 1.0) << "the test's single";
}

TEST(PlanCurves, AnEditThatLeavesItsRangeIsFound)
{
    auto plan = curvePlan();
    EXPECT_TRUE(departuresOf(plan).empty());
    plan.weeks[1].work[0][0].scheme.rest = base::Seconds(60);
    plan.weeks[3].work[0][0].scheme.rest = base::Seconds(60);  // a lighter week: not judged
    const auto found = departuresOf(plan);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].week, 1U);
    EXPECT_EQ(found[0].departure.figure, direction::PlanFigure::Rest);
}

TEST(PlanCurves, SetsOfMusclesCountHalvesForThoseThatHelp)
{
    const auto week = curvePlan().weeks.front();
    const std::array patterns{lifts::Pattern::HorizontalPush, lifts::Pattern::VerticalPush};
    const auto halves = muscleHalfSets(week, patterns);
    EXPECT_EQ(halves.at(MuscleGroup::Chest), 2 * 4);
    EXPECT_EQ(halves.at(MuscleGroup::Shoulders), 4 + 2 * 6);
    EXPECT_EQ(halves.at(MuscleGroup::Triceps), 4 + 6);
    EXPECT_FALSE(halves.contains(MuscleGroup::Back));
}

TEST(PlanCurves, EveryPatternWorksSomething)
{
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        EXPECT_FALSE(direction::musclesOf(pattern).empty()) << keyOf(pattern);
    }
    for (const MuscleGroup group : direction::kMuscleGroups) {
        EXPECT_FALSE(keyOf(group).empty());
    }
}

}  // namespace chalk::test
