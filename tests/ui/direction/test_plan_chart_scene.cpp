#include "ui/direction/plan_chart_scene.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

namespace {

chalk::direction::BlockPlan winterPlan(const char* start = "2026-11-30")
{
    chalk::direction::PlanWishes wishes;
    wishes.start = *base::Date::parse(start);
    wishes.lifts = {{base::LiftId(1), chalk::direction::LiftRole::Main, 2}};
    return chalk::direction::planFor(wishes);
}

ClosedDays closedFrom(const char* first, const char* last)
{
    return {*base::Date::parse(first), *base::Date::parse(last)};
}

}  // namespace

TEST(PlanChartScene, WeeksAreNamedByTheirMondaysAndTheMonthOnce)
{
    const PlanChartScene scene = planChartScene(winterPlan(), {});
    ASSERT_EQ(scene.weeks.size(), 12U);
    EXPECT_EQ(scene.weeks[0].label, QStringLiteral("30 Nov"));
    EXPECT_EQ(scene.weeks[1].label, QStringLiteral("7 Dec"));
    EXPECT_EQ(scene.weeks[2].label, QStringLiteral("14"));
    EXPECT_EQ(scene.weeks[5].label, QStringLiteral("4 Jan"));
    EXPECT_FALSE(scene.present);
}

TEST(PlanChartScene, PhasesFollowEachOtherWithoutGaps)
{
    const PlanChartScene scene = planChartScene(winterPlan(), {});
    ASSERT_EQ(scene.phases.size(), 4U);
    std::size_t next = 0;
    for (const PlanChartPhase& phase : scene.phases) {
        EXPECT_EQ(phase.first, next);
        next += phase.count;
    }
    EXPECT_EQ(next, scene.weeks.size());
    EXPECT_EQ(scene.phases.back().name, QStringLiteral("Test"));
    EXPECT_EQ(scene.phases.back().note, QStringLiteral("1 week"));
}

TEST(PlanChartScene, AWeekSaysAllThatItShows)
{
    const PlanChartScene scene = planChartScene(winterPlan(), {});
    EXPECT_TRUE(scene.weeks[0].spoken.startsWith(QStringLiteral("Week 1, from 30 Nov: "))) << scene.weeks[0].spoken.toStdString();
    EXPECT_TRUE(scene.weeks[0].spoken.contains(QStringLiteral("%1 hard sets").arg(scene.weeks[0].hardSets)));
    EXPECT_EQ(scene.weeks[3].kind, chalk::direction::WeekKind::Lighter);
    EXPECT_TRUE(scene.weeks[3].spoken.endsWith(QStringLiteral("lighter week")));
    EXPECT_TRUE(scene.weeks.back().spoken.endsWith(QStringLiteral("test")));
}

TEST(PlanChartScene, ClosedDaysLieInTheirWeeks)
{
    // 24 December 2026 is the Thursday of the fourth week, 2 January 2027 the Saturday of the fifth.
    const ClosedDays feast = closedFrom("2026-12-24", "2027-01-02");
    const PlanChartScene scene = planChartScene(winterPlan(), std::span(&feast, 1));
    ASSERT_EQ(scene.closures.size(), 1U);
    EXPECT_NEAR(scene.closures[0].from, 3 + 3.0 / 7, 1e-9);
    EXPECT_NEAR(scene.closures[0].to, 4 + 6.0 / 7, 1e-9);
    EXPECT_EQ(closedWeeks(winterPlan(), feast), (std::vector{4, 5}));
}

TEST(PlanChartScene, ClosuresThatTouchAreOneAndOthersAreNot)
{
    const std::vector<ClosedDays> closures{closedFrom("2026-12-10", "2026-12-10"), closedFrom("2026-12-11", "2026-12-12"),
                                           closedFrom("2027-01-06", "2027-01-06"), closedFrom("2026-10-01", "2026-10-09")};
    const PlanChartScene scene = planChartScene(winterPlan(), closures);
    ASSERT_EQ(scene.closures.size(), 2U);
    EXPECT_NEAR(scene.closures[0].to - scene.closures[0].from, 3.0 / 7, 1e-9);
    EXPECT_TRUE(closedWeeks(winterPlan(), closures.back()).empty());
}

TEST(PlanChartScene, ThePresentWeekIsMarkedOnlyInsideOfThePlan)
{
    EXPECT_EQ(planChartScene(winterPlan(), {}, base::Date::parse("2026-12-30")).present, 4U);
    EXPECT_FALSE(planChartScene(winterPlan(), {}, base::Date::parse("2026-11-29")).present);
}

}  // namespace chalk::ui::direction
