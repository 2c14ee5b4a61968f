#include "core/week/week_case.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::week {

namespace {

constexpr int kNine = 9 * 60;

}  // namespace

/// Two coaches; one client with two lifts and standing slots on Tuesday and Thursday at nine, in the week of 23 November 2026.
class WeekCaseTest : public ::testing::Test {
protected:
    WeekCaseTest()
    {
        m_facts.monday = *base::Date::fromYmd(2026, 11, 23);
        m_facts.nowMinute = -kDayMinutes;
        m_facts.coaches = {{{base::CoachId(1), "Ines"}, {}}, {{base::CoachId(2), "Tobias"}, {}}};
        ClientOfWeek client;
        client.client.id = base::ClientId(7);
        client.client.name = "Ada Lund";
        client.client.coach = base::CoachId(1);
        client.client.sessionsPerWeek = 2;
        client.planning.standing = {{1, kNine, base::CoachId(1)}, {3, kNine, base::CoachId(1)}};
        client.lifts = {{base::LiftId(1), lifts::Pattern::Squat, lifts::Station::Rack, {}}, {base::LiftId(2), lifts::Pattern::HorizontalPush, lifts::Station::Floor, {}}};
        m_facts.clients = {client};
    }

    ClientOfWeek& client() { return m_facts.clients.front(); }
    void book(int day, sessions::SessionState state, int minute = kNine)
    {
        sessions::Session session;
        session.id = base::SessionId(static_cast<std::int64_t>(client().sessions.size()) + 1);
        session.client = client().client.id;
        session.coach = base::CoachId(1);
        session.date = m_facts.monday + day;
        session.startMinute = minute;
        session.state = state;
        client().sessions.push_back({session, {}});
    }
    static bool covers(const std::vector<DaySpan>& spans, int day, int minute)
    {
        return std::any_of(spans.begin(), spans.end(), [=](const DaySpan& span) { return span.day == day && span.from <= minute && minute < span.to; });
    }

    WeekFacts m_facts;
};

TEST_F(WeekCaseTest, WhoHasNoBookingIsWantedOnTheStandingSlots)
{
    const WeekCase week = caseOf(m_facts);
    ASSERT_EQ(week.problem.sessions.size(), 2U);
    EXPECT_EQ(week.problem.sessions[0].standing, (Slot{0, kDayMinutes + kNine}));
    EXPECT_EQ(week.problem.sessions[1].standing, (Slot{0, 3 * kDayMinutes + kNine}));
    EXPECT_EQ(week.booked, (WeekPlan{{}, {}}));
    EXPECT_EQ(week.origins[1].number, 2);
    EXPECT_TRUE(week.origins[1].booked.isNone());
}

TEST_F(WeekCaseTest, TheWeeksOwnNumberTakesThePlaceOfTheUsualOne)
{
    for (const int quota : {0, 1, 3}) {
        client().quota = quota;
        EXPECT_EQ(caseOf(m_facts).problem.sessions.size(), static_cast<std::size_t>(quota));
    }
    book(1, sessions::SessionState::Planned);
    client().quota = 0;
    EXPECT_EQ(caseOf(m_facts).problem.sessions.size(), 1U) << "a booking stays";
}

TEST_F(WeekCaseTest, ABookingStandsWhereItIsAndOnlyTheOthersAreMissing)
{
    book(1, sessions::SessionState::Planned, 10 * 60);
    client().sessions.front().session.isLocked = true;
    const WeekCase week = caseOf(m_facts);
    ASSERT_EQ(week.problem.sessions.size(), 2U);
    EXPECT_EQ(week.booked[0], (Slot{0, kDayMinutes + 10 * 60}));
    EXPECT_EQ(week.problem.sessions[0].standing, week.booked[0]);
    EXPECT_TRUE(week.problem.sessions[0].isLocked);
    EXPECT_EQ(week.problem.sessions[1].standing, (Slot{0, 3 * kDayMinutes + kNine})) << "Tuesday has its session";
}

TEST_F(WeekCaseTest, WhatWasCancelledInTimeIsPlannedAnewAndWhatWasMissedIsNot)
{
    book(1, sessions::SessionState::CancelledInTime);
    EXPECT_EQ(caseOf(m_facts).problem.sessions.size(), 2U);
    book(3, sessions::SessionState::Missed);
    EXPECT_EQ(caseOf(m_facts).problem.sessions.size(), 1U);
    book(4, sessions::SessionState::CancelledLate);
    EXPECT_TRUE(caseOf(m_facts).problem.sessions.empty());
}

TEST_F(WeekCaseTest, NothingIsPlacedBeforeNowAndWhatIsPastCountsForRecovery)
{
    book(1, sessions::SessionState::Recorded);
    m_facts.nowMinute = 2 * kDayMinutes + 10 * 60;
    const WeekCase week = caseOf(m_facts);
    ASSERT_EQ(week.problem.sessions.size(), 1U);
    ASSERT_EQ(week.problem.clients[0].lastWeek.size(), 1U);
    EXPECT_EQ(week.problem.clients[0].lastWeek[0].start, kDayMinutes + kNine);
    EXPECT_EQ(week.problem.clients[0].lastWeek[0].patterns, (std::vector<std::string>{"squat", "horizontal_push"}));
    EXPECT_FALSE(covers(week.problem.open, 2, 10 * 60 - 1));
    EXPECT_TRUE(covers(week.problem.open, 2, 10 * 60));
}

TEST_F(WeekCaseTest, LastWeeksSessionsLieBeforeTheWeek)
{
    book(-2, sessions::SessionState::Recorded);
    const WeekCase week = caseOf(m_facts);
    ASSERT_EQ(week.problem.clients[0].lastWeek.size(), 1U);
    EXPECT_EQ(week.problem.clients[0].lastWeek[0].start, -2 * kDayMinutes + kNine);
    EXPECT_EQ(week.problem.sessions.size(), 2U);
}

TEST_F(WeekCaseTest, ClosuresAreTakenOutOfWhatTheyClose)
{
    const base::Date wednesday = m_facts.monday + 2;
    m_facts.closures = {{wednesday, wednesday, 12 * 60, kDayMinutes, {}, {}, 0, "Harbour lights"},
                        {wednesday - 9, wednesday, 0, 600, base::CoachId(2), {}, 0, {}},
                        {wednesday, wednesday + 30, 0, kDayMinutes, {}, lifts::Station::Rack, 1, {}}};
    const WeekCase week = caseOf(m_facts);
    EXPECT_TRUE(covers(week.problem.open, 2, 12 * 60 - 1));
    EXPECT_FALSE(covers(week.problem.open, 2, 12 * 60));
    EXPECT_EQ(week.problem.coaches[1].absences, (std::vector<DaySpan>{{0, 0, 600}, {1, 0, 600}, {2, 0, 600}}));
    EXPECT_TRUE(week.problem.coaches[0].absences.empty());
    const auto rack = std::find_if(week.problem.stations.begin(), week.problem.stations.end(), [](const Station& one) { return one.id == "rack"; });
    ASSERT_NE(rack, week.problem.stations.end());
    EXPECT_EQ(rack->closures.size(), 5U) << "Wednesday to Sunday";
}

TEST_F(WeekCaseTest, EachLiftTakesItsStationForItsPartOfTheSession)
{
    const WeekCase week = caseOf(m_facts);
    const SessionWish& wish = week.problem.sessions.front();
    ASSERT_EQ(wish.needs.size(), 1U) << "the floor is there for everybody";
    EXPECT_EQ(week.problem.stations[wish.needs[0].station].id, "rack");
    EXPECT_EQ(wish.needs[0].share, 50);
    EXPECT_EQ(wish.needs[0].to, 60);
}

TEST_F(WeekCaseTest, ThePlansContentsSayWhatEachSessionTrains)
{
    client().contents = {{lifts::Pattern::Squat}, {lifts::Pattern::HorizontalPush}};
    const WeekCase week = caseOf(m_facts);
    EXPECT_EQ(week.problem.sessions[0].patterns, (std::vector<std::string>{"squat"}));
    EXPECT_EQ(week.problem.sessions[1].patterns, (std::vector<std::string>{"horizontal_push"}));
}

TEST_F(WeekCaseTest, WhoWaitsForClearanceOrIsAwayIsNotProposedAndSaid)
{
    client().isBlocked = true;
    EXPECT_EQ(caseOf(m_facts).notProposed, (std::vector<NoProposal>{{base::ClientId(7), NoProposalReason::AwaitsClearance, 2}}));
    client().isBlocked = false;
    client().client.awayUntil = m_facts.monday + 7;
    EXPECT_EQ(caseOf(m_facts).notProposed, (std::vector<NoProposal>{{base::ClientId(7), NoProposalReason::AwayAllWeek, 2}}));
    client().client.awayUntil = m_facts.monday + 3;
    const WeekCase week = caseOf(m_facts);
    EXPECT_TRUE(week.notProposed.empty());
    EXPECT_FALSE(covers(week.problem.clients[0].available, 2, 600));
    EXPECT_TRUE(covers(week.problem.clients[0].available, 3, 600));
}

TEST_F(WeekCaseTest, WhoHasNoLiftYetIsScreenedFirst)
{
    client().lifts.clear();
    const WeekCase week = caseOf(m_facts);
    ASSERT_EQ(week.origins.size(), 1U);
    EXPECT_EQ(week.origins[0].kind, sessions::SessionKind::MovementScreen);
}

TEST_F(WeekCaseTest, OtherCoachesComeAtTheirCost)
{
    client().planning.otherCoaches = {{base::CoachId(2), 15}};
    EXPECT_EQ(caseOf(m_facts).problem.clients[0].coaches, (std::vector<AcceptedCoach>{{0, 0}, {1, 15}}));
}

TEST_F(WeekCaseTest, AWeekAcrossTheYearsEndIsAWeekLikeAnyOther)
{
    m_facts.monday = *base::Date::mondayOf({2026, 53});
    book(4, sessions::SessionState::Planned);
    const WeekCase week = caseOf(m_facts);
    EXPECT_EQ(week.problem.name, "2026-W53");
    const BookingPlace place = placeOf(m_facts, week, 0, *week.booked[0]);
    EXPECT_EQ(place.date.toString(), "2027-01-01");
    EXPECT_EQ(place.startMinute, kNine);
}

}  // namespace chalk::week
