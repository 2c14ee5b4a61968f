#include "ui/trends/chart_axis.h"

#include "tests/ui/trends/made_up_trends.h"
#include "ui/common/look.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::ui::trends {

TEST(ChartAxis, TicksAreRoundAndHoldTheValues)
{
    const Ticks bars = ticksFor(0, 10'778, 5);
    EXPECT_EQ(bars.first, 0);
    EXPECT_EQ(bars.step, 2500);
    EXPECT_EQ(bars.last(), 12'500);
    EXPECT_EQ(bars.digits(), 0);
    const Ticks monotony = ticksFor(1, 2.5, 5);
    EXPECT_EQ(monotony.step, 0.5);
    EXPECT_EQ(monotony.digits(), 1);
    EXPECT_EQ(tickText(monotony, 1), QStringLiteral("1.5"));
}

TEST(ChartAxis, EqualValuesGetRoom)
{
    const Ticks ticks = ticksFor(60, 60, 5);
    EXPECT_LT(ticks.first, 60);
    EXPECT_GT(ticks.last(), 60);
}

RC_GTEST_PROP(ChartAxisProperty, TicksHoldWhatTheyAreFor, ())
{
    const double low = *rc::gen::inRange(0, 100'000) / 7.0;
    const double high = low + *rc::gen::inRange(1, 1'000'000) / 13.0;
    const Ticks ticks = ticksFor(low, high, 5);
    RC_ASSERT(ticks.count >= 2);
    RC_ASSERT(ticks.count <= 7);
    RC_ASSERT(ticks.first <= low + 1e-6 * high);
    RC_ASSERT(ticks.last() >= high - 1e-6 * high);
}

TEST(ChartAxis, AFramePlacesWeeksAndValues)
{
    const common::Look look;
    const ChartFrame frame = frameIn(QRectF(0, 0, 400, 200), {0, 25, 5}, 4, look.theme());
    EXPECT_EQ(frame.yOf(0), frame.plot.bottom());
    EXPECT_EQ(frame.yOf(100), frame.plot.top());
    EXPECT_DOUBLE_EQ(frame.middleOf(3) - frame.middleOf(2), frame.weekWidth());
    EXPECT_GT(frame.plot.left(), 0) << "room for the labels";
    EXPECT_LT(frame.plot.bottom(), 200);
}

TEST(ChartAxis, TheGridAndTheDatesAreDrawn)
{
    const common::Look look;
    const auto grid = painted([](QPainter& painter, const QRectF& area, const common::Theme& theme) {
        const ChartFrame frame = frameIn(area, {0, 25, 5}, 4, theme);
        paintGrid(painter, frame, theme);
        return HotSpots();
    }, look.theme());
    const auto both = painted([](QPainter& painter, const QRectF& area, const common::Theme& theme) {
        const ChartFrame frame = frameIn(area, {0, 25, 5}, 4, theme);
        paintGrid(painter, frame, theme);
        paintWeeks(painter, frame, madeUpClient().trends.weeks, theme);
        return HotSpots();
    }, look.theme());
    EXPECT_GT(grid.inked(look.theme()), 2000) << "five lines of some 500 pixels";
    EXPECT_GT(both.inked(look.theme()), grid.inked(look.theme()) + 50);
}

}  // namespace chalk::ui::trends
