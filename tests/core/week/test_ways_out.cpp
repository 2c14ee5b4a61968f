#include "core/week/ways_out.h"

#include "core/week/plan_cost.h"
#include "core/week/week_checker.h"
#include "tests/support/week_on_test.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace chalk::week {

using test::at;
using test::kMon;
using test::kTue;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

/// One coach who takes one at once, Monday from 10 to 14. The first client comes from 10 to 11 on Monday, where the second one is already.
class WaysOutTest : public ::testing::Test {
protected:
    WaysOutTest()
    {
        m_problem.coaches.resize(1);
        m_problem.coaches[0].windows = {{kMon, 10 * 60, 14 * 60}};
        m_problem.coaches[0].capacity = 1;
        m_session = addOne();
        m_other = addOne();
        m_problem.clients[0].available = {{kMon, 10 * 60, 11 * 60}};
        m_problem.clients[1].available = {{kMon, 10 * 60, 11 * 60}};
        m_plan[m_other] = Slot{0, at(kMon, 10)};
    }

    std::size_t addOne()
    {
        const std::size_t client = test::addClient(m_problem);
        m_problem.clients[client].coaches.resize(1);
        m_plan.emplace_back();
        return test::addSession(m_problem, client);
    }

    [[nodiscard]] std::vector<WayOut> ways() const
    {
        std::vector<WayOut> found = waysOut(m_problem, m_plan, m_session);
        for (const WayOut& way : found) {
            const PlannedWeek week = takenWay(m_problem, m_plan, m_session, way);
            EXPECT_THAT(faultsOf(week.problem, week.plan), IsEmpty()) << static_cast<int>(way.kind);
        }
        return found;
    }

    [[nodiscard]] std::vector<WayKind> kinds() const
    {
        std::vector<WayKind> kinds;
        for (const WayOut& way : ways()) {
            kinds.push_back(way.kind);
        }
        return kinds;
    }

    WeekProblem m_problem = test::quietWeek();
    WeekPlan m_plan;
    std::size_t m_session = 0;
    std::size_t m_other = 0;
};

TEST_F(WaysOutTest, WidenTheClientsHoursNoMoreThanNeeded)
{
    m_problem.clients[1].maxGroup = 1;
    const std::vector<WayOut> found = ways();
    EXPECT_THAT(kinds(), ElementsAre(WayKind::WiderHours, WayKind::OneFewer));
    EXPECT_EQ(found[0].slot, (Slot{0, at(kMon, 11)}));
    EXPECT_EQ(found[0].hours, (DaySpan{kMon, 10 * 60, 12 * 60}));
    EXPECT_EQ(found[0].minutes, 60);
    EXPECT_EQ(found[0].cost, 4 * 8) << "an hour outside";
    EXPECT_EQ(found[1].cost, 1000);
    m_problem.sessions[m_other].minutes = 61;
    m_problem.clients[1].available[0].to = 11 * 60 + 1;
    EXPECT_THAT(kinds(), ElementsAre(WayKind::OneFewer)) << "busy until 11:15: an hour is not enough";
    m_problem.sessions[m_other].minutes = 45;
    EXPECT_EQ(ways()[0].hours, (DaySpan{kMon, 10 * 60, 11 * 60 + 45}));
}

TEST_F(WaysOutTest, EnlargeTheCoachsCapacityOrAClientsGroup)
{
    EXPECT_THAT(kinds(), ElementsAre(WayKind::WiderHours, WayKind::LargerCapacity, WayKind::OneFewer));
    m_problem.coaches[0].capacity = 2;
    m_problem.clients[1].maxGroup = 1;
    std::vector<WayOut> found = ways();
    EXPECT_EQ(found.at(1).kind, WayKind::LargerGroup);
    EXPECT_EQ(found.at(1).client, 1U);
    EXPECT_EQ(found.at(1).slot, (Slot{0, at(kMon, 10)}));
    EXPECT_EQ(found.at(1).cost, 40);
    m_problem.clients[1].maxGroup = 2;
    m_problem.clients[0].maxGroup = 1;
    EXPECT_EQ(ways().at(1).client, 0U);
    m_problem.clients[1].maxGroup = 1;
    EXPECT_THAT(kinds(), ElementsAre(WayKind::WiderHours, WayKind::OneFewer)) << "two would have to share";
}

TEST_F(WaysOutTest, AskAnotherCoach)
{
    m_problem.coaches.push_back(m_problem.coaches[0]);
    m_problem.coaches[1].windows = {{kMon, 10 * 60, 11 * 60}};
    m_problem.clients[0].coaches[0].cost = 7;
    m_problem.clients[1].maxGroup = 1;
    const std::vector<WayOut> found = ways();
    const auto way = std::find_if(found.begin(), found.end(), [](const WayOut& one) { return one.kind == WayKind::OtherCoach; });
    ASSERT_NE(way, found.end());
    EXPECT_EQ(way->coach, 1U);
    EXPECT_EQ(way->slot, (Slot{1, at(kMon, 10)}));
    EXPECT_EQ(way->cost, 30 + 7);
    m_problem.clients[0].coaches.push_back({1, 0});
    EXPECT_EQ(kinds().at(0), WayKind::FitsNow) << "accepted already";
}

TEST_F(WaysOutTest, ShortenTheSession)
{
    m_problem.clients[0].available = {{kMon, 9 * 60, 10 * 60 + 45}};
    m_problem.clients[1].available = {{kMon, 10 * 60 + 45, 11 * 60 + 45}};
    m_problem.clients[1].maxGroup = 1;
    m_plan[m_other] = Slot{0, at(kMon, 10, 45)};
    m_problem.sessions[m_session].needs = {{0, 100, 20, 40}};
    const std::vector<WayOut> found = ways();
    const auto way = std::find_if(found.begin(), found.end(), [](const WayOut& one) { return one.kind == WayKind::ShorterSession; });
    ASSERT_NE(way, found.end());
    EXPECT_EQ(way->minutes, 45) << "no shorter than it must be";
    EXPECT_EQ(way->cost, 20);
    EXPECT_EQ(takenWay(m_problem, m_plan, m_session, *way).problem.sessions[m_session].needs, (std::vector<StationNeed>{{0, 100, 15, 30}}));
    m_problem.sessions[m_session].minutes = 45;
    m_problem.clients[0].available = {{kMon, 9 * 60, 10 * 60 + 44}};
    EXPECT_EQ(ways().at(0).kind, WayKind::WiderHours);
    EXPECT_EQ(ways().at(1).minutes, 30);
}

TEST_F(WaysOutTest, AddAUnitOfAStation)
{
    m_problem.coaches[0].capacity = 2;
    m_problem.sessions[m_session].needs = {{0, 100, 0, 60}};
    m_problem.stations[0] = {"rack", 1, {{{kMon, 0, 13 * 60}, 0}}};
    const std::vector<WayOut> found = ways();
    EXPECT_THAT(kinds(), ElementsAre(WayKind::MoreUnits, WayKind::OneFewer));
    EXPECT_EQ(found[0].station, 0U);
    EXPECT_EQ(found[0].cost, 200);
}

TEST_F(WaysOutTest, MoveAnotherSessionWhereNothingElseHelps)
{
    m_problem.clients[0].available = {{kMon, 10 * 60, 11 * 60}};
    m_problem.clients[0].maxGroup = m_problem.clients[1].maxGroup = 1;
    const std::size_t third = addOne();
    m_problem.clients[2].maxGroup = 1;
    m_problem.coaches[0].windows = {{kMon, 10 * 60, 13 * 60}};
    m_plan[third] = Slot{0, at(kMon, 11)};
    m_problem.clients[2].available = {{kMon, 11 * 60, 12 * 60}};
    m_problem.sessions[m_session].minutes = 30;
    m_problem.clients[0].available = {{kMon, 10 * 60, 10 * 60 + 30}};
    m_problem.clients[1].available = {{kMon, 10 * 60, 13 * 60}};
    EXPECT_THAT(kinds(), ElementsAre(WayKind::MoveAnother, WayKind::OneFewer));
    const WayOut way = ways()[0];
    EXPECT_EQ(way.slot, (Slot{0, at(kMon, 10)}));
    EXPECT_EQ(way.moved, m_other);
    EXPECT_EQ(way.movedTo, (Slot{0, at(kMon, 12)}));
    EXPECT_EQ(way.cost, 20 + 2 * 2) << "the move, and half an hour idle from 10:30 to 11:00";
    m_problem.sessions[m_other].standing = m_plan[m_other];
    m_problem.sessions[m_other].isLocked = true;
    EXPECT_THAT(kinds(), ElementsAre(WayKind::OneFewer)) << "a locked one does not move";
}

TEST_F(WaysOutTest, SayWhereItFitsWithoutAnyChange)
{
    m_plan[m_other].reset();
    const std::vector<WayOut> found = ways();
    EXPECT_EQ(found.at(0), (WayOut{.kind = WayKind::FitsNow, .slot = Slot{0, at(kMon, 10)}, .cost = 0}));
}

TEST_F(WaysOutTest, LeaveTheNumberOfSessionsToTheCoach)
{
    m_problem.clients[0].available.clear();
    m_problem.clients[0].priority = 3;
    EXPECT_EQ(ways(), (std::vector<WayOut>{{.kind = WayKind::OneFewer, .cost = 3000}}));
    const PlannedWeek week = takenWay(m_problem, m_plan, m_session, ways()[0]);
    ASSERT_EQ(week.problem.sessions.size(), 1U);
    EXPECT_EQ(week.problem.sessions[0].id, m_problem.sessions[m_other].id);
    EXPECT_EQ(week.plan, WeekPlan{m_plan[m_other]});
}

TEST_F(WaysOutTest, MoveALockedSessionNowhereButToItsStandingSlot)
{
    m_problem.sessions[m_session].standing = Slot{0, at(kMon, 10)};
    m_problem.sessions[m_session].isLocked = true;
    EXPECT_EQ(ways().at(0).kind, WayKind::LargerCapacity);
    EXPECT_EQ(ways().at(0).slot, m_problem.sessions[m_session].standing);
}

/// What the plan costs more, worked out from the whole plan, with the prices of the ways.
long judgedCost(const WeekProblem& problem, const WeekPlan& plan, std::size_t session, const WayOut& way, const PlannedWeek& taken)
{
    const auto placed = [](const WeekProblem& week, const WeekPlan& its) { return objectiveOf(week, its).total() - objectiveOf(week, its).unplaced; };
    const WayPrices prices;
    const int shorter = problem.sessions[session].minutes - way.minutes;
    long price = 0;
    switch (way.kind) {
    case WayKind::FitsNow: break;
    case WayKind::WiderHours: price = prices.hoursPer15 * ((way.minutes + 14) / 15); break;
    case WayKind::OtherCoach: price = prices.coach; break;
    case WayKind::ShorterSession: price = prices.shorterPer15 * ((shorter + 14) / 15); break;
    case WayKind::MoreUnits: price = prices.unit; break;
    case WayKind::LargerGroup:
    case WayKind::LargerCapacity: price = prices.group; break;
    case WayKind::MoveAnother: price = prices.move; break;
    case WayKind::OneFewer: return objectiveOf(problem, plan).unplaced - objectiveOf(taken.problem, taken.plan).unplaced;
    }
    return placed(taken.problem, taken.plan) - placed(problem, plan) + price;
}

TEST(WaysOutPropertyTest, KeepTheRulesAndCostWhatTheySayInDrawnWeeks)
{
    std::array<int, kWayKindCount> seen{};
    for (unsigned seed = 300; seed < 318; ++seed) {
        WeekProblem problem = test::drawnWeek(seed, 10);
        for (ClientWeek& client : problem.clients) {
            client.maxGroup = 1 + static_cast<int>(seed % 2);
        }
        const WeekPlan plan = test::drawnPlan(problem, seed);
        if (!faultsOf(problem, plan).empty()) {
            continue;  // locked ones may share no more
        }
        for (std::size_t session = 0; session < plan.size(); ++session) {
            const std::vector<WayOut> found = plan[session] ? std::vector<WayOut>{} : waysOut(problem, plan, session);
            EXPECT_LE(found.size(), kMostWaysOut);
            EXPECT_TRUE(std::is_sorted(found.begin(), found.end(), [](const WayOut& a, const WayOut& b) { return a.cost < b.cost; }));
            EXPECT_EQ(found.empty(), plan[session].has_value());
            for (const WayOut& way : found) {
                const PlannedWeek taken = takenWay(problem, plan, session, way);
                EXPECT_THAT(faultsOf(taken.problem, taken.plan), IsEmpty()) << problem.name << ", session " << session << ", way " << static_cast<int>(way.kind);
                EXPECT_EQ(way.cost, judgedCost(problem, plan, session, way, taken)) << problem.name << ", session " << session << ", way " << static_cast<int>(way.kind);
                ++seen.at(static_cast<std::size_t>(way.kind));
            }
        }
    }
    for (const WayKind kind : {WayKind::FitsNow, WayKind::WiderHours, WayKind::ShorterSession, WayKind::OneFewer}) {
        EXPECT_GT(seen.at(static_cast<std::size_t>(kind)), 0) << static_cast<int>(kind);
    }
}

}  // namespace chalk::week
