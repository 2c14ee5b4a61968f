#include "core/direction/plan_blocks.h"

#include "core/direction/plan_calendar.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

const base::Date kBlocksStart = base::Date::fromYmd(2026, 11, 30).value();

direction::BlockPlan planOfTwoLifts()
{
    return direction::planFor({direction::Direction::Strength, direction::Wave::Undulating, 12, 3, true, kBlocksStart,
                               {{base::LiftId(1), direction::LiftRole::Main, 3}, {base::LiftId(2), direction::LiftRole::Assistance, 1}}});
}

}  // namespace

TEST(PlanBlocks, EveryLiftGetsItsOwnWeeks)
{
    const auto plan = planOfTwoLifts();
    const auto block = blockOf(plan, 0, kBlocksStart, base::Load::fromCenti(10000), true, "strength");
    ASSERT_EQ(block.weeks.size(), 12U);
    EXPECT_EQ(block.weeks[0].work.size(), 3U);
    EXPECT_EQ(block.weeks[0].work[1].share, base::Milli(850));
    EXPECT_TRUE(block.weeks[3].isLighter);
    EXPECT_TRUE(block.weeks[11].work.back().isTest);
    EXPECT_TRUE(block.isTested);
    EXPECT_FALSE(faultOf(block).has_value());
    EXPECT_EQ(blockOf(plan, 1, kBlocksStart, base::Load::fromCenti(5000), false, {}).weeks[0].work.size(), 1U);
}

TEST(PlanBlocks, APlanThatRunsGoesOnFromItsWeek)
{
    const std::vector<base::Date> missed{kBlocksStart + 14};
    const auto plan = withMissedWeeks(planOfTwoLifts(), missed, direction::MissedWeeks::Shift);
    const auto block = blockOf(plan, 0, kBlocksStart + 13, base::Load::fromCenti(10000), false, {});
    ASSERT_EQ(block.weeks.size(), 11U) << "the week of the day counts";
    EXPECT_EQ(block.weeks[0].monday, kBlocksStart + 7);
    EXPECT_EQ(block.weeks[1].monday, kBlocksStart + 21) << "the hole stays";
}

}  // namespace chalk::test
