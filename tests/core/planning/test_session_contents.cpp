#include "core/planning/session_contents.h"

#include "tests/support/small_plan.h"

#include <gtest/gtest.h>

namespace chalk::planning {

namespace {

using lifts::Pattern;

SessionContents twoSessions()
{
    return {{Pattern::Squat, Pattern::Hinge, Pattern::CarryBrace}, {Pattern::Hinge}};
}

}  // namespace

TEST(SessionContents, AreThoseOfTheTemplate)
{
    const PlanTemplate plan = test::templateOf({{Pattern::Squat}, {Pattern::Hinge, Pattern::Squat}});
    EXPECT_EQ(contentsOf(plan), (SessionContents{{Pattern::Squat}, {Pattern::Hinge, Pattern::Squat}}));
    EXPECT_TRUE(isFor(plan, contentsOf(plan)));
}

TEST(SessionContents, AreForATemplateWithAsManySessionsAndNothingTwice)
{
    const PlanTemplate plan = test::templateOf({{Pattern::Squat}, {Pattern::Hinge}});
    EXPECT_FALSE(isFor(plan, {}));
    EXPECT_FALSE(isFor(plan, {{Pattern::Squat}}));
    EXPECT_FALSE(isFor(plan, {{Pattern::Squat}, {}}));
    EXPECT_FALSE(isFor(plan, {{Pattern::Squat}, {Pattern::Hinge, Pattern::Hinge}}));
}

TEST(SessionContents, ShiftStopsAtEitherEnd)
{
    SessionContents contents = twoSessions();
    shift(contents, 0, Pattern::CarryBrace, -1);
    EXPECT_EQ(contents[0], (std::vector{Pattern::Squat, Pattern::CarryBrace, Pattern::Hinge}));
    shift(contents, 0, Pattern::CarryBrace, -5);
    EXPECT_EQ(contents[0], (std::vector{Pattern::CarryBrace, Pattern::Squat, Pattern::Hinge}));
    shift(contents, 0, Pattern::CarryBrace, 9);
    EXPECT_EQ(contents[0], (std::vector{Pattern::Squat, Pattern::Hinge, Pattern::CarryBrace}));
    shift(contents, 1, Pattern::Squat, 1);
    EXPECT_EQ(contents, twoSessions()) << "a session that has it not stays";
}

TEST(SessionContents, APatternIsAddedOnceAndTheLastOneStays)
{
    SessionContents contents = twoSessions();
    addTo(contents, 1, Pattern::Squat);
    addTo(contents, 1, Pattern::Squat);
    EXPECT_EQ(contents[1], (std::vector{Pattern::Hinge, Pattern::Squat}));
    takeOutOf(contents, 1, Pattern::Hinge);
    takeOutOf(contents, 1, Pattern::Squat);
    EXPECT_EQ(contents[1], std::vector{Pattern::Squat});
}

TEST(SessionContents, TheShortestIsTheFirstOfThem)
{
    EXPECT_EQ(shortestOf(twoSessions()), 1U);
    EXPECT_EQ(shortestOf({{Pattern::Squat}, {Pattern::Hinge}}), 0U);
}

}  // namespace chalk::planning
