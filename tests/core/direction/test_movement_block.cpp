#include "core/direction/movement_block.h"

#include "core/direction/plan_curves.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

direction::BlockPlan movementPlan()
{
    return direction::planFor({direction::Direction::Movement, direction::Wave::Linear, 12, 2, true, base::Date::fromYmd(2026, 11, 30).value(),
                               {{base::LiftId(1), direction::LiftRole::Main, 2}, {base::LiftId(2), direction::LiftRole::Upkeep, 1}}});
}

}  // namespace

TEST(MovementBlock, LiesInThePublishedRanges)
{
    EXPECT_TRUE(departuresOf(movementPlan()).empty());
}

TEST(MovementBlock, MainLiftsAskForControlAndStayLight)
{
    for (const auto& week : movementPlan().weeks) {
        EXPECT_TRUE(week.work[0][0].isPauseAsked);
        EXPECT_FALSE(week.work[1][0].isPauseAsked);
        EXPECT_LE(week.work[0][0].scheme.share, base::Milli(600));
        EXPECT_LE(week.work[1][0].scheme.share, base::Milli(670));
    }
}

}  // namespace chalk::test
