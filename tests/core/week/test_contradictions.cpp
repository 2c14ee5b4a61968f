#include "core/week/contradictions.h"

#include "tests/support/week_on_test.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::week {

using test::at;
using test::kFri;
using test::kMon;
using test::kSat;
using test::kThu;
using test::kTue;
using test::kWed;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

class ContradictionsTest : public ::testing::Test {
protected:
    ContradictionsTest() { m_session = test::addSession(m_problem, test::addClient(m_problem)); }

    void lock(std::size_t session, const Slot& slot)
    {
        m_problem.sessions[session].standing = slot;
        m_problem.sessions[session].isLocked = true;
    }

    [[nodiscard]] std::vector<ContradictionKind> kinds() const
    {
        std::vector<ContradictionKind> kinds;
        for (const Contradiction& one : contradictionsOf(m_problem)) {
            kinds.push_back(one.kind);
        }
        return kinds;
    }

    WeekProblem m_problem = test::quietWeek();
    std::size_t m_session = 0;
};

TEST_F(ContradictionsTest, FindNothingWhereThereIsNone)
{
    lock(m_session, {0, at(kMon, 10)});
    test::addClient(m_problem);
    m_problem.clients.back().available.clear();
    EXPECT_THAT(kinds(), IsEmpty()) << "a client without sessions needs no hours";
}

TEST_F(ContradictionsTest, FindALockedSessionOutsideOfTheCoachsHours)
{
    lock(m_session, {0, at(kMon, 17, 15)});
    const std::vector<Contradiction> found = contradictionsOf(m_problem);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].kind, ContradictionKind::LockedAgainstRule);
    EXPECT_EQ(found[0].client, 0U);
    EXPECT_EQ(found[0].session, m_session);
    EXPECT_EQ(found[0].fault->rule, PlanRule::CoachAway);
    EXPECT_EQ(found[0].fault->from, at(kMon, 18));
    m_problem.sessions[m_session].standing->start -= 15;
    EXPECT_THAT(kinds(), IsEmpty());
    m_problem.sessions[m_session].standing.reset();
    EXPECT_THAT(kinds(), ElementsAre(ContradictionKind::LockedWithoutSlot));
}

TEST_F(ContradictionsTest, FindLockedSessionsThatDoNotGoTogether)
{
    const std::size_t other = test::addSession(m_problem, test::addClient(m_problem, 1));
    lock(m_session, {0, at(kMon, 10)});
    lock(other, {0, at(kMon, 10, 45)});
    const std::vector<Contradiction> found = contradictionsOf(m_problem);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].fault->rule, PlanRule::GroupSize);
    EXPECT_FALSE(found[0].client);
    EXPECT_FALSE(found[0].session);
    EXPECT_EQ(found[0].needed, 2);
    EXPECT_EQ(found[0].there, 1);
    m_problem.sessions[other].standing->start = at(kMon, 11);
    EXPECT_THAT(kinds(), IsEmpty());
}

TEST_F(ContradictionsTest, FindClientsWithoutHoursOrCoaches)
{
    m_problem.clients[0].available.clear();
    EXPECT_THAT(contradictionsOf(m_problem), ElementsAre(Contradiction{ContradictionKind::NoHours, 0, {}, {}, {}, 0, 0}));
    m_problem.clients[0].available = {{kMon, 600, 720}};
    m_problem.clients[0].coaches.clear();
    EXPECT_THAT(contradictionsOf(m_problem), ElementsAre(Contradiction{ContradictionKind::NoAcceptedCoach, 0, {}, {}, {}, 0, 0}));
}

TEST_F(ContradictionsTest, FindSessionsLongerThanAnyHours)
{
    m_problem.clients[0].available = {{kMon, 600, 659}, {kMon, 659, 700}};
    EXPECT_THAT(contradictionsOf(m_problem), ElementsAre(Contradiction{ContradictionKind::LongerThanHours, 0, m_session, {}, {}, 60, 59}));
    m_problem.clients[0].available[0].to = 660;
    EXPECT_THAT(kinds(), IsEmpty());
}

TEST_F(ContradictionsTest, FindSessionsLongerThanAnyWorkOfTheirCoaches)
{
    m_problem.clients[0].coaches.resize(1);
    m_problem.coaches[0].windows = {{kMon, 600, 720}};
    m_problem.coaches[0].breaks = {{kMon, 645, 660}};
    EXPECT_THAT(kinds(), IsEmpty()) << "an hour is left after the break";
    m_problem.open = {{kMon, 600, 719}};
    EXPECT_THAT(contradictionsOf(m_problem), ElementsAre(Contradiction{ContradictionKind::LongerThanWindows, 0, m_session, {}, {}, 60, 45}));
    m_problem.coaches[0].windows = {{kMon, 23 * 60 + 30, kDayMinutes}, {kTue, 0, 30}};
    m_problem.open = {{kMon, 0, kDayMinutes}, {kTue, 0, kDayMinutes}};
    EXPECT_THAT(kinds(), ElementsAre(ContradictionKind::LongerThanWindows)) << "a day ends at midnight";
}

TEST_F(ContradictionsTest, FindHoursThatNeverMeet)
{
    m_problem.clients[0].available = {{kMon, 6 * 60, 8 * 60 + 59}, {kSat, 6 * 60, 22 * 60}};
    EXPECT_THAT(contradictionsOf(m_problem), ElementsAre(Contradiction{ContradictionKind::NoCommonHours, 0, m_session, {}, {}, 0, 0}));
    m_problem.clients[0].available[0].to += 1;
    EXPECT_THAT(kinds(), IsEmpty());
}

TEST_F(ContradictionsTest, FindStationsThatAreNeverEnough)
{
    m_problem.sessions[m_session].needs = {{0, 200, 0, 60}};
    EXPECT_THAT(kinds(), IsEmpty());
    m_problem.sessions[m_session].needs = {{0, 201, 0, 60}};
    EXPECT_THAT(contradictionsOf(m_problem), ElementsAre(Contradiction{ContradictionKind::StationNeverEnough, 0, m_session, 0, {}, 201, 200}));
}

TEST_F(ContradictionsTest, FindTooFewDaysForTheSessions)
{
    test::addSession(m_problem, 0);
    test::addSession(m_problem, 0);
    EXPECT_THAT(kinds(), IsEmpty()) << "Monday, Wednesday and Friday";
    m_problem.clients[0].available = test::everyDay(kMon, kThu, 6, 22);
    EXPECT_THAT(contradictionsOf(m_problem), ElementsAre(Contradiction{ContradictionKind::TooFewDays, 0, {}, {}, {}, 3, 2})) << "48 hours between";
    m_problem.sessions[m_session].patterns = {"pull"};
    EXPECT_THAT(kinds(), IsEmpty()) << "one of them may be between the others";
    m_problem.clients[0].available = {{kMon, 360, 1320}, {kWed, 360, 1320}};
    EXPECT_THAT(contradictionsOf(m_problem), ElementsAre(Contradiction{ContradictionKind::TooFewDays, 0, {}, {}, {}, 3, 2})) << "one a day";
    m_problem.clients[0].available.push_back({kFri, 360, 1320});
    EXPECT_THAT(kinds(), IsEmpty());
}

TEST_F(ContradictionsTest, NeverSpeakOfWeeksThatHaveAPlan)
{
    for (unsigned seed = 200; seed < 240; ++seed) {
        WeekProblem problem = test::drawnWeek(seed, 5);
        const WeekPlan plan = test::drawnPlan(problem, seed);
        WeekProblem placed = problem;
        placed.sessions.clear();
        for (std::size_t session = 0; session < plan.size(); ++session) {
            if (plan[session]) {
                placed.sessions.push_back(problem.sessions[session]);
            }
        }
        EXPECT_THAT(contradictionsOf(placed), IsEmpty()) << seed;
    }
}

}  // namespace chalk::week
