#include "core/store/decision_reader.h"

#include "core/store/decision_rows.h"
#include "core/store/decision_writer.h"
#include "core/store/record_writer.h"
#include "tests/support/small_studio.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::store {

using checkin::ChoiceKind;
using checkin::Decision;
using checkin::FindingKind;

using ::testing::ElementsAre;
using ::testing::IsEmpty;

class DecisionReaderTest : public ::testing::Test {
protected:
    base::ActId decide(const char* client, int daysAgo, ChoiceKind choice)
    {
        const base::Date day = test::smallStudioDay() - daysAgo;
        return m_writer.decide({{}, idOf(client), {}, day, FindingKind::Attendance, choice, client, day + 7}, {}).value().act;
    }
    base::ClientId idOf(const char* client) { return test::clientNamed(m_studio.database(), client); }
    static std::vector<ChoiceKind> choicesOf(const std::vector<Decision>& decisions)
    {
        std::vector<ChoiceKind> choices;
        for (const Decision& decision : decisions) {
            choices.push_back(decision.choice);
        }
        return choices;
    }

    test::StudioOnTest m_studio;
    DecisionWriter m_writer{m_studio.database(), test::someMoment};
    DecisionReader m_reader{m_studio.database()};
};

TEST_F(DecisionReaderTest, AHistoryBeginsWithTheLatest)
{
    EXPECT_THAT(m_reader.history(idOf("Ada Lund")).value(), IsEmpty());
    decide("Ada Lund", 7, ChoiceKind::Hold);
    decide("Ada Lund", 14, ChoiceKind::Swap);
    decide("Bo Arden", 1, ChoiceKind::Direction);
    decide("Ada Lund", 7, ChoiceKind::MoveOn);
    const auto history = m_reader.history(idOf("Ada Lund")).value();
    EXPECT_THAT(choicesOf(history), ElementsAre(ChoiceKind::MoveOn, ChoiceKind::Hold, ChoiceKind::Swap));
    EXPECT_EQ(history[2].day, test::smallStudioDay() - 14);
    EXPECT_EQ(history[2].nextReview, test::smallStudioDay() - 7);
    EXPECT_EQ(history[2].about, FindingKind::Attendance);
    EXPECT_EQ(history[2].note, "Ada Lund");
}

TEST_F(DecisionReaderTest, AWeekHasTheDecisionsOfBothItsEnds)
{
    const base::Date day = test::smallStudioDay();
    decide("Ada Lund", 8, ChoiceKind::Hold);
    decide("Bo Arden", 7, ChoiceKind::Direction);
    decide("Ada Lund", 1, ChoiceKind::Swap);
    decide("Ada Lund", 0, ChoiceKind::MoveOn);
    EXPECT_THAT(choicesOf(m_reader.decisionsIn({day - 7, day - 1}).value()), ElementsAre(ChoiceKind::Direction, ChoiceKind::Swap));
}

TEST_F(DecisionReaderTest, TheLatestOfEachClientSaysTheNextReview)
{
    const base::Date day = test::smallStudioDay();
    decide("Ada Lund", 8, ChoiceKind::Hold);
    const base::ActId last = decide("Ada Lund", 2, ChoiceKind::Swap);
    decide("Bo Arden", 9, ChoiceKind::Direction);
    auto latest = m_reader.latest(day).value();
    ASSERT_EQ(latest.size(), 2U);
    EXPECT_EQ(latest.at(idOf("Ada Lund")).nextReview, day + 5);
    EXPECT_EQ(latest.at(idOf("Bo Arden")).nextReview, day - 2);
    EXPECT_EQ(m_reader.latest(day - 3)->at(idOf("Ada Lund")).choice, ChoiceKind::Hold) << "as it was then";
    ASSERT_TRUE(RecordWriter(m_studio.database(), test::someMoment).undo(last));
    EXPECT_EQ(m_reader.latest(day)->at(idOf("Ada Lund")).choice, ChoiceKind::Hold);
}

TEST_F(DecisionReaderTest, ADecisionThatCameBackKeepsItsPlace)
{
    const base::ActId first = decide("Ada Lund", 2, ChoiceKind::Hold);
    decide("Ada Lund", 2, ChoiceKind::Swap);
    RecordWriter records(m_studio.database(), test::someMoment);
    ASSERT_TRUE(records.undo(records.undo(first).value().act));
    const auto history = m_reader.history(idOf("Ada Lund")).value();
    EXPECT_THAT(choicesOf(history), ElementsAre(ChoiceKind::Swap, ChoiceKind::Hold));
    EXPECT_EQ(history[1].act, first);
}

TEST_F(DecisionReaderTest, AWordThatNobodyKnowsIsDamage)
{
    m_studio.rows(QStringLiteral("INSERT INTO decision (act_id, is_void, client_id, day, about, choice, note, next_review_day) "
                                 "VALUES (1, 0, 1, 20000, 'luck', 'hold', '', 20007)"));
    const auto read = m_reader.history(base::ClientId(1));
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, StoreError::Kind::Damaged);
}

}  // namespace chalk::store
