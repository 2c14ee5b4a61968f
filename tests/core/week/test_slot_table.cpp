#include "core/week/slot_table.h"

#include "core/week/week_checker.h"
#include "tests/support/week_on_test.h"

#include <gtest/gtest.h>

#include <array>

namespace chalk::week {
namespace {

/// Which block a fault of the checker stands for, when a plan without faults gets one more session.
SlotBlock blockFor(const PlanFault& fault)
{
    switch (fault.rule) {
    case PlanRule::StudioClosed: return SlotBlock::StudioClosed;
    case PlanRule::CoachAway: return SlotBlock::CoachAway;
    case PlanRule::ClientAway: return SlotBlock::ClientAway;
    case PlanRule::SameDay:
    case PlanRule::RecoveryTime: return fault.pastSession ? SlotBlock::LastWeek : SlotBlock::OwnSessions;
    case PlanRule::Capacity:
    case PlanRule::GroupSize: return SlotBlock::Group;
    case PlanRule::StationUnits: return SlotBlock::Stations;
    case PlanRule::OffGrid:
    case PlanRule::CoachNotAccepted:
    case PlanRule::LockedMoved:
    case PlanRule::LockedLeftOver: break;
    }
    ADD_FAILURE() << "no slot of a candidate breaks rule " << static_cast<int>(fault.rule);
    return SlotBlock::StudioClosed;
}

std::optional<SlotBlock> firstBlock(const WeekProblem& problem, const WeekPlan& plan)
{
    std::optional<SlotBlock> first;
    for (const PlanFault& fault : faultsOf(problem, plan)) {
        const SlotBlock block = blockFor(fault);
        first = first ? std::min(*first, block) : block;
    }
    return first;
}

/// As the checker sees it: what blocks with everybody in the plan, and the same with the client's own sessions and the locked ones of others.
std::optional<SlotBlock> judgedBlock(const WeekProblem& problem, const WeekPlan& plan, std::size_t session)
{
    const std::optional<SlotBlock> block = firstBlock(problem, plan);
    if (!block || *block < SlotBlock::LockedBookings) {
        return block;
    }
    WeekPlan alone(plan.size());
    alone[session] = plan[session];
    WeekPlan besideLocked = alone;
    for (std::size_t other = 0; other < plan.size(); ++other) {
        if (problem.sessions[other].isLocked && problem.sessions[other].client != problem.sessions[session].client) {
            besideLocked[other] = plan[other];
        }
    }
    WeekProblem unlocked = problem;
    for (SessionWish& wish : unlocked.sessions) {
        wish.isLocked = false;
    }
    return firstBlock(unlocked, besideLocked) && !firstBlock(unlocked, alone) ? SlotBlock::LockedBookings : *block;
}

TEST(SlotTableTest, AgreesWithTheCheckerOnEverySlotOfDrawnWeeks)
{
    std::array<int, kSlotBlockCount + 1> seen{};
    for (unsigned seed = 0; seed < 4; ++seed) {
        const WeekProblem problem = test::drawnWeek(seed, 7);
        const WeekPlan plan = test::drawnPlan(problem, seed);
        ASSERT_TRUE(faultsOf(problem, plan).empty()) << seed;
        const SlotTable table(problem, plan);
        for (std::size_t session = 0; session < plan.size(); ++session) {
            if (problem.sessions[session].isLocked) {
                continue;
            }
            for (const Slot& slot : table.candidatesOf(session)) {
                const int hour = slot.start % kDayMinutes / 60;
                if (slot.start >= test::at(test::kThu, 0) || hour < 6 || hour > 20 || slot.start / 15 % 2 != static_cast<int>(session % 2)) {
                    continue;
                }
                WeekPlan with = plan;
                with[session] = slot;
                const std::optional<BlockedSlot> blocked = table.blockOf(session, slot);
                const std::optional<SlotBlock> judged = judgedBlock(problem, with, session);
                ASSERT_EQ(blocked ? std::optional(blocked->block) : std::nullopt, judged) << problem.name << ", session " << session << " at " << slot.start;
                ++seen.at(judged ? static_cast<std::size_t>(*judged) : kSlotBlockCount);
            }
        }
    }
    for (std::size_t block = 0; block < seen.size(); ++block) {
        EXPECT_GT(seen.at(block), 0) << "the weeks never try " << block;
    }
}

class SlotTableOfTwoTest : public ::testing::Test {
protected:
    SlotTableOfTwoTest()
    {
        m_first = test::addSession(m_problem, test::addClient(m_problem));
        m_second = test::addSession(m_problem, test::addClient(m_problem));
        m_plan = {Slot{0, test::at(test::kMon, 10)}, std::nullopt};
    }

    WeekProblem m_problem = test::quietWeek();
    std::size_t m_first = 0;
    std::size_t m_second = 0;
    WeekPlan m_plan;
};

TEST_F(SlotTableOfTwoTest, SaysWhoFillsAGroupFromWhenOn)
{
    m_problem.coaches[0].capacity = 1;
    const SlotTable table(m_problem, m_plan);
    EXPECT_EQ(table.blockOf(m_second, {0, test::at(test::kMon, 9, 30)}),
              (BlockedSlot{SlotBlock::Group, {}, {m_first}, test::at(test::kMon, 10), 2, 1}));
    EXPECT_TRUE(table.fits(m_second, {0, test::at(test::kMon, 9)}));
    EXPECT_TRUE(table.fits(m_first, {0, test::at(test::kMon, 10, 15)})) << "nobody is in one's own way";
}

TEST_F(SlotTableOfTwoTest, SaysWhichStationIsShortAndOfWhat)
{
    m_problem.stations[0].units = 1;
    m_problem.sessions[m_first].needs = {{0, 60, 30, 60}};
    m_problem.sessions[m_second].needs = {{0, 50, 0, 10}};
    const SlotTable table(m_problem, m_plan);
    EXPECT_EQ(table.blockOf(m_second, {0, test::at(test::kMon, 10, 30)}),
              (BlockedSlot{SlotBlock::Stations, 0, {m_first}, test::at(test::kMon, 10, 30), 110, 100}));
    EXPECT_TRUE(table.fits(m_second, {0, test::at(test::kMon, 10, 15)}));
    EXPECT_TRUE(table.fits(m_second, {0, test::at(test::kMon, 11)}));
    m_problem.sessions[m_first].standing = m_plan[m_first];
    m_problem.sessions[m_first].isLocked = true;
    EXPECT_EQ(table.blockOf(m_second, {0, test::at(test::kMon, 10, 30)})->block, SlotBlock::LockedBookings);
}

TEST_F(SlotTableOfTwoTest, FollowsWhatIsPlacedAndRemoved)
{
    m_problem.coaches[0].capacity = 1;
    SlotTable table(m_problem, m_plan);
    const Slot ten{0, test::at(test::kMon, 10)};
    table.place(m_first, {0, test::at(test::kMon, 12)});
    EXPECT_TRUE(table.fits(m_second, ten));
    EXPECT_FALSE(table.fits(m_second, {0, test::at(test::kMon, 12)}));
    table.remove(m_first);
    table.remove(m_first);
    EXPECT_TRUE(table.fits(m_second, {0, test::at(test::kMon, 12)}));
    EXPECT_EQ(table.plan(), WeekPlan(2));
}

TEST_F(SlotTableOfTwoTest, HoldsTheSameWhetherHoursOverlapTouchOrAreSplit)
{
    m_problem.open = {{test::kMon, 9 * 60, 9 * 60 + 10}, {test::kMon, 9 * 60 + 5, 9 * 60 + 10}, {test::kMon, 9 * 60 + 15, 10 * 60 + 7}, {test::kMon, 10 * 60 + 7, 11 * 60}};
    m_problem.sessions[m_second].minutes = 15;
    const SlotTable table(m_problem, {});
    EXPECT_EQ(table.blockOf(m_second, {0, test::at(test::kMon, 9)})->block, SlotBlock::StudioClosed) << "closed from 9:10 to 9:15";
    EXPECT_TRUE(table.fits(m_second, {0, test::at(test::kMon, 9, 15)}));
    EXPECT_TRUE(table.fits(m_second, {0, test::at(test::kMon, 10)}));
    EXPECT_EQ(table.blockOf(m_second, {0, test::at(7, 9)})->block, SlotBlock::StudioClosed);
    EXPECT_EQ(table.blockOf(m_second, {0, test::at(-1, 9)})->block, SlotBlock::StudioClosed);
}

}  // namespace
}  // namespace chalk::week
