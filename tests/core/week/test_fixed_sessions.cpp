#include "core/week/fixed_sessions.h"

#include "core/week/contradictions.h"
#include "core/week/week_checker.h"
#include "core/week/week_search.h"
#include "tests/support/week_on_test.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::week {

namespace {

using test::at;
using test::kMon;
using test::kThu;
using test::kTue;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

/// A week in which four clients train twice each, without any trouble, and somebody is added who contradicts the rules.
class ContradictoryWeek : public ::testing::Test {
protected:
    static constexpr std::size_t kUsual = 8;

    ContradictoryWeek()
    {
        for (std::size_t client = 0; client < kUsual / 2; ++client) {
            test::addClient(m_problem);
            test::addSession(m_problem, client);
            test::addSession(m_problem, client);
        }
    }

    /// Alone with the first coach.
    std::size_t addOne(int minutes = 60)
    {
        const std::size_t client = test::addClient(m_problem, 1);
        m_problem.clients[client].coaches.resize(1);
        return test::addSession(m_problem, client, minutes);
    }

    std::size_t addLocked(int start)
    {
        const std::size_t session = addOne();
        m_problem.sessions[session].standing = Slot{0, start};
        m_problem.sessions[session].isLocked = true;
        return session;
    }

    /// Plans the week and expects that all but `leftOver` have a place, and that nothing but locked sessions breaks a rule.
    std::vector<std::size_t> lockedAtFault(const std::vector<std::size_t>& leftOver = {})
    {
        WeekSearch search(m_problem, {});
        search.advance(500);
        std::vector<std::size_t> waiting;
        for (std::size_t session = 0; session < search.best().size(); ++session) {
            if (!search.best()[session]) {
                waiting.push_back(session);
            } else if (m_problem.sessions[session].isLocked) {
                EXPECT_EQ(search.best()[session], m_problem.sessions[session].standing);
            }
        }
        EXPECT_EQ(waiting, leftOver);
        for (const PlanFault& fault : faultsOf(m_problem, search.best())) {
            for (const std::size_t session : fault.sessions) {
                EXPECT_TRUE(m_problem.sessions[session].isLocked) << "session " << session;
            }
        }
        return search.contradictions();
    }

    [[nodiscard]] ContradictionKind onlyKind() const
    {
        const std::vector<Contradiction> found = contradictionsOf(m_problem);
        EXPECT_EQ(found.size(), 1U);
        return found.at(0).kind;
    }

    WeekProblem m_problem = test::quietWeek();
};

TEST_F(ContradictoryWeek, IsPlannedAroundALockedBookingOutsideOfTheCoachsHours)
{
    const std::size_t locked = addLocked(at(kMon, 17, 30));
    EXPECT_THAT(lockedAtFault(), ElementsAre(locked));
    EXPECT_EQ(onlyKind(), ContradictionKind::LockedAgainstRule);
    m_problem.sessions[locked].standing->start = at(kTue, 3);
    EXPECT_THAT(lockedAtFault(), ElementsAre(locked)) << "in the middle of the night";
}

TEST_F(ContradictoryWeek, LeavesOverAClientWithoutHours)
{
    const std::size_t session = addOne();
    m_problem.clients.back().available.clear();
    EXPECT_THAT(lockedAtFault({session}), IsEmpty());
    EXPECT_EQ(onlyKind(), ContradictionKind::NoHours);
}

TEST_F(ContradictoryWeek, LeavesOverASessionThatIsLongerThanAnyWindow)
{
    for (CoachWeek& coach : m_problem.coaches) {
        coach.breaks = test::everyDay(kMon, test::kSun, 13, 14);
    }
    const std::size_t session = addOne(5 * 60);
    EXPECT_THAT(lockedAtFault(), IsEmpty());
    m_problem.sessions[session].minutes += 1;
    EXPECT_THAT(lockedAtFault({session}), IsEmpty()) << "8 to 13 is as long as it gets";
    EXPECT_EQ(onlyKind(), ContradictionKind::LongerThanWindows);
}

TEST_F(ContradictoryWeek, LeavesOverWhoGoesToACoachWithoutWindows)
{
    const std::size_t session = addOne();
    m_problem.coaches.push_back({"on leave", 3, 480, {}, {}, {}});
    m_problem.clients.back().coaches = {{2, 0}};
    m_problem.clients.front().coaches.push_back({2, 0});
    EXPECT_THAT(lockedAtFault({session}), IsEmpty());
    EXPECT_EQ(onlyKind(), ContradictionKind::LongerThanWindows);
}

TEST_F(ContradictoryWeek, LeavesOverWhoNeedsAStationOfWhichThereIsNone)
{
    m_problem.stations.push_back({"sled", 0, {}});
    const std::size_t session = addOne();
    m_problem.sessions[session].needs = {{0, 100, 0, 60}, {1, 20, 45, 60}};
    EXPECT_THAT(lockedAtFault({session}), IsEmpty());
    EXPECT_EQ(onlyKind(), ContradictionKind::StationNeverEnough);
}

TEST_F(ContradictoryWeek, IsPlannedAroundTwoLockedBookingsAtTheOnlyPlaceOfACoach)
{
    m_problem.coaches[0].capacity = 1;
    const std::size_t one = addLocked(at(kMon, 10));
    const std::size_t other = addLocked(at(kMon, 10, 45));
    for (ClientWeek& client : m_problem.clients) {
        client.maxGroup = 3;
    }
    EXPECT_THAT(lockedAtFault(), ElementsAre(one, other));
    EXPECT_EQ(onlyKind(), ContradictionKind::LockedAgainstRule);
}

TEST_F(ContradictoryWeek, IsPlannedAroundLockedBookingsThatTakeMoreOfAStationThanThereIs)
{
    m_problem.stations[0].units = 1;
    m_problem.coaches[0].windows = m_problem.coaches[1].windows = {{kMon, 600, 660}, {kTue, 600, 660}, {kThu, 600, 660}};
    std::vector<std::size_t> locked;
    for (const int day : {kMon, kMon}) {
        locked.push_back(addLocked(at(day, 10)));
        m_problem.sessions[locked.back()].needs = {{0, 70, 0, 60}};
        m_problem.clients.back().maxGroup = 3;
    }
    const std::size_t lifter = addOne();
    m_problem.clients.back().maxGroup = 3;
    m_problem.clients.back().available = {{kMon, 600, 660}};
    m_problem.sessions[lifter].needs = {{0, 1, 0, 60}};
    EXPECT_EQ(lockedAtFault({lifter}), locked) << "one more does not come to a rack that is taken twice";
    m_problem.sessions[lifter].needs.clear();
    EXPECT_EQ(lockedAtFault(), locked) << "who needs no rack does not mind";
}

TEST_F(ContradictoryWeek, NamesTwoLockedBookingsOfAClientOnOneDay)
{
    const std::size_t one = addLocked(at(kMon, 8));
    const std::size_t other = test::addSession(m_problem, m_problem.clients.size() - 1);
    m_problem.sessions[other].patterns = {"pull"};
    m_problem.sessions[other].standing = Slot{0, at(kMon, 16)};
    m_problem.sessions[other].isLocked = true;
    EXPECT_THAT(lockedAtFault(), ElementsAre(one, other)) << "though they train different patterns";
    EXPECT_EQ(onlyKind(), ContradictionKind::LockedAgainstRule);
}

TEST_F(ContradictoryWeek, KeepsOutOfALockedBookingThatLastsPastMidnight)
{
    m_problem.open = test::everyDay(kMon, test::kSun, 0, 24);
    m_problem.coaches[0] = {"night", 1, 480, m_problem.open, {}, {}};
    const std::size_t locked = addLocked(at(kMon, 23, 30));
    const std::size_t early = addOne();
    m_problem.clients.back().available = {{kTue, 0, 75}};
    EXPECT_THAT(lockedAtFault({early}), ElementsAre(locked)) << "the coach is taken until half past midnight";
    m_problem.clients.back().available = {{kTue, 0, 90}};
    EXPECT_THAT(lockedAtFault(), ElementsAre(locked));
}

}  // namespace

}  // namespace chalk::week
