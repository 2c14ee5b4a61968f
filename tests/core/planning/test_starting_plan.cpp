#include "core/planning/starting_plan.h"

#include "tests/support/small_plan.h"

#include <gtest/gtest.h>

namespace chalk::planning {

namespace {

using lifts::Pattern;
using progression::Stage;

std::vector<Pattern> everyPattern()
{
    return {lifts::kPatterns.rbegin(), lifts::kPatterns.rend()};
}

StartingPlan planFor(const PlanTemplate& plan, const PlanRequest& request = test::readyRequest())
{
    return startingPlanOf(plan, request, test::smallCatalogue());
}

}  // namespace

TEST(StartingPlans, TwoWeeksOfEverything)
{
    const StartingPlan plan = planFor(test::templateOf({everyPattern(), everyPattern()}));
    EXPECT_EQ(plan.lifts.size(), lifts::kPatterns.size());
    EXPECT_TRUE(plan.gaps.empty());
    ASSERT_EQ(plan.sessions.size(), 4U);
    EXPECT_EQ(plan.sessions[0].date, *base::Date::fromYmd(2026, 3, 2));
    EXPECT_EQ(plan.sessions[2].date, plan.sessions[0].date + 7);
}

TEST(StartingPlans, LargeToSmall)
{
    const StartingPlan plan = planFor(test::templateOf({everyPattern()}));
    EXPECT_EQ(plan.sessions[0].patterns, (std::vector{Pattern::Hinge, Pattern::Squat, Pattern::SingleLeg, Pattern::HorizontalPull, Pattern::HorizontalPush,
                                                      Pattern::VerticalPull, Pattern::VerticalPush, Pattern::CarryBrace}))
        << "the hinge is the harder one of the two large ones";
}

TEST(StartingPlans, LoadedBeforeRehearsed)
{
    PlanRequest request = test::readyRequest();
    request.standings[static_cast<std::size_t>(Pattern::Hinge)].stage = Stage::Pattern;
    EXPECT_EQ(planFor(test::templateOf({everyPattern()}), request).sessions[0].patterns.front(), Pattern::Squat);
}

TEST(StartingPlans, AnOwnOrderIsKept)
{
    PlanTemplate plan = test::templateOf({everyPattern()});
    plan.isOrderKept = true;
    EXPECT_EQ(planFor(plan).sessions[0].patterns, everyPattern());
}

TEST(StartingPlans, GapsSayWhy)
{
    PlanRequest request = test::readyRequest();
    request.standings[static_cast<std::size_t>(Pattern::Squat)].state = progression::StartState::OnHold;
    ASSERT_TRUE(request.hours.free.add({0, 540, 600}));
    const StartingPlan plan = planFor(test::templateOf({{Pattern::Squat, Pattern::CarryBrace}, {Pattern::Hinge}}), request);
    ASSERT_EQ(plan.gaps.size(), 7U);
    EXPECT_EQ(plan.gaps[0].reason, GapReason::OnHold);
    EXPECT_EQ(plan.gaps[1].reason, GapReason::NoDay);
    EXPECT_EQ(plan.gaps[2].reason, GapReason::NotInTemplate);
    EXPECT_EQ(plan.sessions[0].patterns, std::vector{Pattern::CarryBrace});
    EXPECT_EQ(plan.find(Pattern::Squat), nullptr);
}

TEST(StartingPlans, ASessionOfGapsAloneIsLeftOut)
{
    PlanRequest request = test::readyRequest();
    request.standings[static_cast<std::size_t>(Pattern::Squat)].state = progression::StartState::OnHold;
    const StartingPlan plan = planFor(test::templateOf({{Pattern::Squat}, {Pattern::Hinge}}), request);
    EXPECT_EQ(plan.sessions.size(), 2U);
    for (const PlannedSession& session : plan.sessions) {
        EXPECT_EQ(session.session, 1U);
    }
}

TEST(StartingPlans, AllowedExercisesAreThoseOfKitAndCautions)
{
    PlanRequest request = test::readyRequest();
    const auto catalogue = test::smallCatalogue();
    EXPECT_EQ(allowedExercises(Pattern::Squat, request, catalogue, false).size(), 3U);
    EXPECT_EQ(allowedExercises(Pattern::Squat, request, catalogue, true).size(), 1U);
    request.cautions = {lifts::CautionTag::Shoulder};
    request.equipment.clear();
    EXPECT_EQ(allowedExercises(Pattern::Squat, request, catalogue, false).size(), 1U);
}

}  // namespace chalk::planning
