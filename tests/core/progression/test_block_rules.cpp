#include "core/progression/block_rules.h"

#include "core/progression/evidence.h"
#include "core/progression/prescription.h"
#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

using base::Milli;
using base::Reps;
using base::Seconds;
using base::Sets;
using progression::Block;
using progression::BlockWork;
using progression::LiftMachine;
using progression::PrescriptionKind;
using progression::Stage;

const base::Date kFirstMonday = base::Date::fromYmd(2026, 11, 30).value();

/// A lift in Rep build at 80 kg, whose last work was on the Friday before the first Monday.
LiftMachine liftBefore(progression::Kit kit = barbellKit())
{
    LiftMachine machine = *LiftMachine::create(lowerLift(std::move(kit)));
    progression::CoachSet set;
    set.stage = Stage::RepBuild;
    set.load = kilos(80);
    set.reason = "for the test";
    machine.apply(kFirstMonday - 5, set);
    machine.apply(kFirstMonday - 3, exposureOf({{80, 8, 2}, {80, 8, 2}}));
    return machine;
}

/// Three weeks: 4 × 4 at 80 per cent and a light day, a lighter week, a test.
Block threeWeeks()
{
    const BlockWork heavy{Sets(4), Reps(4), Reps(4), Milli(800), Seconds(180), 3};
    const BlockWork light{Sets(4), Reps(4), Reps(6), Milli(640), Seconds(180), 4, true};
    BlockWork test{Sets(1), Reps(1), Reps(1), Milli(1000), Seconds(240), 0};
    test.isTest = true;
    return {{{kFirstMonday, false, {heavy, light}}, {kFirstMonday + 7, true, {light}}, {kFirstMonday + 14, false, {test}}}, kilos(100), false, "strength"};
}

LiftMachine liftInBlock()
{
    LiftMachine machine = liftBefore();
    EXPECT_EQ(namesOf(machine.apply(kFirstMonday - 1, threeWeeks())), "N-1");
    return machine;
}

}  // namespace

TEST(BlockRules, TheWeekSaysWhatIsDue)
{
    const LiftMachine machine = liftInBlock();
    const auto before = machine.prescriptionOn(kFirstMonday - 1);
    EXPECT_EQ(before.load, kilos(80)) << "the day before it is as ever";
    EXPECT_FALSE(before.block.has_value());
    const auto next = machine.prescriptionOn(kFirstMonday);
    EXPECT_EQ(next.kind, PrescriptionKind::Work);
    EXPECT_EQ(next.load, kilos(80)) << "80 per cent of 100";
    EXPECT_EQ(next.sets, Sets(4));
    EXPECT_EQ(next.repsLow, Reps(4));
    EXPECT_EQ(next.rest, Seconds(180));
    EXPECT_EQ(next.reserve, 3);
    EXPECT_EQ(next.stage, Stage::RepBuild);
    EXPECT_EQ(next.block, (progression::BlockMark{1, 3, false, false}));
    EXPECT_EQ(machine.prescriptionOn(kFirstMonday + 8).block, (progression::BlockMark{2, 3, true, false}));
}

TEST(BlockRules, TheLoadMovesInAPlanAndNothingInItsLighterWeeks)
{
    const LiftMachine machine = liftInBlock();
    EXPECT_EQ(movingLeverOf(machine.prescriptionOn(kFirstMonday - 1)), progression::Lever::Reps) << "Rep build, before its first week";
    EXPECT_EQ(movingLeverOf(machine.prescriptionOn(kFirstMonday)), progression::Lever::Load);
    EXPECT_FALSE(movingLeverOf(machine.prescriptionOn(kFirstMonday + 8)));
    EXPECT_EQ(movingLeverOf(machine.prescriptionOn(kFirstMonday + 15)), progression::Lever::Load);
}

TEST(BlockRules, NoEvidenceForAStageIsAskedWhileAPlanLeads)
{
    const auto evidence = progression::evidenceFor(liftInBlock(), {}, kFirstMonday + 1);
    EXPECT_TRUE(evidence.isPlanLed);
    EXPECT_EQ(evidence.stage, Stage::RepBuild);
    EXPECT_FALSE(evidence.next || evidence.target || evidence.shortfall || evidence.arrival);
    EXPECT_TRUE(evidence.checks.empty());
    const auto before = progression::evidenceFor(liftBefore(), {}, kFirstMonday + 1);
    EXPECT_FALSE(before.isPlanLed);
    EXPECT_TRUE(before.target.has_value());
    const auto after = progression::evidenceFor(liftInBlock(), {}, kFirstMonday + 21);
    EXPECT_FALSE(after.isPlanLed) << "the plan is over";
    EXPECT_EQ(after.stage, Stage::LoadBuild);
}

TEST(BlockRules, TheSecondExposureOfAWeekIsItsOwn)
{
    LiftMachine machine = liftInBlock();
    EXPECT_EQ(namesOf(machine.apply(kFirstMonday, exposureOf({{80, 4, 4}, {80, 4, 4}, {80, 4, 4}, {80, 4, 4}}))), "N-2");
    const auto next = machine.prescriptionOn(kFirstMonday + 2);
    EXPECT_EQ(next.load, kilos(62.5)) << "64 per cent of 100, and what the plates give";
    EXPECT_EQ(next.repsHigh, Reps(6));
    EXPECT_TRUE(next.isPauseAsked);
}

TEST(BlockRules, ResultsMoveTheSingleHalfOfTheWay)
{
    LiftMachine same = liftInBlock();
    same.apply(kFirstMonday, exposureOf({{80, 4, 4}}));
    EXPECT_EQ(same.state().block->single, kilos(100)) << "8 repetitions at 80 per cent: the chart";
    LiftMachine better = liftInBlock();
    better.apply(kFirstMonday, exposureOf({{80, 4, 4}, {80, 4, 5}}));
    EXPECT_EQ(better.state().block->single, base::Load::fromCenti(10195)) << "9 at 80 speak for 103.90";
    LiftMachine worse = liftInBlock();
    worse.apply(kFirstMonday, exposureOf({{80, 4, 0}}));
    EXPECT_EQ(worse.state().block->single, kilos(95)) << "4 at 80 speak for 88.89: 5 per cent down is the most";
    LiftMachine silent = liftInBlock();
    silent.apply(kFirstMonday, exposureOf({{80, 4}}));
    EXPECT_EQ(silent.state().block->single, kilos(100)) << "no reserve, no word";
}

TEST(BlockRules, ATestedSingleIsTakenAsItWasLifted)
{
    LiftMachine machine = liftInBlock();
    machine.apply(kFirstMonday + 14, exposureOf({{105, 1}, {110, 1}, {115, 0}}));
    EXPECT_EQ(machine.state().block->single, kilos(110));
}

TEST(BlockRules, PainHoldsAndControlActAsEver)
{
    LiftMachine painful = liftInBlock();
    EXPECT_EQ(namesOf(painful.apply(kFirstMonday, exposureOf({{80, 4, 0}}, 2))), "P-2");
    EXPECT_EQ(painful.state().block->single, kilos(100)) << "nothing is read off painful work";
    EXPECT_EQ(painful.prescriptionOn(kFirstMonday + 1).repsHigh, Reps(6)) << "it was one exposure of the week all the same";
    EXPECT_EQ(namesOf(painful.apply(kFirstMonday + 2, exposureOf({{62.5, 4, 0}}, 5))), "P-1");
    EXPECT_EQ(painful.prescriptionOn(kFirstMonday + 3).kind, PrescriptionKind::Hold);
    EXPECT_FALSE(painful.prescriptionOn(kFirstMonday + 3).block.has_value());
    painful.apply(kFirstMonday + 4, progression::Release{"seen by a physician"});
    EXPECT_EQ(painful.prescriptionOn(kFirstMonday + 4).kind, PrescriptionKind::Rehearse);
    painful.apply(kFirstMonday + 7, goodRehearsal());
    EXPECT_EQ(painful.prescriptionOn(kFirstMonday + 8).block, (progression::BlockMark{2, 3, true, false})) << "its weeks went by meanwhile";
}

TEST(BlockRules, ShakySetsMoveNothing)
{
    LiftMachine machine = liftInBlock();
    EXPECT_EQ(namesOf(machine.apply(kFirstMonday, exposureOf({{80, 4, 0, -1, progression::Steadiness::Shaky}}))), "C-3");
    EXPECT_EQ(machine.state().block->single, kilos(100));
}

TEST(BlockRules, ALayoffCutsTheSingleAsItCutsTheLoad)
{
    LiftMachine machine = liftBefore();
    Block block = threeWeeks();
    for (auto& week : block.weeks) {
        week.monday = week.monday + 21;
    }
    machine.apply(kFirstMonday - 1, block);
    const auto next = machine.prescriptionOn(kFirstMonday + 21);
    EXPECT_EQ(namesOf(next.rules), "G-1") << "24 days since the last work";
    EXPECT_EQ(next.load, kilos(70)) << "80 per cent of 90, and what the plates give";
    machine.apply(kFirstMonday + 21, exposureOf({{70, 4}}));
    EXPECT_EQ(machine.state().block->single, kilos(90));
}

TEST(BlockRules, ALongLayoffEndsIt)
{
    LiftMachine machine = liftInBlock();
    machine.apply(kFirstMonday, exposureOf({{80, 4, 4}}));
    const auto next = machine.prescriptionOn(kFirstMonday + 60);
    EXPECT_FALSE(next.block.has_value());
    EXPECT_EQ(next.stage, Stage::BaseLoad);
}

TEST(BlockRules, WhenItsLastDayIsOverLoadIsBuiltAgain)
{
    LiftMachine machine = liftInBlock();
    machine.apply(kFirstMonday + 14, exposureOf({{110, 1}}));
    EXPECT_TRUE(machine.prescriptionOn(kFirstMonday + 20).block.has_value());
    const auto next = machine.prescriptionOn(kFirstMonday + 21);
    EXPECT_EQ(namesOf(next.rules), "N-3");
    EXPECT_FALSE(next.block.has_value());
    EXPECT_EQ(next.stage, Stage::LoadBuild);
    EXPECT_EQ(next.load, kilos(87.5)) << "80 per cent of 110: 6 hard repetitions and 2 in reserve";
    EXPECT_EQ(namesOf(machine.apply(kFirstMonday + 21, exposureOf({{87.5, 9, 2}, {87.5, 9, 2}}))).substr(0, 3), "N-3");
    EXPECT_FALSE(machine.state().block.has_value());
    EXPECT_EQ(machine.state().stage, Stage::LoadBuild);
}

TEST(BlockRules, TheCoachCanEndIt)
{
    LiftMachine machine = liftInBlock();
    EXPECT_EQ(namesOf(machine.apply(kFirstMonday + 1, Block{})), "N-4");
    EXPECT_EQ(machine.prescriptionOn(kFirstMonday + 1).load, kilos(80));
    EXPECT_EQ(machine.prescriptionOn(kFirstMonday + 1).stage, Stage::LoadBuild);
    EXPECT_EQ(namesOf(machine.apply(kFirstMonday + 2, Block{})), "N-5");
    LiftMachine byHand = liftInBlock();
    progression::CoachSet set;
    set.load = kilos(70);
    set.reason = "by hand";
    byHand.apply(kFirstMonday, set);
    EXPECT_FALSE(byHand.state().block.has_value());
}

TEST(BlockRules, NoneBeginsWithoutALoadOrOnHold)
{
    LiftMachine unloaded = *LiftMachine::create(lowerLift());
    EXPECT_EQ(namesOf(unloaded.apply(kFirstMonday, threeWeeks())), "N-5");
    LiftMachine held = liftBefore();
    held.apply(kFirstMonday - 2, exposureOf({{80, 4}}, 6));
    EXPECT_EQ(namesOf(held.apply(kFirstMonday, threeWeeks())), "N-5");
    EXPECT_FALSE(held.state().block.has_value());
    EXPECT_EQ(liftBefore().faultOf(Block{threeWeeks().weeks, {}})->field, "single");
}

TEST(BlockRules, ALighterWeekMakesTheWeekOfThePlanLighter)
{
    LiftMachine machine = liftInBlock();
    EXPECT_EQ(namesOf(machine.apply(kFirstMonday, progression::LighterWeek{})), "D-1");
    const auto next = machine.prescriptionOn(kFirstMonday);
    EXPECT_EQ(next.sets, Sets(2));
    EXPECT_LT(next.load, kilos(80));
    EXPECT_EQ(namesOf(machine.apply(kFirstMonday, exposureOf({{70, 4, 0}}))), "D-2");
    EXPECT_EQ(machine.state().block->single, kilos(100));
}

}  // namespace chalk::test
