#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

using progression::CoachSet;
using progression::Flag;
using progression::Stage;

namespace {

LiftOnTest liftSet(Stage stage, int reps, int sets = 0, int rest = 0, progression::Kit kit = barbellKit(), double load = 60)
{
    LiftOnTest lift(lowerLift(std::move(kit)));
    CoachSet set;
    set.stage = stage;
    set.load = kilos(load);
    set.reps = base::Reps(reps);
    if (sets > 0) {
        set.sets = base::Sets(sets);
    }
    if (rest > 0) {
        set.rest = base::Seconds(rest);
    }
    lift.set(set);
    return lift;
}

std::vector<Work> rested(int sets, int reps, int rest)
{
    return std::vector<Work>(static_cast<std::size_t>(sets), Work{60, reps, 2, rest});
}

}  // namespace

TEST(RepBuildRules, BestIsBeatenOrMissed)
{
    LiftOnTest lift = liftSet(Stage::RepBuild, 6);
    EXPECT_EQ(lift.due().repsHigh, base::Reps(7));
    EXPECT_EQ(lift.work(1, 60, 12, 2), "A-2");
    EXPECT_EQ(lift.work(2, 60, 6, 2), "R-3");
    EXPECT_EQ(lift.work(2, 60, 7, 2), "R-2");
    EXPECT_EQ(lift.state().misses, 0);
    EXPECT_EQ(lift.due().repsHigh, base::Reps(8));
}

TEST(RepBuildRules, TheGoalLeadsToSets)
{
    LiftOnTest lift = liftSet(Stage::RepBuild, 6);
    EXPECT_EQ(lift.work(2, 60, 11, 2), "R-2");
    EXPECT_EQ(lift.due().repsHigh, base::Reps(12));
    EXPECT_EQ(lift.work(2, 60, 12, 2), "R-1");
    EXPECT_EQ(lift.due().stage, Stage::SetBuild);
    EXPECT_EQ(lift.due().sets, base::Sets(3));
    EXPECT_EQ(lift.due().repsHigh, base::Reps(12));
}

TEST(RepBuildRules, ThreeMissesEndIt)
{
    LiftOnTest low = liftSet(Stage::RepBuild, 9);
    low.work(2, 60, 9, 2);
    low.work(2, 60, 9, 2);
    EXPECT_EQ(low.work(2, 60, 9, 2), "R-4");
    EXPECT_EQ(low.due().stage, Stage::RepBuild);
    EXPECT_EQ(low.due().load, kilos(52.5));
    EXPECT_EQ(low.due().repsHigh, base::Reps(5));
    EXPECT_TRUE(low.due().flags.has(Flag::Stalled));
    EXPECT_EQ(low.work(2, 52.5, 8, 2), "R-2");
    EXPECT_FALSE(low.due().flags.has(Flag::Stalled));

    LiftOnTest high = liftSet(Stage::RepBuild, 10);
    high.work(2, 60, 9, 2);
    high.work(2, 60, 9, 2);
    EXPECT_EQ(high.work(2, 60, 9, 2), "R-4");
    EXPECT_EQ(high.due().stage, Stage::SetBuild);
    EXPECT_EQ(high.due().repsHigh, base::Reps(10));
    EXPECT_FALSE(high.due().flags.has(Flag::Stalled));
}

TEST(RepBuildRules, LighterIsAMissHeavierIsTheCoachsChoice)
{
    LiftOnTest lift = liftSet(Stage::RepBuild, 6);
    EXPECT_EQ(lift.work(2, 57.5, 12, 2), "R-5 R-3");
    EXPECT_EQ(lift.work(2, 57.5, 12, 2), "R-5 R-3");
    EXPECT_EQ(lift.work(2, 57.5, 12, 2), "R-5 R-4");
    LiftOnTest other = liftSet(Stage::RepBuild, 6);
    EXPECT_EQ(other.work(2, 62.5, 7, 2), "R-2");
    EXPECT_EQ(other.due().load, kilos(62.5));
    EXPECT_EQ(other.work(2, 65, 7, 2), "R-3");
    EXPECT_EQ(other.due().load, kilos(65));
}

TEST(SetBuildRules, SetsAreAddedToTheTop)
{
    LiftOnTest lift = liftSet(Stage::SetBuild, 12);
    EXPECT_EQ(lift.work(3, 60, 10, 2), "S-2") << "two reps are tolerated";
    EXPECT_EQ(lift.due().sets, base::Sets(4));
    EXPECT_EQ(lift.work(4, 60, 9, 2), "S-3");
    EXPECT_EQ(lift.work(4, 60, 12, 2), "S-2");
    EXPECT_EQ(lift.state().misses, 0);
    EXPECT_EQ(lift.work(5, 60, 12, 2), "S-1");
    EXPECT_EQ(lift.due().stage, Stage::RestCut);
    EXPECT_EQ(lift.due().sets, base::Sets(5));
    EXPECT_EQ(lift.due().rest, base::Seconds(150));
}

TEST(SetBuildRules, FewerSetsOrLessLoadAreMisses)
{
    LiftOnTest lift = liftSet(Stage::SetBuild, 12);
    EXPECT_EQ(lift.work(2, 60, 12, 2), "S-3");
    EXPECT_EQ(lift.work(3, 57.5, 12, 2), "S-4");
}

TEST(SetBuildRules, MissesPassOnEnoughSetsAndBackOffElse)
{
    LiftOnTest few = liftSet(Stage::SetBuild, 12, 3);
    few.work(2, 60, 12, 2);
    EXPECT_EQ(few.work(2, 60, 12, 2), "S-4");
    EXPECT_EQ(few.due().stage, Stage::SetBuild);
    EXPECT_EQ(few.due().sets, base::Sets(3));
    EXPECT_EQ(few.due().load, kilos(52.5));
    EXPECT_TRUE(few.due().flags.has(Flag::Stalled));
    EXPECT_EQ(few.work(3, 52.5, 12, 2), "S-2");
    EXPECT_FALSE(few.due().flags.has(Flag::Stalled));

    LiftOnTest enough = liftSet(Stage::SetBuild, 12, 4);
    enough.work(3, 60, 12, 2);
    EXPECT_EQ(enough.work(3, 60, 12, 2), "S-4");
    EXPECT_EQ(enough.due().stage, Stage::RestCut);
    EXPECT_EQ(enough.due().sets, base::Sets(3));
}

TEST(RestCutRules, RestsFallToTheFloorThenRoundAgain)
{
    LiftOnTest lift = liftSet(Stage::RestCut, 12, 5, 75);
    EXPECT_EQ(lift.work(rested(5, 12, 75)), "T-2");
    EXPECT_EQ(lift.due().rest, base::Seconds(60));
    EXPECT_EQ(lift.work(rested(5, 10, 75)), "T-1") << "15 s are tolerated, and two reps";
    EXPECT_EQ(lift.due().stage, Stage::LoadBuild);
    EXPECT_EQ(lift.due().cycle, 2);
    EXPECT_EQ(lift.due().load, kilos(65));
    EXPECT_EQ(lift.due().sets, base::Sets(2));
    EXPECT_EQ(lift.due().rest, base::Seconds(180));
    EXPECT_EQ(lift.state().lastMade, kilos(60));
}

TEST(RestCutRules, LongRestsAndShortWorkAreMisses)
{
    LiftOnTest lift = liftSet(Stage::RestCut, 12, 5, 75);
    EXPECT_EQ(lift.work(rested(5, 12, 91)), "T-3");
    EXPECT_EQ(lift.work(rested(5, 12, 90)), "T-2");
    EXPECT_EQ(lift.work(rested(4, 12, 60)), "T-3");
    EXPECT_EQ(lift.work(rested(5, 9, 60)), "T-4");
    EXPECT_EQ(lift.due().stage, Stage::LoadBuild);
    EXPECT_EQ(lift.due().cycle, 2);
}

TEST(RestCutRules, TheFirstRestDoesNotCount)
{
    LiftOnTest lift = liftSet(Stage::RestCut, 12, 5, 75);
    std::vector<Work> sets = rested(5, 12, 75);
    sets[0].rest = 600;
    EXPECT_EQ(lift.work(sets), "T-2");
}

TEST(RestCutRules, ANextCycleMayStartOnABridgeOrAtTheLimit)
{
    LiftOnTest bridge = liftSet(Stage::RestCut, 12, 3, 60, fixedKit({60, 80}));
    EXPECT_EQ(bridge.work(rested(3, 12, 60)), "T-1 L-6");
    EXPECT_EQ(bridge.due().load, kilos(60));
    EXPECT_EQ(bridge.due().repsLow, base::Reps(12));

    LiftOnTest limit = liftSet(Stage::RestCut, 12, 3, 60, fixedKit({60}));
    EXPECT_EQ(limit.work(rested(3, 12, 60)), "T-1 L-8");
    EXPECT_EQ(limit.due().stage, Stage::RepBuild);
    EXPECT_EQ(limit.due().cycle, 2);
    EXPECT_EQ(limit.state().best, base::Reps(0));
}

}  // namespace chalk::test
