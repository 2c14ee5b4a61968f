#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

using progression::PrescriptionKind;
using progression::Rehearsal;
using progression::Stage;
using progression::Steadiness;
using progression::Verdict;

namespace {

LiftOnTest liftInControl()
{
    progression::LiftSetup setup = lowerLift();
    setup.startStage = Stage::Control;
    return LiftOnTest(std::move(setup));
}

/// The rules of a rehearsal that is good but for what `spoil` does.
template <class Spoil>
std::string rulesInControl(Spoil&& spoil)
{
    LiftOnTest lift = liftInControl();
    Rehearsal rehearsal = goodRehearsal();
    spoil(rehearsal);
    return lift.apply(rehearsal);
}

}  // namespace

TEST(RehearsalRules, EveryCriterionMetEarnsControlAndIsJudgedForIt)
{
    LiftOnTest lift;
    EXPECT_EQ(lift.due().kind, PrescriptionKind::Rehearse);
    Rehearsal rehearsal = goodRehearsal();
    rehearsal.reps = base::Reps(4);
    EXPECT_EQ(lift.apply(rehearsal), "U-1 K-2");
    EXPECT_EQ(lift.due().stage, Stage::Control);

    LiftOnTest other;
    EXPECT_EQ(other.rehearse(), "U-1 K-1");
    EXPECT_EQ(other.due().stage, Stage::BaseLoad);
    EXPECT_EQ(other.due().load, kilos(20)) << "the lightest, with no start load";
}

TEST(RehearsalRules, PatternStaysUntilAllIsMet)
{
    LiftOnTest lift;
    Rehearsal rehearsal = goodRehearsal();
    rehearsal.criteria[1].verdict = Verdict::Partly;
    EXPECT_EQ(lift.apply(rehearsal), "U-2");
    rehearsal.criteria[1].verdict = Verdict::NotMet;
    EXPECT_EQ(lift.apply(rehearsal), "U-2");
    rehearsal.criteria.clear();
    EXPECT_EQ(lift.apply(rehearsal), "U-2");
    rehearsal = goodRehearsal();
    rehearsal.pain = 1;
    EXPECT_EQ(lift.apply(rehearsal), "U-2");
    rehearsal.pain = 4;
    EXPECT_EQ(lift.apply(rehearsal), "P-1");
}

TEST(RehearsalRules, ControlAsksForEveryPart)
{
    EXPECT_EQ(rulesInControl([](Rehearsal&) {}), "K-1");
    EXPECT_EQ(rulesInControl([](Rehearsal& r) { r.criteria.clear(); }), "K-1") << "none judged is no obstacle here";
    EXPECT_EQ(rulesInControl([](Rehearsal& r) { r.reps = base::Reps(4); }), "K-2");
    EXPECT_EQ(rulesInControl([](Rehearsal& r) { r.pauses.topMs = 999; }), "K-2");
    EXPECT_EQ(rulesInControl([](Rehearsal& r) { r.pauses.middleMs.reset(); }), "K-2");
    EXPECT_EQ(rulesInControl([](Rehearsal& r) { r.pauses.bottomMs = 0; }), "K-2");
    EXPECT_EQ(rulesInControl([](Rehearsal& r) { r.steadiness = Steadiness::Shaky; }), "K-2");
    EXPECT_EQ(rulesInControl([](Rehearsal& r) { r.pain = 1; }), "K-2");
    EXPECT_EQ(rulesInControl([](Rehearsal& r) { r.pain = 4; }), "P-1");
    EXPECT_EQ(rulesInControl([](Rehearsal& r) { r.criteria[0].verdict = Verdict::NotMet; }), "K-2");
}

TEST(RehearsalRules, ALoadedLiftOnlyKeepsARehearsal)
{
    LiftOnTest lift;
    lift.set(Stage::RepBuild, 60);
    const auto before = lift.state();
    EXPECT_EQ(lift.rehearse(), "U-3");
    EXPECT_EQ(lift.state(), before);
}

TEST(RehearsalRules, TheReturnToAStageBacksOff)
{
    LiftOnTest lift;
    lift.set(Stage::RepBuild, 60);
    lift.work(2, 60, 8, 2);
    lift.work({{60, 8, 2, -1, Steadiness::Lost}});
    lift.work({{60, 8, 2, -1, Steadiness::Lost}});
    EXPECT_EQ(lift.due().stage, Stage::Control);
    EXPECT_EQ(lift.rehearse(), "K-1");
    EXPECT_EQ(lift.due().stage, Stage::RepBuild);
    EXPECT_EQ(lift.due().load, kilos(52.5)) << "the heaviest not above 54";
    EXPECT_EQ(lift.due().repsHigh, base::Reps(5)) << "best cleared: the target is the floor";
}

TEST(RehearsalRules, StartLoadIsUsedWhereGiven)
{
    progression::Kit kit = barbellKit();
    kit.startLoad = kilos(30);
    LiftOnTest lift(lowerLift(kit));
    EXPECT_EQ(lift.rehearse(), "U-1 K-1");
    EXPECT_EQ(lift.due().load, kilos(30));
}

}  // namespace chalk::test
