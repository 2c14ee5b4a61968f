#include "ui/check_in/chart_geometry.h"

#include "tests/ui/check_in/check_in_fixture.h"
#include "ui/common/look.h"

#include <gtest/gtest.h>

namespace chalk::ui::check_in {

class ChartGeometryTest : public ::testing::Test {
protected:
    [[nodiscard]] ChartFrame frameOf(const ChartScene& scene, QSizeF size = {720, 260}) const { return chartFrame(scene, size, m_look.theme()); }

    common::Look m_look;
    const CheckInCase m_page = test::tomasz();
    const ChartScene m_single = singleScene(m_page.evidence, m_page.evidence.lifts[1]);
    const ChartScene m_stages = stagesScene(m_page.evidence, m_page.evidence.lifts[1]);
};

TEST_F(ChartGeometryTest, DaysRunFromEdgeToEdge)
{
    const ChartFrame frame = frameOf(m_single);
    EXPECT_DOUBLE_EQ(frame.xOf(frame.days.from), frame.plot.left());
    EXPECT_DOUBLE_EQ(frame.xOf(frame.days.to + 1), frame.plot.right());
    EXPECT_DOUBLE_EQ(frame.yOf(m_single.axis.low), frame.plot.bottom());
    EXPECT_DOUBLE_EQ(frame.yOf(m_single.axis.high), frame.plot.top());
    const QRectF outside = frame.rectOf({frame.days.from - 30, frame.days.from - 20});
    EXPECT_DOUBLE_EQ(outside.width(), 0);
}

TEST_F(ChartGeometryTest, LabelsNeverRunIntoEachOther)
{
    for (const double width : {220.0, 400.0, 700.0, 1400.0}) {
        const ChartFrame frame = frameOf(m_stages, {width, 200});
        const auto days = labelledDays(frame, m_look.theme());
        ASSERT_GE(days.size(), 2U);
        EXPECT_EQ(days.front().weekday(), 0);
        EXPECT_GE(frame.xOf(days[1]) - frame.xOf(days[0]), 46) << width;
    }
}

TEST_F(ChartGeometryTest, KeysGoFromPointToPointAndStayAtTheEnds)
{
    const auto first = steppedPoint(m_single, std::nullopt, 1);
    ASSERT_TRUE(first);
    EXPECT_EQ(first->point, 0U);
    EXPECT_EQ(steppedPoint(m_single, first, -1), first);
    EXPECT_EQ(steppedPoint(m_single, first, 1)->point, 1U);
    EXPECT_EQ(steppedPoint(m_single, first, 1000)->point, m_single.series.front().points.size() - 1);
    EXPECT_FALSE(steppedPoint(ChartScene(), std::nullopt, 1));
}

TEST_F(ChartGeometryTest, UpAndDownPassSeriesWithoutPoints)
{
    ASSERT_TRUE(m_stages.series[0].points.empty()) << "the squat has no stages here";
    const PointIndex bench{1, 1};
    EXPECT_EQ(otherSeriesPoint(m_stages, bench, -1), bench);
    ChartScene both = m_stages;
    both.series[0].points = both.series[1].points;
    EXPECT_EQ(otherSeriesPoint(both, bench, -1), (PointIndex{0, 1}));
}

TEST_F(ChartGeometryTest, ThePointerFindsTheNearestPointWithinItsReach)
{
    const ChartFrame frame = frameOf(m_single);
    const QPointF third = frame.at(m_single.series.front().points[2], 0);
    EXPECT_EQ(nearestPoint(m_single, frame, third + QPointF(3, -4), 28), (PointIndex{0, 2}));
    EXPECT_FALSE(nearestPoint(m_single, frame, QPointF(frame.plot.right() + 400, third.y()), 28));
}

}  // namespace chalk::ui::check_in
