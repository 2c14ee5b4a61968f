#include "core/week/week_copy.h"

#include <gtest/gtest.h>

namespace chalk::week {

/// One coach who is there all week; two clients one-to-one, who trained last week on Tuesday at nine and at ten.
class WeekCopyTest : public ::testing::Test {
protected:
    WeekCopyTest()
    {
        m_facts.monday = *base::Date::fromYmd(2026, 11, 30);
        m_facts.nowMinute = -kDayMinutes;
        m_facts.coaches = {{{base::CoachId(1), "Ines"}, {}}};
        for (int i = 0; i < 2; ++i) {
            ClientOfWeek client;
            client.client.id = base::ClientId(i + 1);
            client.client.coach = base::CoachId(1);
            client.client.sessionsPerWeek = 1;
            client.lifts = {{base::LiftId(i + 1), lifts::Pattern::Squat, lifts::Station::Rack, {}}};
            m_facts.clients.push_back(client);
            book(static_cast<std::size_t>(i), -6, (9 + i) * 60);
        }
    }

    void book(std::size_t client, int day, int minute)
    {
        sessions::Session session;
        session.id = base::SessionId(++m_lastId);
        session.client = m_facts.clients[client].client.id;
        session.coach = base::CoachId(1);
        session.date = m_facts.monday + day;
        session.startMinute = minute;
        m_facts.clients[client].sessions.push_back({session, {}});
    }
    WeekPlan copied() const { return copyOfLastWeek(m_facts, caseOf(m_facts)); }

    WeekFacts m_facts;
    std::int64_t m_lastId = 0;
};

TEST_F(WeekCopyTest, EverybodyComesWhenTheyCameLastWeek)
{
    EXPECT_EQ(copied(), (WeekPlan{Slot{0, kDayMinutes + 9 * 60}, Slot{0, kDayMinutes + 10 * 60}}));
}

TEST_F(WeekCopyTest, WhatIsBookedStaysAndItsDayIsTaken)
{
    book(0, 1, 11 * 60);
    m_facts.clients[0].client.sessionsPerWeek = 2;
    const WeekPlan plan = copied();
    ASSERT_EQ(plan.size(), 3U);
    EXPECT_EQ(plan[0], (Slot{0, kDayMinutes + 11 * 60}));
    EXPECT_FALSE(plan[1]) << "Tuesday has a session already";
}

TEST_F(WeekCopyTest, ATimeThatBreaksARuleIsLeftOut)
{
    m_facts.closures = {{m_facts.monday + 1, m_facts.monday + 1, 0, 10 * 60, {}, {}, 0, {}}};
    EXPECT_EQ(copied(), (WeekPlan{std::nullopt, Slot{0, kDayMinutes + 10 * 60}}));
}

}  // namespace chalk::week
