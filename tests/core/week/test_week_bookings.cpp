#include "core/week/week_bookings.h"

#include <gtest/gtest.h>

namespace chalk::week {

/// One client with a booking on Tuesday at nine and one more session wanted.
class WeekBookingsTest : public ::testing::Test {
protected:
    WeekBookingsTest()
    {
        m_facts.monday = *base::Date::fromYmd(2026, 11, 23);
        m_facts.nowMinute = -1;
        m_facts.coaches = {{{base::CoachId(1), "Ines"}, {}}, {{base::CoachId(2), "Tobias"}, {}}};
        ClientOfWeek client;
        client.client.id = base::ClientId(7);
        client.client.name = "Ada Lund";
        client.client.coach = base::CoachId(1);
        client.client.sessionsPerWeek = 2;
        client.lifts = {{base::LiftId(1), lifts::Pattern::Squat, lifts::Station::Floor, {}}};
        sessions::Session session;
        session.id = base::SessionId(3);
        session.client = client.client.id;
        session.coach = base::CoachId(1);
        session.date = m_facts.monday + 1;
        session.startMinute = 540;
        session.place = "Rack 1";
        session.code = "7HJ2KM9QRT";
        client.sessions = {{session, {}, 4}};
        m_facts.clients = {client};
        m_week = caseOf(m_facts);
    }

    WeekFacts m_facts;
    WeekCase m_week;
};

TEST_F(WeekBookingsTest, WhatIsBookedLeavesAsItIsOnFile)
{
    const auto bookings = bookingsOf(m_facts, m_week, m_week.booked);
    ASSERT_EQ(bookings.size(), 1U);
    EXPECT_EQ(bookings[0].code, "7HJ2KM9QRT");
    EXPECT_EQ(bookings[0].revision, 4);
    EXPECT_EQ(bookings[0].clientName, "Ada Lund");
    EXPECT_EQ(bookings[0].coachName, "Ines");
    EXPECT_EQ(bookings[0].place, "Rack 1");
    EXPECT_EQ(bookings[0].state, BookingState::Booked);
}

TEST_F(WeekBookingsTest, WhatAPlanWantsIsProposed)
{
    const auto bookings = bookingsOf(m_facts, m_week, {Slot{1, 2 * kDayMinutes + 600}, Slot{0, 4 * kDayMinutes + 540}});
    ASSERT_EQ(bookings.size(), 2U);
    EXPECT_EQ(bookings[0].code, "7HJ2KM9QRT") << "the same booking, elsewhere";
    EXPECT_EQ(bookings[0].date, m_facts.monday + 2);
    EXPECT_EQ(bookings[0].coachName, "Tobias");
    EXPECT_EQ(bookings[0].state, BookingState::Proposed);
    EXPECT_EQ(bookings[1].code, "C7-2");
    EXPECT_EQ(bookings[1].startMinute, 540);
    EXPECT_EQ(bookings[1].state, BookingState::Proposed);
}

TEST_F(WeekBookingsTest, LastWeeksSessionsAreNotOfTheWeek)
{
    m_facts.clients[0].sessions[0].session.date = m_facts.monday - 1;
    m_week = caseOf(m_facts);
    EXPECT_TRUE(bookingsOf(m_facts, m_week, m_week.booked).empty());
}

}  // namespace chalk::week
