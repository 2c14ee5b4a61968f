#include "core/progression/block_run.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

using progression::Block;
using progression::BlockPlace;
using progression::BlockRun;
using progression::BlockWork;

const base::Date kRunMonday = base::Date::fromYmd(2026, 11, 30).value();

/// Two weeks of two exposures, a hole of a week between them.
BlockRun runOfTwo()
{
    const BlockWork work{base::Sets(4), base::Reps(4), base::Reps(4), base::Milli(800), base::Seconds(180), 3};
    const Block block{{{kRunMonday, false, {work, work}}, {kRunMonday + 14, false, {work, work}}}, base::Load::fromCenti(10000)};
    return {std::make_shared<const Block>(block), block.single, base::Date(), 0};
}

}  // namespace

TEST(BlockRun, WeeksAreFoundByTheirDays)
{
    const BlockRun run = runOfTwo();
    EXPECT_FALSE(placeOn(kRunMonday - 1, run).has_value());
    EXPECT_EQ(placeOn(kRunMonday, run), (BlockPlace{0, 0}));
    EXPECT_EQ(placeOn(kRunMonday + 6, run), (BlockPlace{0, 0}));
    EXPECT_EQ(placeOn(kRunMonday + 9, run), (BlockPlace{1, 0})) << "in a hole the next one";
    EXPECT_EQ(placeOn(kRunMonday + 20, run), (BlockPlace{1, 0}));
    EXPECT_FALSE(placeOn(kRunMonday + 21, run).has_value());
    EXPECT_FALSE(isOver(kRunMonday + 20, run));
    EXPECT_TRUE(isOver(kRunMonday + 21, run));
}

TEST(BlockRun, ExposuresAreCountedByTheWeek)
{
    BlockRun run = runOfTwo();
    countExposure(kRunMonday + 1, run);
    EXPECT_EQ(placeOn(kRunMonday + 3, run), (BlockPlace{0, 1}));
    countExposure(kRunMonday + 3, run);
    EXPECT_EQ(placeOn(kRunMonday + 5, run), (BlockPlace{0, 1})) << "one more is like the last";
    EXPECT_EQ(placeOn(kRunMonday + 14, run), (BlockPlace{1, 0}));
    countExposure(kRunMonday + 15, run);
    EXPECT_EQ(run.done, 1);
}

TEST(BlockRun, IsEqualByWhatItHolds)
{
    EXPECT_EQ(runOfTwo(), runOfTwo());
    BlockRun other = runOfTwo();
    other.done = 1;
    EXPECT_FALSE(other == runOfTwo());
}

}  // namespace chalk::test
