#include "core/store/decision_writer.h"

#include "core/store/act_reader.h"
#include "core/store/decision_reader.h"
#include "core/store/history_reader.h"
#include "core/store/lift_cache.h"
#include "core/store/record_writer.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::store {

using checkin::ChoiceKind;
using checkin::FindingKind;
using progression::EventBody;
using progression::LighterWeek;

using ::testing::ElementsAre;
using ::testing::IsEmpty;

class DecisionWriterTest : public ::testing::Test {
protected:
    checkin::Decision decisionOf(ChoiceKind choice) const
    {
        return {{}, m_ada, m_squat, test::smallStudioDay(), FindingKind::Plateau, choice, "Rested enough?", test::smallStudioDay() + 7};
    }
    std::vector<checkin::Decision> history() { return DecisionReader(m_studio.database()).history(m_ada).value(); }
    progression::Prescription due(int days = 0)
    {
        EventLog log(m_studio.database());
        return LiftCache(m_studio.database(), log).read(m_squat)->machine.prescriptionOn(test::smallStudioDay() + days);
    }
    std::size_t entries() { return HistoryReader(m_studio.database()).read(m_squat).value().size(); }
    std::string refusalOf(const checkin::Decision& decision, const std::optional<EventBody>& event)
    {
        const auto refused = m_writer.decide(decision, event);
        EXPECT_FALSE(refused);
        EXPECT_TRUE(refused || refused.error().kind == StoreError::Kind::Refused);
        return refused ? std::string() : refused.error().message.toStdString();
    }

    test::StudioOnTest m_studio;
    DecisionWriter m_writer{m_studio.database(), test::someMoment, base::CoachId(1)};
    RecordWriter m_records{m_studio.database(), test::someMoment, base::CoachId(1)};
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    base::LiftId m_squat = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat);
};

TEST_F(DecisionWriterTest, WritesTheDecisionAndItsEventAsOneAct)
{
    const progression::Prescription usual = due();
    const std::size_t before = entries();
    const auto outcome = m_writer.decide(decisionOf(ChoiceKind::LighterWeek), LighterWeek{"Rested enough?"});
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    ASSERT_EQ(outcome->lifts.size(), 1U);
    EXPECT_EQ(test::namesOf(outcome->lifts[0].rules), "D-1");
    EXPECT_EQ(outcome->lifts[0].before, usual);
    EXPECT_TRUE(outcome->lifts[0].after.isLighter());
    EXPECT_EQ(due(), outcome->lifts[0].after);
    EXPECT_EQ(due(6).lighterUntil, test::smallStudioDay() + 6);
    EXPECT_FALSE(due(7).isLighter());
    EXPECT_EQ(entries(), before + 1);
    checkin::Decision written = decisionOf(ChoiceKind::LighterWeek);
    written.act = outcome->act;
    EXPECT_THAT(history(), ElementsAre(written));
    const ActRecord act = ActReader(m_studio.database()).latest(1).value().front();
    EXPECT_EQ(act.kind, ActKind::Decide);
    EXPECT_EQ(act.client, m_ada);
    EXPECT_EQ(act.coachName, "Ines");
    EXPECT_THAT(act.patterns, ElementsAre(lifts::Pattern::Squat));
}

TEST_F(DecisionWriterTest, UndoTakesBothBackAndRedoBringsBothBack)
{
    const progression::Prescription usual = due();
    const base::ActId act = m_writer.decide(decisionOf(ChoiceKind::LighterWeek), LighterWeek{}).value().act;
    const progression::Prescription lighter = due();
    const auto written = history();
    const base::ActId undo = m_records.undo(act).value().act;
    EXPECT_EQ(due(), usual);
    EXPECT_THAT(history(), IsEmpty());
    const base::ActId redo = m_records.undo(undo).value().act;
    EXPECT_EQ(due(), lighter);
    EXPECT_EQ(history(), written) << "with the act that first wrote it";
    ASSERT_TRUE(m_records.undo(redo));
    EXPECT_EQ(due(), usual);
    EXPECT_THAT(history(), IsEmpty());
}

TEST_F(DecisionWriterTest, ADecisionNeedsNoEventAndNoLift)
{
    const std::size_t before = entries();
    checkin::Decision talk = decisionOf(ChoiceKind::Direction);
    talk.about = FindingKind::Direction;
    talk.lift.reset();
    const auto outcome = m_writer.decide(talk, {});
    ASSERT_TRUE(outcome);
    EXPECT_TRUE(outcome->lifts.empty());
    ASSERT_TRUE(m_writer.decide(decisionOf(ChoiceKind::Hold), {}));
    EXPECT_EQ(entries(), before);
    ASSERT_EQ(history().size(), 2U);
    EXPECT_EQ(history()[0].choice, ChoiceKind::Hold);
    EXPECT_EQ(history()[1].lift, std::nullopt);
    const ActRecord act = ActReader(m_studio.database()).latest(1).value().front();
    EXPECT_THAT(act.patterns, ElementsAre(lifts::Pattern::Squat)) << "it is about the squat, though nothing was written to its log";
    ASSERT_TRUE(m_records.undo(outcome->act));
    EXPECT_EQ(history().size(), 1U);
}

TEST_F(DecisionWriterTest, WhatCannotBeIsRefusedWhole)
{
    const base::ClientId bo = test::clientNamed(m_studio.database(), "Bo Arden");
    checkin::Decision decision = decisionOf(ChoiceKind::LighterWeek);
    decision.client = bo;
    EXPECT_NE(refusalOf(decision, LighterWeek{}).find("is not one of client"), std::string::npos);

    decision = decisionOf(ChoiceKind::Hold);
    decision.nextReview = decision.day;
    EXPECT_NE(refusalOf(decision, {}).find("next review"), std::string::npos);
    decision.nextReview = decision.day + 1;
    decision.lift.reset();
    EXPECT_NE(refusalOf(decision, LighterWeek{}).find("has to name it"), std::string::npos);

    decision = decisionOf(ChoiceKind::ByHand);
    progression::CoachSet set;
    set.load = test::kilos(61);
    set.reason = "because";
    EXPECT_NE(refusalOf(decision, set).find("load"), std::string::npos) << "the equipment cannot give it";
    EXPECT_THAT(history(), IsEmpty());
    EXPECT_EQ(ActReader(m_studio.database()).latest(9).value().size(), 1U) << "only the import";
}

TEST_F(DecisionWriterTest, ALighterWeekNeedsALoadThatIsNotOnHold)
{
    for (const auto pattern : {lifts::Pattern::HorizontalPush, lifts::Pattern::Hinge}) {
        checkin::Decision decision = decisionOf(ChoiceKind::LighterWeek);
        decision.lift = test::liftOf(m_studio.database(), m_ada, pattern);
        if (pattern == lifts::Pattern::HorizontalPush) {  // back to Control
            progression::CoachSet set;
            set.stage = progression::Stage::Control;
            set.reason = "because";
            ASSERT_TRUE(m_records.record(m_ada, {}, {{*decision.lift, {test::smallStudioDay(), set}}}));
        }
        EXPECT_NE(refusalOf(decision, LighterWeek{}).find("carries no load"), std::string::npos) << lifts::keyOf(pattern);
    }
    EXPECT_THAT(history(), IsEmpty());
}

TEST_F(DecisionWriterTest, TheLogOfDecisionsIsNeverChanged)
{
    ASSERT_TRUE(m_writer.decide(decisionOf(ChoiceKind::Hold), {}));
    for (const char* sql : {"UPDATE decision SET note = 'x'", "DELETE FROM decision"}) {
        EXPECT_ANY_THROW(m_studio.rows(QLatin1String(sql))) << sql;
    }
    EXPECT_EQ(history().size(), 1U);
}

}  // namespace chalk::store
