#include "core/planning/plan_template.h"

#include "tests/support/small_plan.h"

#include <gtest/gtest.h>

namespace chalk::planning {

namespace {

using lifts::Pattern;

std::string faultFieldOf(void (*spoil)(PlanTemplate&))
{
    PlanTemplate plan = test::templateOf({{Pattern::Squat, Pattern::Hinge}, {Pattern::Squat}});
    spoil(plan);
    const auto fault = faultOf(plan, test::smallCatalogue());
    return fault ? fault->field : "none";
}

}  // namespace

TEST(PlanTemplates, FaultsNameTheField)
{
    EXPECT_EQ(faultFieldOf([](PlanTemplate&) {}), "none");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.key = "Two words"; }), "key");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.name.clear(); }), "name");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.sessions.clear(); }), "sessions");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.sessions.resize(8, p.sessions[0]); }), "sessions");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.sessions[1].name.clear(); }), "sessions[1].name");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.sessions[1].patterns.clear(); }), "sessions[1].patterns");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.sessions[0].patterns[1] = Pattern::Squat; }), "sessions[0].patterns");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.exercises[0].loaded = {"bar", "bar"}; }), "exercises.squat.loaded");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.exercises[0].loaded = {"sit"}; }), "exercises.squat.loaded");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.exercises[0].rehearsed = {"bar"}; }), "exercises.squat.rehearsed");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.exercises[1].rehearsed = {"sit"}; }), "exercises.hinge.rehearsed");
    EXPECT_EQ(faultFieldOf([](PlanTemplate& p) { p.exercises[1].loaded = {"nothing"}; }), "exercises.hinge.loaded");
}

TEST(PlanTemplates, SaysWhatItLeavesOut)
{
    const auto left = patternsLeftOut(test::templateOf({{Pattern::Squat}, {Pattern::Hinge, Pattern::CarryBrace}}));
    EXPECT_EQ(left.size(), 5U);
    EXPECT_EQ(left.front(), Pattern::HorizontalPush);
}

TEST(PlanTemplates, IsFoundByItsSessions)
{
    const std::vector templates{test::templateOf({{Pattern::Squat}}), test::templateOf({{Pattern::Squat}, {Pattern::Hinge}})};
    EXPECT_EQ(templateFor(templates, 2), &templates[1]);
    EXPECT_EQ(templateFor(templates, 3), nullptr);
}

}  // namespace chalk::planning
