#include "core/week/left_over.h"

#include "tests/support/week_on_test.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::week {

using test::at;
using test::kMon;
using test::kTue;
using test::kWed;

/// One coach, Monday from 10 to 14; the session needs an hour of it.
class LeftOverTest : public ::testing::Test {
protected:
    LeftOverTest()
    {
        m_problem.coaches.resize(1);
        m_problem.coaches[0].windows = {{kMon, 10 * 60, 14 * 60}};
        m_session = addAnother();
    }

    std::size_t addAnother()
    {
        const std::size_t client = test::addClient(m_problem);
        m_problem.clients[client].coaches.resize(1);
        m_plan.emplace_back();
        return test::addSession(m_problem, client);
    }

    [[nodiscard]] LeftOver leftOver() const { return leftOverOf(m_problem, m_plan, m_session); }

    WeekProblem m_problem = test::quietWeek();
    WeekPlan m_plan;
    std::size_t m_session = 0;
};

TEST_F(LeftOverTest, CountsEveryStartOfTheWeekUnderOneRule)
{
    const LeftOver left = leftOver();
    EXPECT_EQ(left.candidates, 7 * 96);
    EXPECT_EQ(left.free, 13) << "10:00, 10:15 … 13:00";
    EXPECT_EQ(left.nearestFree, (Slot{0, at(kMon, 10)}));
    EXPECT_EQ(left.countOf(SlotBlock::StudioClosed), 7 * (96 - 61)) << "6:00 to 21:00 are open";
    EXPECT_EQ(left.countOf(SlotBlock::CoachAway), 7 * 61 - 13);
    EXPECT_EQ(left.countOf(SlotBlock::Stations), 0);
    EXPECT_EQ(left.blocks.size(), 2U);
}

TEST_F(LeftOverTest, CountsAStartUnderTheFirstRuleThatBlocksIt)
{
    m_problem.clients[0].available = {{kMon, 12 * 60, 16 * 60}};
    m_problem.clients[0].lastWeek = {{at(-1, 13), {"squat"}}};
    m_problem.clients[0].recovery.hours = 24;
    const std::size_t locked = addAnother();
    m_problem.sessions[locked].standing = m_plan[locked] = Slot{0, at(kMon, 13, 30)};
    m_problem.sessions[locked].minutes = 15;
    m_problem.sessions[locked].isLocked = true;
    m_problem.coaches[0].capacity = 1;
    const LeftOver left = leftOver();
    EXPECT_EQ(left.countOf(SlotBlock::ClientAway), 8) << "10:00 to 11:45";
    EXPECT_EQ(left.countOf(SlotBlock::LastWeek), 4) << "12:00 to 12:45, though 12:45 meets the locked one too";
    EXPECT_EQ(left.countOf(SlotBlock::LockedBookings), 1) << "13:00";
    EXPECT_EQ(left.free, 0);
    EXPECT_FALSE(left.nearestFree);
    EXPECT_EQ(left.blocks.back().example.sessions, std::vector<std::size_t>{locked});
}

TEST_F(LeftOverTest, NamesWhatIsNearestToWhatIsWanted)
{
    m_problem.coaches[0].capacity = 1;
    const std::size_t other = addAnother();
    m_plan[other] = Slot{0, at(kMon, 12)};
    m_problem.clients[0].available = {{kMon, 11 * 60, 13 * 60}};
    LeftOver left = leftOver();
    EXPECT_EQ(left.countOf(SlotBlock::Group), 4);
    EXPECT_EQ(left.free, 1);
    EXPECT_EQ(left.blocks.back().nearest, (Slot{0, at(kMon, 11, 15)})) << "the first";
    m_problem.clients[0].preferred = {{kMon, 11 * 60 + 40, 11 * 60 + 50}, {kTue, 9 * 60, 10 * 60}};
    left = leftOver();
    EXPECT_EQ(left.blocks.back().nearest, (Slot{0, at(kMon, 11, 45)}));
    m_problem.sessions[m_session].standing = Slot{0, at(kMon, 12)};
    left = leftOver();
    EXPECT_EQ(left.blocks.back().nearest, (Slot{0, at(kMon, 12)}));
    EXPECT_EQ(left.blocks.back().example, (BlockedSlot{SlotBlock::Group, {}, {other}, at(kMon, 12), 2, 1}));
}

TEST_F(LeftOverTest, TellsTheClientsOwnSessionsFromOthers)
{
    const std::size_t own = test::addSession(m_problem, 0);
    m_plan.emplace_back();
    m_problem.coaches[0].windows.push_back({kWed, 10 * 60, 14 * 60});
    m_plan[own] = Slot{0, at(kMon, 11)};
    const LeftOver left = leftOver();
    EXPECT_EQ(left.countOf(SlotBlock::OwnSessions), 13 + 4) << "Monday, and Wednesday before 11:00";
    EXPECT_EQ(left.free, 9);
    EXPECT_EQ(left.blocks.back().example.sessions, std::vector<std::size_t>{own});
}

TEST_F(LeftOverTest, NamesTheStationThatIsShort)
{
    m_problem.sessions[m_session].needs = {{0, 100, 0, 60}};
    m_problem.stations[0].closures = {{{kMon, 0, kDayMinutes}, 0}};
    const LeftOver left = leftOver();
    EXPECT_EQ(left.countOf(SlotBlock::Stations), 13);
    EXPECT_EQ(left.blocks.back().example, (BlockedSlot{SlotBlock::Stations, 0, {}, at(kMon, 10), 100, 0}));
}

TEST_F(LeftOverTest, AsksForASessionThatHasAPlaceAsIfItHadNone)
{
    const LeftOver before = leftOver();
    m_plan[m_session] = Slot{0, at(kMon, 11)};
    EXPECT_EQ(leftOver(), before);
    EXPECT_TRUE(allLeftOver(m_problem, m_plan).empty());
    m_plan[m_session].reset();
    EXPECT_EQ(allLeftOver(m_problem, m_plan), std::vector<LeftOver>{before});
}

TEST_F(LeftOverTest, MakesUpAllCandidatesOfDrawnWeeks)
{
    int counted = 0;
    for (unsigned seed = 100; seed < 120; ++seed) {
        const WeekProblem problem = test::drawnWeek(seed, 8);
        for (const LeftOver& left : allLeftOver(problem, test::drawnPlan(problem, seed))) {
            int sum = left.free;
            for (const BlockCount& block : left.blocks) {
                EXPECT_GT(block.count, 0);
                EXPECT_EQ(block.example.block, block.block);
                sum += block.count;
            }
            const std::size_t coaches = problem.clients[problem.sessions[left.session].client].coaches.size();
            EXPECT_EQ(sum, left.candidates);
            EXPECT_EQ(left.candidates, static_cast<int>(coaches) * 7 * 96);
            EXPECT_EQ(left.nearestFree.has_value(), left.free > 0);
            ++counted;
        }
    }
    EXPECT_GT(counted, 20);
}

}  // namespace chalk::week
