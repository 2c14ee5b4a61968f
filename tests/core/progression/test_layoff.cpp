#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

using progression::Flag;
using progression::Rule;
using progression::Stage;

namespace {

/// A lift in Rep build at 100 kg, `gap` days after its last work.
LiftOnTest liftAfter(int gap)
{
    LiftOnTest lift;
    lift.set(Stage::RepBuild, 100);
    lift.work(2, 100, 8, 2);
    lift.pass(gap - 2);
    return lift;
}

}  // namespace

TEST(Layoff, BordersAreExact)
{
    const struct {
        int gap;
        double load;
        Stage stage;
        const char* rules;
    } rows[] = {{13, 100, Stage::RepBuild, ""},      {14, 90, Stage::RepBuild, "G-1"}, {27, 90, Stage::RepBuild, "G-1"},
                {28, 80, Stage::Control, "G-2"},     {55, 80, Stage::Control, "G-2"},  {56, 70, Stage::BaseLoad, "G-3"},
                {400, 70, Stage::BaseLoad, "G-3"}};
    for (const auto& row : rows) {
        LiftOnTest lift = liftAfter(row.gap);
        const auto due = lift.due();
        EXPECT_EQ(namesOf(due.rules), row.rules) << row.gap;
        EXPECT_EQ(due.stage, row.stage) << row.gap;
        if (isLoaded(due.stage)) {
            EXPECT_EQ(due.load, kilos(row.load)) << row.gap;
        }
        EXPECT_EQ(lift.state().stage, Stage::RepBuild) << "looking changes nothing";
    }
}

TEST(Layoff, AnEventDealsWithTheGapOnce)
{
    LiftOnTest lift = liftAfter(14);
    EXPECT_EQ(lift.rehearse(), "G-1 U-3");
    lift.pass(20);
    EXPECT_EQ(lift.work(2, 90, 6, 2), "R-2") << "the same gap, dealt with already";
    lift.pass(12);
    EXPECT_EQ(lift.due(2).load, kilos(80)) << "a new one";
    EXPECT_EQ(lift.work(2, 77.5, 7, 2), "G-1 R-5 R-3");
}

TEST(Layoff, TheCoachDealsWithTheGap)
{
    LiftOnTest lift = liftAfter(40);
    lift.set(Stage::RepBuild, 100);
    EXPECT_EQ(lift.due(60).load, kilos(100));
}

TEST(Layoff, TheReturnIsNotCutTwice)
{
    LiftOnTest lift = liftAfter(28);
    EXPECT_EQ(lift.rehearse(), "G-2 K-1");
    EXPECT_EQ(lift.due().stage, Stage::RepBuild);
    EXPECT_EQ(lift.due().load, kilos(80));
}

TEST(Layoff, TheLongestAsksForANewScreen)
{
    LiftOnTest lift = liftAfter(56);
    EXPECT_EQ(lift.work(2, 70, 8, 5), "G-3 B-5");
    EXPECT_TRUE(lift.due().flags.has(Flag::Rescreen));
    EXPECT_EQ(lift.rehearse(), "U-3");
    EXPECT_FALSE(lift.due().flags.has(Flag::Rescreen));
}

TEST(Layoff, SetsAndRestReachedStay)
{
    LiftOnTest lift;
    progression::CoachSet set;
    set.stage = Stage::RestCut;
    set.load = kilos(100);
    set.reps = base::Reps(10);
    set.sets = base::Sets(4);
    set.rest = base::Seconds(90);
    lift.set(set);
    lift.work(4, 100, 10, 2);
    EXPECT_EQ(lift.due().rest, base::Seconds(75));
    const auto due = lift.due(20);
    EXPECT_EQ(namesOf(due.rules), "G-1");
    EXPECT_EQ(due.load, kilos(90));
    EXPECT_EQ(due.sets, base::Sets(4));
    EXPECT_EQ(due.rest, base::Seconds(75));
}

TEST(Layoff, InLoadBuildTheCutLoadItselfIsDue)
{
    LiftOnTest lift;
    lift.set(Stage::LoadBuild, 100);
    lift.work(2, 100, 8, 2);
    EXPECT_EQ(lift.due().load, kilos(105));
    EXPECT_EQ(lift.due(20).load, kilos(92.5)) << "105 less a tenth is 94.5";
    lift.pass(20);
    EXPECT_EQ(lift.work(2, 92.5, 4, 2), "G-1 L-3");
    EXPECT_EQ(lift.work(2, 92.5, 4, 2), "L-5") << "what was made is not known any more";
}

TEST(Layoff, LiftsOnHoldOrUnloadedHaveNone)
{
    LiftOnTest held = liftAfter(2);
    held.work({{100, 8, 2}}, 5);
    EXPECT_TRUE(held.due(100).rules.isEmpty());
    LiftOnTest fresh;
    EXPECT_TRUE(fresh.due(100).rules.isEmpty());
}

}  // namespace chalk::test
