#include "core/direction/lift_for_plan.h"
#include "core/direction/plan_blocks.h"
#include "core/direction/plan_calendar.h"
#include "core/direction/plan_review.h"
#include "core/progression/load_steps.h"
#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

// A plan and a lift together, in cases at the border: what the one says has to come out of the other.

namespace chalk::test {

namespace {

using direction::BlockPlan;
using direction::Direction;
using direction::LiftRole;
using progression::LiftMachine;

const base::Date kRunStart = base::Date::fromYmd(2026, 11, 30).value();  // a Monday; 2026 has 53 weeks

LiftMachine loadedLift(progression::LiftSetup setup = lowerLift())
{
    setup.startStage = progression::Stage::BaseLoad;
    LiftMachine lift = LiftMachine::create(setup).value();
    progression::CoachSet set;
    set.stage = progression::Stage::LoadBuild;
    set.load = lift.loads().atMost(kilos(70));
    set.reason = "came from another coach";
    lift.apply(kRunStart - 4, set);
    return lift;
}

BlockPlan planOf(int sessionsAWeek, int exposures, int weeks = 12)
{
    return direction::planFor({Direction::Strength, direction::Wave::Linear, weeks, sessionsAWeek, true, kRunStart, {{base::LiftId(1), LiftRole::Main, exposures}}});
}

void follow(LiftMachine& lift, const BlockPlan& plan, base::Date day, double single)
{
    lift.apply(day, direction::blockOf(plan, 0, day, kilos(single), false, {}));
}

/// Does what is due on a day, leaving in reserve what the plan asks for.
void doAsDue(LiftMachine& lift, base::Date day, int pain = 0)
{
    const progression::Prescription due = lift.prescriptionOn(day);
    std::vector<Work> sets(static_cast<std::size_t>(due.sets.value()), {due.load.centi() / 100.0, due.repsLow.value(), due.reserve});
    lift.apply(day, exposureOf(sets, pain));
}

}  // namespace

TEST(PlanRun, TwoSessionsAWeekAreAHeavyAndALightDay)
{
    LiftMachine lift = loadedLift();
    const BlockPlan plan = planOf(2, 2);
    follow(lift, plan, kRunStart, 100);
    const progression::Prescription heavy = lift.prescriptionOn(kRunStart);
    EXPECT_EQ(heavy.load, kilos(80));
    doAsDue(lift, kRunStart);
    const progression::Prescription light = lift.prescriptionOn(kRunStart + 3);
    EXPECT_EQ(light.load, lift.loads().atMost(kilos(64))) << "the light day is 80 per cent of the heavy one (Haff and Triplett 2016, chapter 17)";
    doAsDue(lift, kRunStart + 3);
    EXPECT_EQ(lift.prescriptionOn(kRunStart + 5).load, light.load) << "a third session of the week is like the last";
    EXPECT_GT(lift.prescriptionOn(kRunStart + 7).load, light.load) << "the next week is heavy again";
}

TEST(PlanRun, AHoldStopsTheLiftAndTheWeeksGoBy)
{
    LiftMachine lift = loadedLift();
    const BlockPlan plan = planOf(3, 2);
    follow(lift, plan, kRunStart, 100);
    doAsDue(lift, kRunStart + 7, 5);
    EXPECT_EQ(lift.prescriptionOn(kRunStart + 9).kind, progression::PrescriptionKind::Hold);
    lift.apply(kRunStart + 21, progression::Release{"seen by a physiotherapist"});
    const progression::Prescription after = lift.prescriptionOn(kRunStart + 22);
    EXPECT_NE(after.kind, progression::PrescriptionKind::Hold);
    EXPECT_FALSE(after.block.has_value() && after.kind != progression::PrescriptionKind::Work) << "control first, then the plan";
    EXPECT_TRUE(lift.state().block.has_value()) << "the plan waits";
}

TEST(PlanRun, AThreeWeekHolidayOverTheYearsEndShiftsThePlanAcrossWeek53)
{
    const BlockPlan plan = planOf(3, 2);
    std::vector<base::Date> away;
    for (int week = 3; week < 6; ++week) {
        away.push_back(kRunStart + 7 * week);
    }
    ASSERT_EQ(away[1], base::Date::fromYmd(2026, 12, 28).value());
    ASSERT_EQ(away[1].isoWeek().week, 53);
    const BlockPlan shifted = withMissedWeeks(plan, away, direction::MissedWeeks::Shift);
    EXPECT_EQ(shifted.weeks.size(), plan.weeks.size());
    EXPECT_EQ(shifted.weeks.back().monday, plan.weeks.back().monday + 21);
    EXPECT_EQ(shifted.weeks[3].monday, base::Date::fromYmd(2027, 1, 11).value()) << "the hole is over the turn of the year";
    const BlockPlan squeezed = withMissedWeeks(plan, away, direction::MissedWeeks::Squeeze);
    EXPECT_EQ(squeezed.weeks.back().monday, plan.weeks.back().monday);
    EXPECT_EQ(squeezed.weeks.back().kind, direction::WeekKind::Test);

    LiftMachine lift = loadedLift();
    follow(lift, shifted, kRunStart, 100);
    for (const int day : {0, 3, 7, 10, 14, 17}) {
        doAsDue(lift, kRunStart + day);
    }
    const base::Load before = lift.state().block->single;
    const progression::Prescription back = lift.prescriptionOn(shifted.weeks[3].monday);
    ASSERT_TRUE(back.block.has_value());
    EXPECT_EQ(back.block->week, 4);
    EXPECT_TRUE(back.rules.has(progression::Rule::G1) || back.rules.has(progression::Rule::G2)) << "25 days without work are a layoff";
    EXPECT_LT(back.load, progression::LoadSteps(lift.setup(), lift.kit(), lift.loads()).atShare(before, shifted.weeks[3].work[0][0].scheme.share))
        << "and cut the single as they cut a load";
}

TEST(PlanRun, LoadsInPoundsAreThoseOfThePounds)
{
    progression::LiftSetup setup = lowerLift(fixedKit({45, 95, 135, 155, 185, 205, 225}));
    setup.unit = base::MassUnit::Pound;
    setup.policy = progression::Policy::defaultsFor(base::MassUnit::Pound);
    LiftMachine lift = loadedLift(setup);
    follow(lift, planOf(3, 1), kRunStart, 200);
    EXPECT_EQ(lift.prescriptionOn(kRunStart).load, kilos(155)) << "80 per cent of 200 lb is 160; 155 is the load that is there";
}

TEST(PlanRun, ALiftWithoutAnEstimateStaysOnTheLadderUntilThereIsOne)
{
    direction::LiftForPlan lift{base::LiftId(1), lifts::Pattern::Squat, "back_squat", loadedLift(), {}, kRunStart - 100, false};
    EXPECT_FALSE(lift.canFollow());
    const progression::Prescription due = lift.machine.prescriptionOn(kRunStart);
    EXPECT_FALSE(due.block.has_value());
    const auto spoken = direction::spokenIn(kRunStart, exposureOf({{70, 5, 0}}), lift.machine);  // a test of five
    ASSERT_TRUE(spoken.has_value());
    lift.single = direction::startingSingle(std::vector{*spoken}, kRunStart);
    EXPECT_TRUE(lift.canFollow());
    EXPECT_NEAR(lift.single->load.centi() / 100.0, 70 / 0.87, 0.01);
}

// Laputin and Oleshko 1982 (see rep_zones.h) print 10 to 20 repetitions in a session at 80 to 89 per cent, 15 at best, and 4 to 10 at 90 and more.
TEST(PlanRun, ThePlannedRepetitionsOfEveryHeavyWeekLieInThePrintedTotals)
{
    for (const direction::Wave wave : {direction::Wave::Linear, direction::Wave::Undulating}) {
        const BlockPlan plan = direction::planFor({Direction::Strength, wave, 16, 3, true, kRunStart, {{base::LiftId(1), LiftRole::Main, 3}}});
        for (const direction::PlanWeek& week : plan.weeks) {
            const direction::PlannedWork& heavy = week.work[0][0];
            if (week.kind != direction::WeekKind::Work || heavy.scheme.share < base::Milli(800)) {
                continue;
            }
            const int reps = heavy.scheme.sets.value() * heavy.scheme.reps.value();
            EXPECT_GE(reps, heavy.scheme.share < base::Milli(900) ? 10 : 4) << week.monday.toString();
            EXPECT_LE(reps, heavy.scheme.share < base::Milli(900) ? 20 : 10) << week.monday.toString();
        }
    }
}

TEST(PlanRun, APlanThatIsDoneAsItSaysIsReviewedAsDone)
{
    LiftMachine lift = loadedLift();
    const BlockPlan plan = planOf(2, 2, 8);
    follow(lift, plan, kRunStart, 100);
    std::vector<direction::DoneSet> done;
    for (const direction::PlanWeek& week : plan.weeks) {
        for (int day = 0; day < static_cast<int>(week.work[0].size()); ++day) {
            const base::Date date = week.monday + 3 * day;
            const progression::Prescription due = lift.prescriptionOn(date);
            ASSERT_TRUE(due.block.has_value()) << date.toString();
            done.insert(done.end(), week.work[0][static_cast<std::size_t>(day)].isTest ? 1U : static_cast<std::size_t>(due.sets.value()),
                        {date, due.load, due.repsLow});
            doAsDue(lift, date);
        }
    }
    for (const direction::WeekReview& week : reviewOf(plan, 0, kilos(100), done)) {
        EXPECT_EQ(week.doneSets, week.plannedSets) << week.monday.toString();
        EXPECT_NEAR(week.doneShare, week.plannedShare, 0.08) << week.monday.toString() << ": by steps of 2.5 kg and what the single moved";
    }
    EXPECT_FALSE(lift.prescriptionOn(plan.weeks.back().monday + 7).block.has_value()) << "the plan is over";
    EXPECT_EQ(lift.prescriptionOn(plan.weeks.back().monday + 7).stage, progression::Stage::LoadBuild);
}

}  // namespace chalk::test
