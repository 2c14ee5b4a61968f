#include "core/store/act_reader.h"

#include "core/store/history_reader.h"
#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::store {

using ::testing::ElementsAre;

class ActReaderTest : public ::testing::Test {
protected:
    base::ActId record(int reps)
    {
        return m_writer.record(m_ada, {}, {{m_squat, {test::smallStudioDay(), test::exposureOf({{45, reps, 2}, {45, reps, 2}})}}}).value().act;
    }
    base::ActId undoable() { return idOf(ActReader(m_studio.database()).undoable().value()); }
    base::ActId redoable() { return idOf(ActReader(m_studio.database()).redoable().value()); }
    base::ActId undo() { return m_writer.undo(undoable()).value().act; }
    base::ActId redo() { return m_writer.undo(redoable()).value().act; }
    std::size_t entries() { return HistoryReader(m_studio.database()).read(m_squat).value().size(); }

    test::StudioOnTest m_studio;
    RecordWriter m_writer{m_studio.database(), test::someMoment, base::CoachId(1)};
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    base::LiftId m_squat = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat);

private:
    static base::ActId idOf(const std::optional<ActRecord>& act) { return act ? act->id : base::ActId(); }
};

TEST_F(ActReaderTest, TellsWhoDidWhatToWhom)
{
    const auto session = SessionReader(m_studio.database()).on(test::smallStudioDay()).value().front().session.id;
    const base::LiftId press = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::HorizontalPush);
    const auto outcome = m_writer.record(m_ada, session,
                                         {{press, {test::smallStudioDay(), test::exposureOf({{8, 8, 4}})}},
                                          {m_squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}, {45, 8, 2}})}}});
    ASSERT_TRUE(outcome);
    const auto acts = ActReader(m_studio.database()).latest(10).value();
    ASSERT_EQ(acts.size(), 2U);
    EXPECT_EQ(acts[0].id, outcome->act);
    EXPECT_EQ(acts[0].kind, ActKind::Record) << "exposures are just recorded";
    EXPECT_EQ(acts[0].atUtc, test::someMoment().toStdString());
    EXPECT_EQ(acts[0].clientName, "Ada Lund");
    EXPECT_EQ(acts[0].coachName, "Ines");
    EXPECT_THAT(acts[0].patterns, ElementsAre(lifts::Pattern::Squat, lifts::Pattern::HorizontalPush));
    EXPECT_EQ(acts[0].sessions, 1);
    EXPECT_EQ(acts[0].sessionState, sessions::SessionState::Recorded);
    EXPECT_EQ(acts[1].kind, ActKind::Import);
    EXPECT_TRUE(acts[1].coachName.empty());
    EXPECT_EQ(ActReader(m_studio.database()).latest(1).value().size(), 1U);
}

TEST_F(ActReaderTest, WhatTheCoachDoesHasItsName)
{
    progression::CoachSet set;
    set.reason = "because";
    ASSERT_TRUE(m_writer.record(m_ada, {}, {{m_squat, {test::smallStudioDay(), set}}}));
    ASSERT_TRUE(m_writer.record(m_ada, {}, {{m_squat, {test::smallStudioDay(), progression::Release{"fine"}}}}));
    const auto acts = ActReader(m_studio.database()).latest(2).value();
    EXPECT_EQ(acts[0].kind, ActKind::Release);
    EXPECT_EQ(acts[1].kind, ActKind::Set);
}

TEST_F(ActReaderTest, NothingIsThereToTakeBackAtFirst)
{
    EXPECT_TRUE(undoable().isNone()) << "an import is not taken back";
    EXPECT_TRUE(redoable().isNone());
}

TEST_F(ActReaderTest, UndoGoesBackActByActAndRedoForthAgain)
{
    const auto before = entries();
    const base::ActId first = record(8);
    const base::ActId second = record(9);
    EXPECT_EQ(undoable(), second);
    undo();
    EXPECT_EQ(undoable(), first);
    undo();
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(undoable().isNone());
    redo();
    EXPECT_EQ(entries(), before + 1);
    redo();
    EXPECT_EQ(entries(), before + 2);
    EXPECT_TRUE(redoable().isNone());
    undo();
    undo();
    EXPECT_EQ(entries(), before) << "what was brought back can be taken back again";
    redo();
    EXPECT_EQ(entries(), before + 1);
    record(7);
    EXPECT_TRUE(redoable().isNone()) << "something new was done since";
    EXPECT_TRUE(ActReader(m_studio.database()).latest(99).value().back().kind == ActKind::Import);
}

TEST(ActKinds, KeysReadBack)
{
    for (int i = 0; i <= static_cast<int>(ActKind::Merge); ++i) {
        EXPECT_EQ(actKindOf(keyOf(static_cast<ActKind>(i))), static_cast<ActKind>(i));
    }
    EXPECT_FALSE(actKindOf("exposure"));
}

}  // namespace chalk::store
