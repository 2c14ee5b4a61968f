#include "core/store/plan_writer.h"

#include "core/direction/plan_calendar.h"
#include "core/store/act_reader.h"
#include "core/store/lift_cache.h"
#include "core/store/plan_reader.h"
#include "core/store/record_writer.h"
#include "core/store/studio_export.h"
#include "core/store/studio_import.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::store {

using direction::ClientPlan;
using direction::LiftRole;
using test::kilos;

using ::testing::ElementsAre;
using ::testing::IsEmpty;

/// Ada's squat is loaded, her hinge on hold, her press not loaded yet.
class PlanWriterTest : public ::testing::Test {
protected:
    ClientPlan strengthPlan() const
    {
        ClientPlan plan;
        plan.client = m_ada;
        plan.begunOn = m_day;
        plan.plan = direction::planFor({direction::Direction::Strength, direction::Wave::Linear, 12, 2, true, m_day + 6,
                                        {{m_squat, LiftRole::Main, 2}, {m_hinge, LiftRole::Main, 1}}});
        plan.singles = {{kilos(60), false}, {kilos(80), false}};
        plan.note = "Strength first";
        return plan;
    }
    std::vector<ClientPlan> history() { return m_reader.history(m_ada).value(); }
    progression::LiftMachine machineOf(base::LiftId lift)
    {
        EventLog log(m_studio.database());
        return LiftCache(m_studio.database(), log).read(lift)->machine;
    }
    bool followsPlan(base::LiftId lift) { return machineOf(lift).state().block.has_value(); }
    std::string refusal(const Result<ActOutcome>& outcome)
    {
        EXPECT_FALSE(outcome);
        EXPECT_TRUE(outcome || outcome.error().kind == StoreError::Kind::Refused);
        return outcome ? std::string() : outcome.error().message.toStdString();
    }

    test::StudioOnTest m_studio;
    PlanWriter m_writer{m_studio.database(), test::someMoment, base::CoachId(1)};
    PlanReader m_reader{m_studio.database()};
    RecordWriter m_records{m_studio.database(), test::someMoment, base::CoachId(1)};
    base::Date m_day = test::smallStudioDay();
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    base::LiftId m_squat = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat);
    base::LiftId m_hinge = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Hinge);
};

TEST_F(PlanWriterTest, BeginsAPlanThatItsLiftsFollow)
{
    const auto outcome = m_writer.begin(strengthPlan());
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    ASSERT_EQ(outcome->lifts.size(), 1U) << "the hinge is on hold and joins later";
    EXPECT_EQ(test::namesOf(outcome->lifts[0].rules), "N-1");
    ClientPlan kept = strengthPlan();
    kept.id = history().front().id;
    EXPECT_THAT(history(), ElementsAre(kept));
    EXPECT_FALSE(kept.id.isNone());
    const progression::Prescription due = machineOf(m_squat).prescriptionOn(m_day + 6);
    ASSERT_TRUE(due.block.has_value());
    EXPECT_EQ(due.block->weeks, 12);
    EXPECT_EQ(due.load, kilos(47.5)) << "80 per cent of 60 kg is 48";
    EXPECT_EQ(ActReader(m_studio.database()).latest(1).value().front().kind, ActKind::Plan);
    EXPECT_FALSE(followsPlan(m_hinge));
}

TEST_F(PlanWriterTest, UndoTakesThePlanAndItsBlocksBackAndRedoBringsThemBack)
{
    const QStringList before = m_studio.cacheRows();
    const base::ActId act = m_writer.begin(strengthPlan()).value().act;
    const auto written = history();
    const base::ActId undo = m_records.undo(act).value().act;
    EXPECT_THAT(history(), IsEmpty());
    EXPECT_FALSE(followsPlan(m_squat));
    EXPECT_EQ(m_studio.cacheRows(), before);
    ASSERT_TRUE(m_records.undo(undo));
    EXPECT_EQ(history(), written);
    EXPECT_TRUE(followsPlan(m_squat));
}

TEST_F(PlanWriterTest, ALiftThatIsReleasedTakesThePlanUpWithTheNextChange)
{
    ASSERT_TRUE(m_writer.begin(strengthPlan()));
    ASSERT_TRUE(m_records.record(m_ada, {}, {{m_hinge, {m_day + 1, progression::Release{"seen by a physio"}}}}));
    ASSERT_TRUE(m_records.record(m_ada, {}, {{m_hinge, {m_day + 1, progression::CoachSet{progression::Stage::LoadBuild, kilos(60), {}, {}, {}, "ready"}}}}));
    const auto outcome = m_writer.change(history().front(), m_day + 1);
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    ASSERT_EQ(outcome->lifts.size(), 1U) << "the squat follows it already";
    EXPECT_EQ(outcome->lifts[0].lift, m_hinge);
    EXPECT_TRUE(followsPlan(m_hinge));
}

TEST_F(PlanWriterTest, AChangeGoesToTheLiftsAndUndoBringsTheFormerWeeksBack)
{
    ASSERT_TRUE(m_writer.begin(strengthPlan()));
    const ClientPlan before = history().front();
    ClientPlan changed = before;
    const std::vector<base::Date> missed{before.plan.weeks[2].monday};
    changed.plan = withMissedWeeks(before.plan, missed, direction::MissedWeeks::Shift);
    const base::ActId act = m_writer.change(changed, m_day + 20).value().act;
    EXPECT_THAT(history(), ElementsAre(changed));
    EXPECT_EQ(machineOf(m_squat).state().block->block->weeks.back().monday, before.plan.weeks.back().monday + 7);
    ASSERT_TRUE(m_records.undo(act));
    EXPECT_THAT(history(), ElementsAre(before));
    EXPECT_EQ(machineOf(m_squat).state().block->block->weeks.back().monday, before.plan.weeks.back().monday);
}

TEST_F(PlanWriterTest, ALiftThatLeavesThePlanGoesBackToTheLadder)
{
    ASSERT_TRUE(m_writer.begin(strengthPlan()));
    ClientPlan changed = history().front();
    changed.plan.wishes.lifts.erase(changed.plan.wishes.lifts.begin());
    changed.plan = direction::planFor(changed.plan.wishes);
    changed.singles.erase(changed.singles.begin());
    const auto outcome = m_writer.change(changed, m_day + 7);
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    EXPECT_EQ(test::namesOf(outcome->lifts.at(0).rules), "N-4");
    EXPECT_FALSE(followsPlan(m_squat));
}

TEST_F(PlanWriterTest, EndingItSendsTheLiftsBackToTheLadder)
{
    ASSERT_TRUE(m_writer.begin(strengthPlan()));
    const ClientPlan running = history().front();
    const auto outcome = m_writer.end(running.id, m_day + 30, "New job");
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    EXPECT_FALSE(followsPlan(m_squat));
    EXPECT_EQ(history().front().endedOn, m_day + 30);
    EXPECT_EQ(history().front().note, "New job");
    EXPECT_EQ(m_reader.running(m_ada, m_day + 29).value()->id, running.id);
    EXPECT_FALSE(m_reader.running(m_ada, m_day + 30).value().has_value());
    ASSERT_TRUE(m_records.undo(outcome->act));
    EXPECT_TRUE(followsPlan(m_squat));
    EXPECT_THAT(history(), ElementsAre(running));
}

TEST_F(PlanWriterTest, ANewPlanEndsTheOneThatRuns)
{
    ASSERT_TRUE(m_writer.begin(strengthPlan()));
    ClientPlan next = strengthPlan();
    next.begunOn = m_day + 10;
    next.plan = direction::planFor({direction::Direction::Movement, direction::Wave::Linear, 8, 2, false, m_day + 13, {{m_squat, LiftRole::Main, 2}}});
    next.singles = {{kilos(60), false}};
    const auto outcome = m_writer.begin(next);
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    ASSERT_EQ(history().size(), 2U);
    EXPECT_EQ(history()[0].plan.wishes.direction, direction::Direction::Movement);
    EXPECT_EQ(history()[1].endedOn, m_day + 10);
    EXPECT_EQ(machineOf(m_squat).state().block->block->weeks.size(), 8U);
    EXPECT_EQ(m_reader.standings(m_day + 20).value().at(m_ada).lastDay, lastDayOf(history()[0]));
    ASSERT_TRUE(m_records.undo(outcome->act)) << "both come back as they were";
    EXPECT_EQ(history().size(), 1U);
    EXPECT_EQ(history()[0].endedOn, std::nullopt);
    EXPECT_EQ(machineOf(m_squat).state().block->block->weeks.size(), 12U);
}

TEST_F(PlanWriterTest, WhatCannotBeIsRefusedAndNothingIsWritten)
{
    ClientPlan plan = strengthPlan();
    plan.singles.clear();
    EXPECT_EQ(refusal(m_writer.begin(plan)), "The plan cannot be kept: `singles` there has to be one for each lift");
    plan = strengthPlan();
    plan.client = test::clientNamed(m_studio.database(), "Bo Arden");
    EXPECT_EQ(refusal(m_writer.begin(plan)), "Lift " + std::to_string(m_squat.value()) + " is not one of client " + std::to_string(plan.client.value()));
    plan = strengthPlan();
    plan.id = base::PlanId(7);
    EXPECT_EQ(refusal(m_writer.change(plan, m_day)), "The plan does not run any more");
    EXPECT_EQ(refusal(m_writer.end(base::PlanId(7), m_day, {})), "There is no plan 7");
    EXPECT_THAT(history(), IsEmpty());
    EXPECT_FALSE(followsPlan(m_squat));
}

TEST_F(PlanWriterTest, WhatWasChangedSinceIsNotTakenBack)
{
    const base::ActId begun = m_writer.begin(strengthPlan()).value().act;
    ClientPlan changed = history().front();
    changed.note = "Slower";
    changed.plan.weeks[0].work[0][0].scheme.sets = base::Sets(2);
    ASSERT_TRUE(m_writer.change(changed, m_day + 1));
    EXPECT_FALSE(refusal(m_records.undo(begun)).empty());
    EXPECT_THAT(history(), ElementsAre(changed));
}

TEST_F(PlanWriterTest, ATestIsKeptWithWhatWasLifted)
{
    const direction::TestedMaximum found{{}, m_ada, m_squat, m_day, kilos(62.5), base::Reps(1), direction::TestEnd::Found, "Belt"};
    progression::Exposure lifted = test::exposureOf({{40, 5}, {55, 2}, {62.5, 1}});
    for (progression::SetRecord& set : lifted.sets) {
        set.isWarmup = true;
    }
    const progression::Prescription before = machineOf(m_squat).prescriptionOn(m_day);
    const auto outcome = m_writer.recordTest(found, lifted);
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    direction::TestedMaximum kept = found;
    kept.act = outcome->act;
    EXPECT_THAT(m_reader.tests(m_ada).value(), ElementsAre(kept));
    EXPECT_EQ(machineOf(m_squat).prescriptionOn(m_day).load, before.load) << "warm-up sets are not judged";
    const auto lifts = m_reader.lifts(m_ada, m_day).value();
    const auto squat = std::find_if(lifts.begin(), lifts.end(), [this](const direction::LiftForPlan& lift) { return lift.lift == m_squat; });
    EXPECT_EQ(squat->single, (direction::PlanSingle{kilos(62.5), true}));
    const base::ActId undo = m_records.undo(outcome->act).value().act;
    EXPECT_THAT(m_reader.tests(m_ada).value(), IsEmpty());
    ASSERT_TRUE(m_records.undo(undo));
    EXPECT_THAT(m_reader.tests(m_ada).value(), ElementsAre(kept));
    direction::TestedMaximum tooMany = found;
    tooMany.reps = base::Reps(6);
    EXPECT_EQ(refusal(m_writer.recordTest(tooMany, {})), "A test has 1 to 5 repetitions");
}

TEST_F(PlanWriterTest, PlansAndTestsGoOutAndInAgain)
{
    ASSERT_TRUE(m_writer.begin(strengthPlan()));
    ASSERT_TRUE(m_writer.recordTest({{}, m_ada, m_squat, m_day, kilos(62.5), base::Reps(3), direction::TestEnd::Stopped, {}}, {}));
    const exchange::StudioDocument document = exportStudio(m_studio.database(), m_day).value();
    EXPECT_EQ(document.clients[0].plans.size(), 1U);
    EXPECT_EQ(document.clients[0].tests.size(), 1U);
    test::StudioOnTest other(document);
    EXPECT_EQ(exportStudio(other.database(), m_day).value(), document);
    const base::ClientId ada = test::clientNamed(other.database(), "Ada Lund");
    EXPECT_EQ(PlanReader(other.database()).history(ada).value().front().plan.weeks, strengthPlan().plan.weeks);
}

// Rule N-2: what is lifted in the test of a plan is taken as it was lifted. It stays a tested one when the plan is over.
TEST_F(PlanWriterTest, ATestOfThePlanMakesTheSingleATestedOne)
{
    ClientPlan plan = strengthPlan();
    const auto single = [&](base::Date day) {
        const auto lifts = m_reader.lifts(m_ada, day).value();
        return std::find_if(lifts.begin(), lifts.end(), [&](const direction::LiftForPlan& lift) { return lift.lift == m_squat; })->single;
    };
    ASSERT_TRUE(m_writer.begin(plan));
    const base::Date testWeek = plan.plan.weeks.back().monday;
    ASSERT_EQ(plan.plan.weeks.back().work[0].size(), 2U);
    ASSERT_TRUE(m_records.record(m_ada, {}, {{m_squat, {testWeek, test::exposureOf({{40, 3, 4}})}}}));
    EXPECT_FALSE(single(testWeek)->isTested) << "the first day of the week is a light one";
    ASSERT_TRUE(m_records.record(m_ada, {}, {{m_squat, {testWeek + 3, test::exposureOf({{60, 1, 1}, {65, 1}})}}}));
    EXPECT_EQ(single(testWeek + 3), (direction::PlanSingle{kilos(65), true})) << "without a reserve it is to failure";
    EXPECT_EQ(single(testWeek + 9), (direction::PlanSingle{kilos(65), true})) << "the plan is over";
    EXPECT_FALSE(single(testWeek + 3 + direction::kTestCountsDays + 1).value_or(direction::PlanSingle()).isTested);
}

}  // namespace chalk::store
