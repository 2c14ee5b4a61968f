#include "core/progression/lighter_week.h"

#include "core/progression/coach_choice.h"
#include "core/progression/evidence_arrival.h"
#include "core/progression/evidence_records.h"
#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

using progression::EventBody;
using progression::Exposure;
using progression::LighterWeek;
using progression::LiftMachine;
using progression::LiftState;
using progression::Prescription;
using progression::PrescriptionKind;
using progression::Rule;
using progression::Stage;

namespace {

/// A lift in Rep build at 100 kg, with 9 reps asked for.
LiftOnTest liftAtNine(progression::LiftSetup setup = lowerLift())
{
    LiftOnTest lift(std::move(setup));
    lift.set(Stage::RepBuild, 100);
    lift.work(2, 100, 8, 2);
    return lift;
}

/// What it prescribes, without the rules that the day made fire.
Prescription numbersOfDay(const LiftMachine& machine, base::Date day)
{
    Prescription next = machine.prescriptionOn(day);
    next.rules = {};
    return next;
}

LiftState withoutLastWork(LiftState state)
{
    state.lastWork.reset();
    return state;
}

}  // namespace

// Common practice in the trade: no published rule gives the figures of a lighter week.
TEST(LighterWeek, HasHalfTheSetsAndATenthLessLoadForSevenDays)
{
    LiftOnTest lift = liftAtNine();
    const Prescription usual = lift.due();
    ASSERT_EQ(usual.sets, base::Sets(2));
    const base::Date first = lift.day();
    EXPECT_EQ(lift.apply(LighterWeek{"tired"}), "D-1");
    for (const int day : {0, 6}) {
        const Prescription next = lift.machine().prescriptionOn(first + day);
        EXPECT_EQ(next.load, kilos(90)) << day;
        EXPECT_EQ(next.sets, base::Sets(1)) << day;
        EXPECT_EQ(next.repsLow, usual.repsLow) << day;
        EXPECT_EQ(next.repsHigh, usual.repsHigh) << day;
        EXPECT_EQ(next.rest, usual.rest) << day;
        EXPECT_EQ(next.stage, Stage::RepBuild) << day;
        EXPECT_TRUE(next.isLighter()) << day;
        EXPECT_EQ(next.lighterUntil, first + 6) << day;
        EXPECT_TRUE(next.rules.isEmpty()) << day;
        EXPECT_EQ(lift.machine().withoutLighterWeek().prescriptionOn(first + day), usual) << day;
    }
}

TEST(LighterWeek, GoesOnFromBeforeItWhenItIsOver)
{
    LiftOnTest lift = liftAtNine();
    const Prescription usual = lift.due();
    const base::Date first = lift.day();
    lift.apply(LighterWeek{});
    const Prescription next = lift.machine().prescriptionOn(first + 7);
    EXPECT_EQ(namesOf(next.rules), "D-3");
    EXPECT_FALSE(next.isLighter());
    EXPECT_EQ(numbersOfDay(lift.machine(), first + 7), usual);
    lift.pass(5);
    EXPECT_EQ(lift.work(2, 100, 9, 2), "D-3 R-2");
    EXPECT_TRUE(lift.due().rules.isEmpty()) << "named until the next record";
    EXPECT_EQ(lift.work(2, 100, 10, 2), "R-2");
}

TEST(LighterWeek, FindsNothingToMakeLighterWithoutALoadOrOnHold)
{
    LiftOnTest unloaded;
    EXPECT_EQ(unloaded.apply(LighterWeek{}), "D-4");
    EXPECT_EQ(unloaded.state().lighterUntil, std::nullopt);
    EXPECT_EQ(unloaded.due().kind, PrescriptionKind::Rehearse);

    LiftOnTest held = liftAtNine();
    held.work({{100, 9, 2}}, 4);
    EXPECT_EQ(held.apply(LighterWeek{}), "D-4");
    EXPECT_EQ(held.state().lighterUntil, std::nullopt);

    LiftOnTest lowest(lowerLift());
    lowest.set(Stage::BaseLoad, 40);
    EXPECT_EQ(lowest.apply(LighterWeek{}), "D-1") << "the first stage with a load";
    EXPECT_EQ(lowest.due().load, kilos(35));
}

TEST(LighterWeek, JudgesItsExposuresByNothingButPain)
{
    LiftOnTest lift;
    lift.set(Stage::LoadBuild, 100);
    ASSERT_EQ(lift.work(2, 100, 3, 0), "L-3");
    lift.apply(LighterWeek{});
    const LiftState before = lift.state();
    EXPECT_EQ(lift.work(1, 90, 12, 5), "D-2") << "no step up";
    EXPECT_EQ(lift.work({{90, 1, 0, -1, progression::Steadiness::Lost}}), "D-2") << "no miss, and no pause asked for";
    EXPECT_EQ(withoutLastWork(lift.state()), withoutLastWork(before));
    EXPECT_EQ(lift.state().lastWork, lift.day() - 2);
    lift.pass(1);
    EXPECT_EQ(lift.day(), *before.lighterUntil + 1);
    EXPECT_EQ(lift.work(2, 100, 3, 0), "D-3 L-5") << "the miss from before it still counts";
}

TEST(LighterWeek, KeepsThePauseThatWasAskedForBeforeIt)
{
    LiftOnTest lift = liftAtNine();
    ASSERT_EQ(lift.work({{100, 9, 2, -1, progression::Steadiness::Lost}, {100, 9, 2}}), "C-1");
    lift.apply(LighterWeek{});
    EXPECT_EQ(lift.work(1, 90, 9, 4), "D-2");
    EXPECT_TRUE(lift.due().isPauseAsked);
    lift.pass(5);
    EXPECT_EQ(lift.work({{100, 9, 2, -1, progression::Steadiness::Lost}, {100, 9, 2}}), "D-3 C-2");
}

TEST(LighterWeek, LeavesTheRulesOfPainAsTheyAre)
{
    LiftOnTest lift = liftAtNine();
    lift.apply(LighterWeek{});
    const LiftState before = lift.state();
    EXPECT_EQ(lift.work(std::vector<Work>{{90, 9, 2, -1, progression::Steadiness::Lost}}, 3), "P-2 D-2");
    EXPECT_EQ(withoutLastWork(lift.state()), withoutLastWork(before));
    EXPECT_EQ(lift.apply(Exposure{}), "V-1");
    EXPECT_EQ(lift.work(std::vector<Work>{{90, 9, 2}}, 4), "P-1");
    EXPECT_EQ(lift.due().kind, PrescriptionKind::Hold);
    EXPECT_FALSE(lift.due().isLighter());
    lift.pass(10);
    EXPECT_EQ(lift.work(1, 90, 9, 2), "P-3") << "a hold has no usual numbers to go back to";
}

TEST(LighterWeek, RunsOnThroughControl)
{
    LiftOnTest lift = liftAtNine();
    lift.apply(LighterWeek{});
    lift.work(std::vector<Work>{{90, 9, 2}}, 5);
    lift.pass(-2);  // the hold, the release and the rehearsal on one day
    lift.apply(progression::Release{"seen by a physiotherapist"});
    lift.pass(-2);
    EXPECT_EQ(lift.due().kind, PrescriptionKind::Rehearse);
    EXPECT_EQ(lift.work(1, 90, 9, 2), "K-3");
    lift.pass(-2);
    EXPECT_EQ(lift.rehearse(), "K-1");
    EXPECT_TRUE(lift.due().isLighter());
    EXPECT_EQ(lift.due().load, kilos(80)) << "a tenth off the 90 that the return left";
}

TEST(LighterWeek, CountsItsExposuresAsWorkAndItsOtherDaysAsDaysAway)
{
    LiftOnTest away = liftAtNine();
    const base::Date last = away.day() - 2;
    away.pass(8);
    ASSERT_EQ(away.day(), last + 10);
    away.apply(LighterWeek{});
    EXPECT_EQ(away.machine().prescriptionOn(last + 13).load, kilos(90));
    const Prescription cut = away.machine().prescriptionOn(last + 14);
    EXPECT_EQ(namesOf(cut.rules), "G-1");
    EXPECT_EQ(cut.load, kilos(80)) << "a tenth off the 90 that the layoff left";
    EXPECT_TRUE(cut.isLighter());
    const Prescription over = away.machine().prescriptionOn(last + 17);
    EXPECT_EQ(namesOf(over.rules), "G-1") << "the layoff takes the place of D-3";
    EXPECT_EQ(over.load, kilos(90));

    LiftOnTest there = liftAtNine();
    there.pass(8);
    there.apply(LighterWeek{});
    there.work(1, 90, 9, 4);
    EXPECT_EQ(there.machine().prescriptionOn(last + 17).load, kilos(100));
}

TEST(LighterWeek, DoesNotMeetALayoff)
{
    LiftOnTest lift = liftAtNine();
    lift.pass(18);
    lift.apply(LighterWeek{});
    EXPECT_EQ(lift.due().load, kilos(80)) << "20 days off cut the load to 90";
    EXPECT_EQ(lift.work(1, 80, 9, 4), "G-1 D-2");
    EXPECT_EQ(lift.machine().withoutLighterWeek().prescriptionOn(lift.day()).load, kilos(90));
}

TEST(LighterWeek, BeginsAnewFromASecondOne)
{
    LiftOnTest lift = liftAtNine();
    lift.apply(LighterWeek{});
    lift.pass(2);
    const base::Date second = lift.day();
    EXPECT_EQ(lift.apply(LighterWeek{}), "D-1");
    EXPECT_EQ(lift.due().lighterUntil, second + 6);
    EXPECT_EQ(lift.due().load, kilos(90)) << "a tenth off the usual load, not off the lighter one";
}

TEST(LighterWeek, EndsWithASetOrASwap)
{
    LiftOnTest set = liftAtNine();
    set.apply(LighterWeek{});
    set.set(Stage::RepBuild, 95);
    EXPECT_FALSE(set.due().isLighter());
    EXPECT_EQ(set.due().load, kilos(95));
    EXPECT_TRUE(set.due(10).rules.isEmpty());

    LiftOnTest swapped = liftAtNine();
    swapped.apply(LighterWeek{});
    swapped.apply(progression::Swap{lifts::FixedSet{{kilos(16), kilos(20)}}, kilos(20), {}, {}, "goblet_squat", 1});
    EXPECT_FALSE(swapped.due().isLighter());
    EXPECT_EQ(swapped.due().load, kilos(20));
}

TEST(LighterWeek, CanBeLeftByKeepingTheUsualNumbers)
{
    LiftOnTest lift = liftAtNine();
    const Prescription usual = lift.due();
    lift.apply(LighterWeek{});
    const LiftMachine without = lift.machine().withoutLighterWeek();
    lift.apply(progression::keepingSetOf(without, without.prescriptionOn(lift.day()), "fit again"));
    EXPECT_EQ(lift.due(), usual);
}

TEST(LighterWeek, RoundsSetsUpAndKeepsALoadThatIsTheLightest)
{
    const struct {
        int sets;
        int kept;
    } rows[] = {{1, 1}, {2, 1}, {3, 2}, {4, 2}, {5, 3}};
    for (const auto& row : rows) {
        LiftOnTest lift;
        progression::CoachSet set;
        set.stage = Stage::SetBuild;
        set.load = kilos(60);
        set.sets = base::Sets(row.sets);
        lift.set(set);
        lift.apply(LighterWeek{});
        EXPECT_EQ(lift.due().sets, base::Sets(row.kept)) << row.sets;
        EXPECT_EQ(lift.due().load, kilos(52.5)) << "54 at most";
    }
    LiftOnTest pair(lowerLift(fixedKit({20, 24})));
    pair.set(Stage::RepBuild, 24);
    pair.apply(LighterWeek{});
    EXPECT_EQ(pair.due().load, kilos(20)) << "21.6 at most";
    pair.set(Stage::RepBuild, 20);
    pair.apply(LighterWeek{});
    EXPECT_EQ(pair.due().load, kilos(20)) << "nothing is lighter";
    EXPECT_EQ(pair.due().sets, base::Sets(1));
}

TEST(LighterWeek, TakesItsFiguresFromThePolicy)
{
    progression::LiftSetup setup = lowerLift();
    setup.policy.lighterDays = 10;
    setup.policy.lighterSets = base::Milli(501);
    setup.policy.lighterCut = base::Milli(200);
    LiftOnTest lift = liftAtNine(setup);
    const base::Date first = lift.day();
    lift.apply(LighterWeek{});
    EXPECT_EQ(lift.due().lighterUntil, first + 9);
    EXPECT_EQ(lift.due().sets, base::Sets(2)) << "1.002, rounded up";
    EXPECT_EQ(lift.due().load, kilos(80));
}

TEST(LighterWeek, RefusesFiguresThatMakeNoSense)
{
    using progression::Policy;
    const auto fieldOf = [](auto change) {
        Policy policy = Policy::defaultsFor(base::MassUnit::Kilogram);
        change(policy);
        const auto fault = progression::faultOf(policy);
        return fault ? fault->field : std::string();
    };
    EXPECT_EQ(fieldOf([](Policy& p) { p.lighterDays = 0; }), "lighter_days");
    EXPECT_EQ(fieldOf([](Policy& p) { p.lighterDays = 1; }), "");
    EXPECT_EQ(fieldOf([](Policy& p) { p.lighterDays = 28; }), "");
    EXPECT_EQ(fieldOf([](Policy& p) { p.lighterDays = 29; }), "lighter_days");
    EXPECT_EQ(fieldOf([](Policy& p) { p.lighterSets = base::Milli(0); }), "lighter_sets");
    EXPECT_EQ(fieldOf([](Policy& p) { p.lighterSets = base::Milli(1000); }), "lighter_sets");
    EXPECT_EQ(fieldOf([](Policy& p) { p.lighterCut = base::Milli(0); }), "lighter_cut");
    EXPECT_EQ(fieldOf([](Policy& p) { p.lighterCut = base::Milli(1000); }), "lighter_cut");
}

TEST(LighterWeek, IsLeftOutOfWhatTheNextStageIsJudgedOn)
{
    LiftOnTest lift = liftAtNine();
    const auto before = progression::arrivalOf(lift.machine(), lift.day());
    const base::Date day = lift.day();
    lift.apply(LighterWeek{});
    const auto during = progression::arrivalOf(lift.machine(), day);
    ASSERT_TRUE(before && during);
    EXPECT_EQ(during->stage, before->stage);
    EXPECT_EQ(during->first, before->first);

    const EventBody usual = exposureOf({{100, 8, 2}, {100, 8, 2}});
    const EventBody lighter = exposureOf({{90, 9, 4}});
    progression::RuleList made;
    made.add(Rule::R2);
    progression::RuleList recorded;
    recorded.add(Rule::D2);
    const std::vector<progression::JudgedEvent> history{{day - 2, &usual, made, Stage::RepBuild},
                                                        {day, &lighter, recorded, Stage::RepBuild}};
    const auto facts = progression::recordFactsOf(history, Stage::RepBuild, Stage::RepBuild);
    EXPECT_EQ(facts.exposureDate, day - 2);
    EXPECT_EQ(facts.lastDate, day) << "it is a record all the same";
    EXPECT_EQ(facts.painFreeInARow, 2);
}

}  // namespace chalk::test
