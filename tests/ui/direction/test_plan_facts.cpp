#include "ui/direction/plan_facts.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/record_writer.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"
#include "ui/direction/direction_desk.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

using chalk::direction::Direction;

/// Ada on a strength plan from Monday 30 November 2026 on, with one squat session in its first week.
class PlanFactsTest : public ::testing::Test {
protected:
    PlanFactsTest()
    {
        const DirectionCase before = on("2026-11-24");
        EXPECT_TRUE(m_desk.begin(m_ada, before.today, before.offers[0].plan, before.offers[0].singles));
        const base::LiftId squat = before.offers[0].plan.wishes.lifts[0].lift;
        EXPECT_TRUE(store::RecordWriter(m_studio.database(), test::someMoment)
                        .record(m_ada, {}, {{squat, {*base::Date::parse("2026-12-01"), test::exposureOf({{45, 4, 2}, {45, 4, 2}, {45, 4, 2}}, 2)}}}));
    }

    DirectionCase on(const char* day) { return *m_desk.read(m_ada, *base::Date::parse(day)); }

    test::StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    DirectionDesk m_desk{m_studio.database(), m_catalogue, test::someMoment};
    const base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
};

TEST_F(PlanFactsTest, TheEditorGetsAllLiftsAndTheirNames)
{
    const DirectionCase client = on("2026-12-02");
    const PlanEditorCase facts = editorFacts(client, *client.running);
    EXPECT_EQ(facts.plan, *client.running);
    ASSERT_EQ(facts.names.size(), facts.lifts.size());
    EXPECT_EQ(facts.names.front(), QStringLiteral("Back squat"));
    EXPECT_EQ(facts.today, client.today);
    const auto offered = planOf(client, client.offer(Direction::Movement));
    EXPECT_EQ(offered.plan.wishes.direction, Direction::Movement);
    EXPECT_TRUE(offered.id.isNone());
}

TEST_F(PlanFactsTest, WhatWasDoneStandsBesideWhatWasPlanned)
{
    const DirectionCase client = on("2026-12-02");
    const PlanComparisonCase facts = comparisonFacts(client, *client.running);
    ASSERT_EQ(facts.lifts.size(), 2U);
    EXPECT_EQ(facts.lifts[0].weeks.front().doneSets, 3);
    EXPECT_EQ(facts.lifts[0].weeks.front().doneReps, 12);
    EXPECT_GT(facts.lifts[0].weeks.front().doneShare, 0.5);
    EXPECT_EQ(facts.lifts[1].weeks.front().doneSets, 0) << "it is on hold";
    EXPECT_EQ(facts.lifts[1].weeks.front().doneShare, 0);
}

TEST_F(PlanFactsTest, ClosuresAndTheClientsAbsenceAreAway)
{
    DirectionCase client = on("2026-12-02");
    client.closures = {{*base::Date::parse("2026-12-24"), *base::Date::parse("2027-01-02")}};
    client.client.awayUntil = client.today + 10;
    const MissedWeeksCase facts = missedFacts(client);
    ASSERT_EQ(facts.away.size(), 2U);
    EXPECT_TRUE(facts.away[0].isStudioClosed);
    EXPECT_FALSE(facts.away[1].isStudioClosed);
    EXPECT_EQ(facts.away[1].last, client.today + 9) << "the first day back is no day away";
    client.client.awayUntil = client.today;
    EXPECT_EQ(missedFacts(client).away.size(), 1U);
}

TEST_F(PlanFactsTest, TheReviewOfAPlanThatIsOver)
{
    ASSERT_TRUE(m_desk.end(*on("2026-12-09").running, *base::Date::parse("2026-12-09")));
    const PlanOutcomeCase outcome = outcomeFacts(on("2026-12-09"));
    ASSERT_EQ(outcome.lifts.size(), 2U);
    EXPECT_EQ(outcome.lifts[0].name, QStringLiteral("Back squat"));
    EXPECT_EQ(outcome.lifts[0].weeks.front().doneSets, 3);
    EXPECT_EQ(outcome.lifts[0].painDays, 1);
    EXPECT_TRUE(outcome.lifts[0].now);
    EXPECT_TRUE(outcome.lifts[1].isOnHold);
    EXPECT_EQ(outcome.lifts[1].painDays, 0) << "the painful day lies before the plan";
}

}  // namespace chalk::ui::direction
