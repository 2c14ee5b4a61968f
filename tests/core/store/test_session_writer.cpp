#include "core/store/session_writer.h"

#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

using sessions::SessionState;

/// Books in the small studio, in the evening of its day.
class SessionWriterTest : public ::testing::Test {
protected:
    sessions::Session evening()
    {
        sessions::Session session;
        session.client = test::clientNamed(m_studio.database(), "Ada Lund");
        session.coach = base::CoachId(1);
        session.date = test::smallStudioDay();
        session.startMinute = 19 * 60;
        session.place = "Floor";
        return session;
    }
    /// Today's sessions at 19:00.
    std::vector<sessions::Session> evenings()
    {
        std::vector<sessions::Session> found;
        const auto today = SessionReader(m_studio.database()).on(test::smallStudioDay()).value();
        for (const NamedSession& one : today) {
            if (one.session.startMinute == 19 * 60) {
                found.push_back(one.session);
            }
        }
        return found;
    }
    std::string refusalOf(const sessions::Session& session)
    {
        const auto booked = m_writer.book(session);
        return booked ? "booked" : booked.error().message.toStdString();
    }

    test::StudioOnTest m_studio;
    SessionWriter m_writer{m_studio.database(), test::someMoment};
    RecordWriter m_records{m_studio.database(), test::someMoment};
};

TEST_F(SessionWriterTest, BooksASessionAsPlannedWithACodeOfItsOwn)
{
    ASSERT_TRUE(m_writer.book(evening()));
    ASSERT_EQ(evenings().size(), 1U);
    EXPECT_EQ(evenings()[0].state, SessionState::Planned);
    EXPECT_EQ(evenings()[0].code.size(), 8U);
    EXPECT_EQ(evenings()[0].client, evening().client);
}

TEST_F(SessionWriterTest, UndoTakesTheBookingAwayAndRedoBringsItBack)
{
    const auto booked = m_writer.book(evening());
    ASSERT_TRUE(booked);
    const auto undone = m_records.undo(booked->act);
    ASSERT_TRUE(undone);
    EXPECT_TRUE(evenings().empty());
    ASSERT_TRUE(m_records.undo(undone->act));
    EXPECT_EQ(evenings().size(), 1U);
}

TEST_F(SessionWriterTest, ABookingThatWasTakenAwayLeavesItsTimeFree)
{
    ASSERT_TRUE(m_writer.book(evening()));
    EXPECT_NE(refusalOf(evening()), "booked") << "the client is there already";
    ASSERT_TRUE(m_writer.withdraw(evenings()[0].id));
    EXPECT_TRUE(evenings().empty());
    EXPECT_EQ(refusalOf(evening()), "booked");
}

TEST_F(SessionWriterTest, WhatWasRecordedKeepsItsSession)
{
    ASSERT_TRUE(m_writer.book(evening()));
    const base::SessionId session = evenings()[0].id;
    const base::LiftId squat = test::liftOf(m_studio.database(), evening().client, lifts::Pattern::Squat);
    ASSERT_TRUE(m_records.record(evening().client, session, {{squat, {test::smallStudioDay(), test::exposureOf({{50, 8}, {50, 8}})}}}));
    EXPECT_FALSE(m_writer.withdraw(session));
    EXPECT_EQ(evenings()[0].state, SessionState::Recorded);
}

TEST_F(SessionWriterTest, RefusesWhatCannotBe)
{
    sessions::Session session = evening();
    session.startMinute = 24 * 60;
    EXPECT_EQ(refusalOf(session), "start must be a time of the day");
    session = evening();
    session.minutes = 4;
    EXPECT_EQ(refusalOf(session), "minutes must be 5 to 480");
    session = evening();
    session.coach = base::CoachId(77);
    EXPECT_EQ(refusalOf(session), "There is no coach 77");
    session = evening();
    session.client = base::ClientId(77);
    EXPECT_NE(refusalOf(session), "booked");
    EXPECT_TRUE(evenings().empty());
}

TEST_F(SessionWriterTest, LiftsAreKeptInTheirOrderWithWhatIsLeftOut)
{
    ASSERT_TRUE(m_writer.book(evening()));
    const base::SessionId session = evenings()[0].id;
    const base::LiftId squat = test::liftOf(m_studio.database(), evening().client, lifts::Pattern::Squat);
    const base::LiftId hinge = test::liftOf(m_studio.database(), evening().client, lifts::Pattern::Hinge);
    const std::vector<sessions::SessionLift> lifts{{hinge, "no time"}, {squat, {}}};
    ASSERT_TRUE(m_writer.setLifts(session, lifts));
    SessionReader reader(m_studio.database());
    EXPECT_EQ(reader.lifts(session).value(), lifts);
    EXPECT_EQ(reader.plannedLifts(session).value(), std::vector{squat}) << "what is left out is not done";
    EXPECT_FALSE(m_writer.setLifts(session, {{squat, {}}, {squat, {}}}));
    EXPECT_FALSE(m_writer.setLifts(session, {{base::LiftId(777), {}}}));
    EXPECT_EQ(reader.lifts(session).value(), lifts) << "nothing was changed";
}

}  // namespace chalk::store
