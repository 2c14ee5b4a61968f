#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

using progression::CoachSet;
using progression::LiftMachine;
using progression::Release;
using progression::Stage;
using progression::Swap;

namespace {

std::string faultFieldOf(LiftOnTest& lift, const progression::EventBody& body)
{
    const auto fault = lift.machine().faultOf(body);
    return fault ? fault->field : "";
}

CoachSet setTo(Stage stage)
{
    CoachSet set;
    set.stage = stage;
    set.reason = "because";
    return set;
}

}  // namespace

TEST(CoachRules, ReleaseLeadsThroughControlBack)
{
    LiftOnTest lift;
    lift.set(Stage::SetBuild, 60);
    lift.work({{60, 12, 2}}, 6);
    EXPECT_EQ(lift.apply(Release{"seen by a physiotherapist"}), "P-4");
    EXPECT_EQ(lift.due().stage, Stage::Control);
    EXPECT_EQ(lift.rehearse(), "K-1");
    EXPECT_EQ(lift.due().stage, Stage::SetBuild);
    EXPECT_EQ(lift.due().load, kilos(52.5));
    EXPECT_EQ(lift.apply(Release{"again"}), "P-5");
    EXPECT_EQ(lift.due().stage, Stage::SetBuild);
}

TEST(CoachRules, ReleaseLeavesAnUnloadedStage)
{
    LiftOnTest lift;
    progression::Rehearsal rehearsal = goodRehearsal();
    rehearsal.pain = 5;
    lift.apply(rehearsal);
    EXPECT_EQ(lift.apply(Release{"better"}), "P-4");
    EXPECT_EQ(lift.due().stage, Stage::Pattern);
}

TEST(CoachRules, SetKeepsWhatIsLeftOut)
{
    LiftOnTest lift;
    EXPECT_EQ(lift.apply(setTo(Stage::RestCut)), "O-1");
    EXPECT_EQ(lift.due().load, kilos(20)) << "no load yet: the lightest";
    EXPECT_EQ(lift.due().repsHigh, base::Reps(12));
    EXPECT_EQ(lift.due().sets, base::Sets(5));
    EXPECT_EQ(lift.due().rest, base::Seconds(150));
    CoachSet change;
    change.reason = "a better day";
    change.load = kilos(40);
    change.reps = base::Reps(9);
    EXPECT_EQ(lift.apply(change), "O-1");
    EXPECT_EQ(lift.due().stage, Stage::RestCut);
    EXPECT_EQ(lift.apply(setTo(Stage::SetBuild)), "O-1");
    EXPECT_EQ(lift.due().load, kilos(40));
    EXPECT_EQ(lift.due().repsHigh, base::Reps(9));
    EXPECT_EQ(lift.due().sets, base::Sets(3));
}

TEST(CoachRules, SetDoesNotEndAHold)
{
    LiftOnTest lift;
    lift.set(Stage::RepBuild, 60);
    lift.work({{60, 8, 2}}, 6);
    lift.set(Stage::RepBuild, 40);
    EXPECT_EQ(lift.due().kind, progression::PrescriptionKind::Hold);
}

TEST(CoachRules, SetRefusesWhatMakesNoSense)
{
    LiftOnTest lift;
    CoachSet set = setTo(Stage::RepBuild);
    set.reason.clear();
    EXPECT_EQ(faultFieldOf(lift, set), "reason");
    set = setTo(Stage::RepBuild);
    set.load = kilos(61);
    EXPECT_EQ(faultFieldOf(lift, set), "load");
    set = setTo(Stage::Control);
    set.load = kilos(60);
    EXPECT_EQ(faultFieldOf(lift, set), "load");
    set = setTo(Stage::LoadBuild);
    set.reps = base::Reps(5);
    EXPECT_EQ(faultFieldOf(lift, set), "reps");
    set = setTo(Stage::RepBuild);
    set.sets = base::Sets(3);
    EXPECT_EQ(faultFieldOf(lift, set), "sets");
    set = setTo(Stage::SetBuild);
    set.rest = base::Seconds(90);
    EXPECT_EQ(faultFieldOf(lift, set), "rest_s");
    set = CoachSet{};
    set.reason = "the stage is Pattern";
    set.load = kilos(60);
    EXPECT_EQ(faultFieldOf(lift, set), "load");
    EXPECT_EQ(faultFieldOf(lift, Release{""}), "note");
}

TEST(CoachRules, SwapStartsTheLoadAnew)
{
    LiftOnTest lift;
    lift.set(Stage::RestCut, 60);
    Swap swap{fixedKit({8, 12, 16}).equipment, kilos(12), {}, {}, {}, 1};
    EXPECT_EQ(lift.apply(swap), "X-1");
    EXPECT_EQ(lift.due().stage, Stage::BaseLoad);
    EXPECT_EQ(lift.due().load, kilos(12));
    EXPECT_FALSE(lift.state().holdReps);
    swap.startLoad.reset();
    EXPECT_EQ(lift.apply(swap), "X-1");
    EXPECT_EQ(lift.due().load, kilos(8));
    swap.startLoad = kilos(9);
    EXPECT_EQ(faultFieldOf(lift, swap), "start_load");
    swap.startLoad.reset();
    swap.bodyShare = base::Milli(640);
    EXPECT_EQ(faultFieldOf(lift, swap), "body_mass");
}

TEST(CoachRules, SwapInAnUnloadedStageKeepsTheStage)
{
    LiftOnTest lift;
    lift.set(Stage::RepBuild, 60);
    lift.work({{60, 8, 2}}, 6);
    lift.apply(Release{"better"});
    EXPECT_EQ(lift.due().stage, Stage::Control);
    EXPECT_EQ(lift.apply(Swap{fixedKit({8, 12}).equipment, {}, {}, {}, {}, 1}), "X-1");
    EXPECT_EQ(lift.due().stage, Stage::Control);
    EXPECT_EQ(lift.rehearse(), "K-1");
    EXPECT_EQ(lift.due().stage, Stage::BaseLoad) << "no way back to the old stage";
    EXPECT_EQ(lift.due().load, kilos(8));
}

}  // namespace chalk::test
