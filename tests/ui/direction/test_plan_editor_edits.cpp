#include "ui/direction/plan_editor_edits.h"

#include "core/direction/plan_calendar.h"
#include "core/direction/scheme_ramp.h"
#include "tests/ui/direction/plan_on_test.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

namespace {

using chalk::direction::ClientPlan;
using chalk::direction::Direction;
using chalk::direction::MissedWeeks;
using chalk::direction::PlannedWork;
using chalk::direction::WeekKind;

const base::Date kBefore = firstMonday() - 4;

ClientPlan planOnTest()
{
    return caseOnTest().plan;
}

PlannedWork& workIn(ClientPlan& plan, std::size_t week, std::size_t lift, std::size_t exposure)
{
    return plan.plan.weeks[week].work[lift][exposure];
}

EditFault faultOfEdit(const WorkPlace& place, const WorkEdit& edit, base::Date today = kBefore)
{
    const EditedPlan edited = withEdit(planOnTest(), place, edit, today);
    EXPECT_FALSE(edited);
    return edited ? EditFault::NotThere : edited.error();
}

}  // namespace

TEST(PlanEditorEdits, EveryFieldIsSetAndNothingBesideIt)
{
    ClientPlan wanted = planOnTest();
    ClientPlan plan = planOnTest();
    PlannedWork& work = workIn(wanted, 1, 0, 1);
    const auto set = [&plan](WorkField field, int value, int most = 0) { plan = withEdit(plan, {1, 0, 1}, {field, value, most}, kBefore).value(); };
    set(WorkField::Sets, 6);
    work.scheme.sets = base::Sets(6);
    set(WorkField::Reps, 5, 7);
    work.scheme.reps = base::Reps(5);
    work.repsMost = base::Reps(7);
    set(WorkField::Share, 725);
    work.scheme.share = base::Milli(725);
    set(WorkField::Rest, 150);
    work.scheme.rest = base::Seconds(150);
    set(WorkField::Reserve, 0);
    work.scheme.reserve = 0;
    set(WorkField::Pause, 1);
    work.isPauseAsked = true;
    set(WorkField::Test, 1);
    work.isTest = true;
    EXPECT_EQ(plan, wanted);
}

TEST(PlanEditorEdits, BordersHoldAndWhatIsBeyondIsRefused)
{
    const WorkPlace at{0, 0, 0};
    for (const WorkEdit& edit : {WorkEdit{WorkField::Sets, 1}, {WorkField::Sets, kMostPlanSets}, {WorkField::Reps, 1, 1}, {WorkField::Reps, 100, 100},
                                 {WorkField::Share, 1}, {WorkField::Share, 1000}, {WorkField::Rest, 0}, {WorkField::Rest, kLongestPlanRest},
                                 {WorkField::Reserve, 0}, {WorkField::Reserve, 10}}) {
        EXPECT_TRUE(withEdit(planOnTest(), at, edit, kBefore)) << static_cast<int>(edit.field) << " " << edit.value;
    }
    EXPECT_EQ(faultOfEdit(at, {WorkField::Sets, 0}), EditFault::SetsRange);
    EXPECT_EQ(faultOfEdit(at, {WorkField::Sets, 21}), EditFault::SetsRange);
    EXPECT_EQ(faultOfEdit(at, {WorkField::Reps, 0, 5}), EditFault::RepsRange);
    EXPECT_EQ(faultOfEdit(at, {WorkField::Reps, 5, 101}), EditFault::RepsRange);
    EXPECT_EQ(faultOfEdit(at, {WorkField::Reps, 8, 6}), EditFault::RepsOrder);
    EXPECT_EQ(faultOfEdit(at, {WorkField::Share, 0}), EditFault::ShareRange);
    EXPECT_EQ(faultOfEdit(at, {WorkField::Share, 1500}), EditFault::ShareRange) << "150 per cent";
    EXPECT_EQ(faultOfEdit(at, {WorkField::Rest, -1}), EditFault::RestRange);
    EXPECT_EQ(faultOfEdit(at, {WorkField::Rest, 1801}), EditFault::RestRange);
    EXPECT_EQ(faultOfEdit(at, {WorkField::Reserve, 11}), EditFault::ReserveRange);
}

TEST(PlanEditorEdits, PlacesThatAreNotThereAreRefused)
{
    EXPECT_EQ(faultOfEdit({12, 0, 0}, {WorkField::Sets, 3}), EditFault::NotThere);
    EXPECT_EQ(faultOfEdit({0, 3, 0}, {WorkField::Sets, 3}), EditFault::NotThere);
    EXPECT_EQ(faultOfEdit({0, 2, 1}, {WorkField::Sets, 3}), EditFault::NotThere) << "the row is done once a week";
}

TEST(PlanEditorEdits, AWeekIsOverTheDayAfterItsSunday)
{
    const base::Date sunday = firstMonday() + 6;
    EXPECT_TRUE(withEdit(planOnTest(), {0, 0, 0}, {WorkField::Sets, 3}, sunday));
    EXPECT_EQ(faultOfEdit({0, 0, 0}, {WorkField::Sets, 3}, sunday + 1), EditFault::WeekIsOver);
    EXPECT_EQ(withKind(planOnTest(), 0, WeekKind::Lighter, sunday + 1).error(), EditFault::WeekIsOver);
    EXPECT_TRUE(copiedDown(planOnTest(), 0, 0, sunday + 1)) << "the week that is written into is not over";
    EXPECT_EQ(copiedDown(planOnTest(), 0, 0, sunday + 8).error(), EditFault::WeekIsOver);
}

TEST(PlanEditorEdits, AWeekMadeLighterIsLightenedAndComesBack)
{
    const ClientPlan plan = planOnTest();
    ASSERT_EQ(plan.plan.weeks[1].kind, WeekKind::Work);
    const ClientPlan lighter = withKind(plan, 1, WeekKind::Lighter, kBefore).value();
    EXPECT_EQ(lighter.plan.weeks[1].kind, WeekKind::Lighter);
    EXPECT_EQ(lighter.plan.weeks[1].work[0][0], chalk::direction::lightened(plan.plan.weeks[1].work[0][0]));
    EXPECT_EQ(lighter.plan.weeks[1].phase, plan.plan.weeks[1].phase);
    EXPECT_EQ(withKind(lighter, 1, WeekKind::Work, kBefore).value(), plan);
}

TEST(PlanEditorEdits, ALighterWeekMadeWorkTakesTheWorkBeforeIt)
{
    const ClientPlan plan = planOnTest();
    ASSERT_EQ(plan.plan.weeks[3].kind, WeekKind::Lighter);
    const ClientPlan full = withKind(plan, 3, WeekKind::Work, kBefore).value();
    EXPECT_EQ(full.plan.weeks[3].kind, WeekKind::Work);
    EXPECT_EQ(full.plan.weeks[3].work, plan.plan.weeks[2].work);
}

TEST(PlanEditorEdits, TheTestStaysTheTest)
{
    EXPECT_EQ(withKind(planOnTest(), 11, WeekKind::Work, kBefore).error(), EditFault::TestWeek);
    EXPECT_EQ(withKind(planOnTest(), 1, WeekKind::Test, kBefore).error(), EditFault::TestWeek);
    EXPECT_EQ(copiedDown(planOnTest(), 10, 0, kBefore).error(), EditFault::TestWeek);
}

TEST(PlanEditorEdits, ARowIsCopiedDownForItsLiftAlone)
{
    const ClientPlan plan = planOnTest();
    ASSERT_NE(plan.plan.weeks[4].work[0][0].aim, plan.plan.weeks[3].work[0][0].aim) << "build follows base here";
    ClientPlan wanted = plan;
    for (std::size_t e = 0; e < 2; ++e) {
        const auto aim = workIn(wanted, 4, 0, e).aim;
        workIn(wanted, 4, 0, e) = plan.plan.weeks[3].work[0][e];
        workIn(wanted, 4, 0, e).aim = aim;
    }
    EXPECT_EQ(copiedDown(plan, 3, 0, kBefore).value(), wanted);
    EXPECT_EQ(copiedDown(plan, 11, 0, kBefore).error(), EditFault::NotThere) << "nothing follows the last week";
}

TEST(PlanEditorEdits, HandEditsAreCountedOnTheirOwn)
{
    ClientPlan plan = planOnTest();
    EXPECT_EQ(handEdits(plan.plan), 0);
    plan = withEdit(plan, {0, 0, 0}, {WorkField::Sets, 3}, kBefore).value();
    plan = withEdit(plan, {0, 0, 0}, {WorkField::Rest, 200}, kBefore).value();
    plan = withEdit(plan, {5, 2, 0}, {WorkField::Sets, 2}, kBefore).value();
    EXPECT_EQ(handEdits(plan.plan), 2) << "two exposures";
}

TEST(PlanEditorEdits, WeeksSqueezedOutAreNoHandEdits)
{
    const std::vector missed{firstMonday() + 14, firstMonday() + 21};
    const auto squeezed = withMissedWeeks(planOnTest().plan, missed, MissedWeeks::Squeeze);
    ASSERT_EQ(squeezed.weeks.size(), 10U);
    EXPECT_EQ(handEdits(squeezed), 0);
    EXPECT_EQ(handEdits(withMissedWeeks(planOnTest().plan, missed, MissedWeeks::Shift)), 0);
}

TEST(PlanEditorEdits, NewWishesKeepEditsWhereTheyStillFit)
{
    ClientPlan plan = planOnTest();
    plan = withEdit(plan, {1, 0, 0}, {WorkField::Sets, 7}, kBefore).value();
    plan = withEdit(plan, {1, 1, 1}, {WorkField::Sets, 8}, kBefore).value();
    plan = withEdit(plan, {9, 0, 0}, {WorkField::Sets, 9}, kBefore).value();
    auto wishes = plan.plan.wishes;
    wishes.weeks = 8;
    wishes.lifts = {wishes.lifts[1], wishes.lifts[0]};
    wishes.lifts[0].exposures = 1;
    const auto lifts = liftsOnTest();
    const ClientPlan kept = refitted(plan, wishes, lifts, true, kBefore);
    ClientPlan wanted = plan;
    wanted.plan = planFor(wishes);
    wanted.plan.weeks[1].work[1][0] = plan.plan.weeks[1].work[0][0];
    wanted.singles = {plan.singles[1], plan.singles[0]};
    EXPECT_EQ(kept, wanted) << "the bench's second exposure and the tenth week are gone";
    EXPECT_EQ(refitted(plan, wishes, lifts, false, kBefore).plan, planFor(wishes));
}

TEST(PlanEditorEdits, ALighterWeekByHandStaysLighterAndLightensNewLifts)
{
    auto wishes = wishesOnTest();
    wishes.lifts.pop_back();
    ClientPlan plan = planOnTest();
    plan.plan = planFor(wishes);
    plan.singles.pop_back();
    plan = withKind(plan, 1, WeekKind::Lighter, kBefore).value();
    const auto lifts = liftsOnTest();
    const ClientPlan kept = refitted(plan, wishesOnTest(), lifts, true, kBefore);
    EXPECT_EQ(kept.plan.weeks[1].kind, WeekKind::Lighter);
    EXPECT_EQ(kept.plan.weeks[1].work[0], plan.plan.weeks[1].work[0]);
    EXPECT_EQ(kept.plan.weeks[1].work[2][0], chalk::direction::lightened(planFor(wishesOnTest()).weeks[1].work[2][0]));
}

TEST(PlanEditorEdits, WeeksThatAreOverStayWhateverTheWishes)
{
    ClientPlan plan = planOnTest();
    plan.plan = withMissedWeeks(plan.plan, std::vector{firstMonday() + 7}, MissedWeeks::Shift);
    const base::Date today = firstMonday() + 15;
    auto wishes = plan.plan.wishes;
    wishes.direction = Direction::Physique;
    wishes.start = firstMonday() + 70;
    wishes.lifts.pop_back();
    const auto lifts = liftsOnTest();
    const ClientPlan kept = refitted(plan, wishes, lifts, true, today);
    ASSERT_EQ(kept.plan.weeks.size(), 12U);
    EXPECT_EQ(kept.plan.wishes.start, firstMonday()) << "it has begun";
    EXPECT_EQ(kept.plan.weeks[0].work, (std::vector{plan.plan.weeks[0].work[0], plan.plan.weeks[0].work[1]}));
    EXPECT_EQ(kept.plan.weeks[1].monday, firstMonday() + 14) << "the hole of the missed week stays";
    wishes.start = firstMonday();
    EXPECT_EQ(kept.plan.weeks[1].work, planFor(wishes).weeks[1].work);
    EXPECT_EQ(kept.plan.weeks[11].monday, firstMonday() + 84);
}

}  // namespace chalk::ui::direction
