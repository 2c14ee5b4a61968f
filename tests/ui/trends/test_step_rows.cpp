#include "ui/trends/step_rows.h"

#include "tests/ui/trends/made_up_trends.h"
#include "ui/common/look.h"

#include <gtest/gtest.h>

namespace chalk::ui::trends {

namespace {

PaintedChart stepsOf(const checkin::Trends& trends, QSize size)
{
    const common::Look look;
    return painted([&trends](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintSteps(painter, area, trends, theme); }, look.theme(),
                   size);
}

}  // namespace

TEST(StepRows, ALiftARow)
{
    const auto chart = stepsOf(madeUpClient().trends, {420, 260});
    ASSERT_EQ(chart.spots.size(), 2U);
    EXPECT_EQ(chart.spots[0].words, QStringLiteral("Back squat\nfrom 2 Nov: 3 × 5–8, rest 2:30\nfrom 11 Nov: 3 × 8, rest 2:15"));
    EXPECT_LE(chart.spots[0].area.bottom(), chart.spots[1].area.top() + 0.5);
}

TEST(StepRows, WhatHasNoRoomIsInTheTable)
{
    checkin::Trends trends = madeUpClient().trends;
    trends.lifts.resize(10, trends.lifts.front());
    EXPECT_EQ(stepsOf(trends, {420, 400}).spots.size(), 10U);
    const auto cut = stepsOf(trends, {420, 160});
    EXPECT_GT(cut.spots.size(), 1U);
    EXPECT_LT(cut.spots.size(), 6U);
    EXPECT_LE(cut.spots.back().area.bottom(), 160);
}

TEST(StepRows, WhatNeverLeftBaseLoadHasNone)
{
    EXPECT_TRUE(liftsWithSteps(madeUpBeginner().trends).empty());
    EXPECT_EQ(liftsWithSteps(madeUpClient().trends).size(), 2U);
}

}  // namespace chalk::ui::trends
