#include "core/store/direction_standings.h"

#include "core/checkin/attention.h"
#include "core/exchange/catalogue_json.h"
#include "core/store/check_in_reader.h"
#include "core/store/decision_writer.h"
#include "core/store/plan_writer.h"
#include "core/store/record_writer.h"
#include "core/store/roster_facts.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::store {

namespace {

bool isTalkDue(const std::vector<checkin::AttentionReason>& reasons)
{
    return std::any_of(reasons.begin(), reasons.end(),
                       [](const checkin::AttentionReason& one) { return std::holds_alternative<checkin::DirectionDue>(one); });
}

}  // namespace

class DirectionStandingsTest : public ::testing::Test {
protected:
    /// Eight weeks from the next Monday on.
    ActOutcome beginPlan()
    {
        direction::ClientPlan plan;
        plan.client = m_ada;
        plan.begunOn = m_day;
        plan.plan = direction::planFor({direction::Direction::Strength, direction::Wave::Linear, 8, 2, true, m_day + 6,
                                        {{test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat), direction::LiftRole::Main, 2}}});
        plan.singles = {{test::kilos(60), false}};
        return PlanWriter(m_studio.database(), test::someMoment).begin(plan).value();
    }
    base::ActId decide(base::Date day)
    {
        checkin::Decision talk;
        talk.client = m_ada;
        talk.day = day;
        talk.about = checkin::FindingKind::Direction;
        talk.choice = checkin::ChoiceKind::Direction;
        talk.nextReview = day + checkin::kDirectionRestDays;
        return DecisionWriter(m_studio.database(), test::someMoment).decide(talk, std::nullopt).value().act;
    }
    checkin::DirectionStanding standing(base::Date day)
    {
        const auto alone = directionStanding(m_studio.database(), m_ada, day);
        const auto all = directionStandings(m_studio.database(), day);
        const auto found = all.find(m_ada);
        EXPECT_EQ(found == all.end() ? checkin::DirectionStanding{} : found->second, alone) << day.toString();
        return alone;
    }

    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    test::StudioOnTest m_studio;
    base::Date m_day = test::smallStudioDay();
    base::Date m_end = test::smallStudioDay() + 6 + 8 * 7 - 1;
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
};

TEST_F(DirectionStandingsTest, KnowsThePlanAndTheDecisionUpToTheDay)
{
    EXPECT_EQ(standing(m_day), checkin::DirectionStanding{});
    decide(m_day - 30);
    beginPlan();
    EXPECT_EQ(standing(m_day - 1), (checkin::DirectionStanding{std::nullopt, m_day - 30}));
    EXPECT_EQ(standing(m_day), (checkin::DirectionStanding{m_end, m_day - 30}));
    decide(m_end + 2);
    EXPECT_EQ(standing(m_end + 1), (checkin::DirectionStanding{m_end, m_day - 30}));
    EXPECT_EQ(standing(m_end + 2), (checkin::DirectionStanding{m_end, m_end + 2}));
}

TEST_F(DirectionStandingsTest, WhatWasTakenBackDoesNotCount)
{
    const base::ActId plan = beginPlan().act;
    const base::ActId talk = decide(m_day);
    RecordWriter records(m_studio.database(), test::someMoment);
    ASSERT_TRUE(records.undo(talk));
    ASSERT_TRUE(records.undo(plan));
    EXPECT_EQ(standing(m_day), checkin::DirectionStanding{});
}

TEST_F(DirectionStandingsTest, APlanThatIsOverIsToBeReviewedInTheQueueAndInTheRoster)
{
    beginPlan();
    const auto isDueOn = [this](base::Date day) {
        bool isDue = false;
        const auto roster = RosterReader(m_studio.database()).read(day).value();
        for (const RosterEntry& entry : roster) {
            isDue = isDue || (entry.client.id == m_ada && isTalkDue(checkin::attentionFor(factsOf(entry), day)));
        }
        const auto page = CheckInReader(m_studio.database(), m_catalogue).page(m_ada, day).value();
        // Her hinge is on hold, which comes first as a finding; what the page is made from is the same as the roster's.
        const auto file = ClientReader(m_studio.database()).read(m_ada, day).value();
        const auto facts = factsOf(file, SessionReader(m_studio.database()).of(m_ada).value(), day);
        EXPECT_EQ(isTalkDue(checkin::attentionFor(facts, day)), isDue) << day.toString();
        EXPECT_EQ(page.finding.kind, checkin::FindingKind::Pain);
        return isDue;
    };
    EXPECT_FALSE(isDueOn(m_end));
    EXPECT_TRUE(isDueOn(m_end + 1));
    decide(m_end + 1);
    EXPECT_FALSE(isDueOn(m_end + 1));
    EXPECT_TRUE(isDueOn(m_end + 400)) << "by the rule of 180 days";
}

}  // namespace chalk::store
