#include "core/store/session_writer.h"

#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <algorithm>

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

TEST_F(SessionWriterTest, ABookingMovesAndUndoBringsItBack)
{
    ASSERT_TRUE(m_writer.book(evening()));
    const sessions::Session before = evenings()[0];
    const week::BookingPlace later{before.coach, before.date + 1, 18 * 60, 45, "Rack 1", 2, true};
    const auto moved = m_writer.move(before.id, later);
    ASSERT_TRUE(moved) << moved.error().message.toStdString();
    const auto tomorrow = SessionReader(m_studio.database()).on(before.date + 1).value();
    const auto at = std::find_if(tomorrow.begin(), tomorrow.end(), [&](const NamedSession& one) { return one.session.id == before.id; });
    ASSERT_NE(at, tomorrow.end());
    EXPECT_EQ(at->session.minutes, 45);
    EXPECT_TRUE(at->session.isLocked);
    EXPECT_EQ(at->session.code, before.code) << "a card that was printed still finds it";
    const auto undone = m_records.undo(moved->act);
    ASSERT_TRUE(undone);
    ASSERT_EQ(evenings().size(), 1U);
    EXPECT_EQ(evenings()[0], before);
    ASSERT_TRUE(m_records.undo(undone->act));
    EXPECT_TRUE(evenings().empty());
}

TEST_F(SessionWriterTest, ABookingThatWasMovedAgainIsNotPutBackByAnEarlierUndo)
{
    ASSERT_TRUE(m_writer.book(evening()));
    const sessions::Session before = evenings()[0];
    week::BookingPlace place{before.coach, before.date + 1, 18 * 60, 60, "Floor", 1, false};
    const auto first = m_writer.move(before.id, place);
    ASSERT_TRUE(first);
    place.startMinute = 17 * 60;
    ASSERT_TRUE(m_writer.move(before.id, place));
    EXPECT_FALSE(m_records.undo(first->act));
}

TEST_F(SessionWriterTest, BookingsThatChangePlacesDoNotStandInEachOthersWay)
{
    sessions::Session other = evening();
    other.startMinute = 20 * 60;
    ASSERT_TRUE(m_writer.book(evening()));
    ASSERT_TRUE(m_writer.book(other));
    const auto today = SessionReader(m_studio.database()).on(evening().date).value();
    std::vector<sessions::Session> two;
    for (const NamedSession& one : today) {
        if (one.session.startMinute >= 19 * 60 && one.session.client == evening().client) {
            two.push_back(one.session);
        }
    }
    ASSERT_EQ(two.size(), 2U);
    const auto placeAt = [](const sessions::Session& session, int start) {
        return week::BookingPlace{session.coach, session.date, start, session.minutes, session.place, session.placeCapacity, false};
    };
    EXPECT_FALSE(m_writer.move(two[0].id, placeAt(two[0], 20 * 60))) << "the client is there already";
    const auto swapped = m_writer.apply({{}, {{two[0].id, placeAt(two[0], 20 * 60)}, {two[1].id, placeAt(two[1], 19 * 60)}}, {}});
    EXPECT_TRUE(swapped) << swapped.error().message.toStdString();
}

TEST_F(SessionWriterTest, OneActBooksMovesAndTakesAwayOrDoesNothing)
{
    ASSERT_TRUE(m_writer.book(evening()));
    const base::SessionId first = evenings()[0].id;
    sessions::Session next = evening();
    next.date = next.date + 1;
    sessions::Session wrong = evening();
    wrong.minutes = 2;
    EXPECT_FALSE(m_writer.apply({{next, wrong}, {}, {first}}));
    EXPECT_EQ(evenings().size(), 1U);
    const auto done = m_writer.apply({{next}, {}, {first}});
    ASSERT_TRUE(done);
    EXPECT_TRUE(evenings().empty());
    ASSERT_TRUE(m_records.undo(done->act));
    EXPECT_EQ(evenings().size(), 1U);
    EXPECT_FALSE(m_writer.apply({}));
}

}  // namespace chalk::store
