#include "ui/direction/plan_chart.h"

#include "ui/common/look.h"

#include <QAccessible>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

class PlanChartTest : public ::testing::Test {
protected:
    PlanChartTest()
    {
        chalk::direction::PlanWishes wishes;
        wishes.start = *base::Date::parse("2026-11-30");
        wishes.lifts = {{base::LiftId(1), chalk::direction::LiftRole::Main, 2}};
        m_chart.resize(900, 360);
        m_chart.setScene(planChartScene(chalk::direction::planFor(wishes), {}, base::Date::parse("2026-12-15")));
        m_chart.show();
    }

    const common::Look m_look;
    PlanChart m_chart{m_look};
};

TEST_F(PlanChartTest, TheKeysGoFromWeekToWeekFromThePresentOneOn)
{
    EXPECT_FALSE(m_chart.chosen());
    QTest::keyClick(&m_chart, Qt::Key_Right);
    EXPECT_EQ(m_chart.chosen(), 2U);
    QTest::keyClick(&m_chart, Qt::Key_Right);
    EXPECT_EQ(m_chart.chosen(), 3U);
    QTest::keyClick(&m_chart, Qt::Key_End);
    QTest::keyClick(&m_chart, Qt::Key_Right);
    EXPECT_EQ(m_chart.chosen(), 11U);
    QTest::keyClick(&m_chart, Qt::Key_Home);
    QTest::keyClick(&m_chart, Qt::Key_Left);
    EXPECT_EQ(m_chart.chosen(), 0U);
}

TEST_F(PlanChartTest, ThePointerReadsTheWeekUnderIt)
{
    const PlanChartFrame frame = m_chart.frame();
    const double y = frame.plot.center().y();
    EXPECT_EQ(frame.weekAt({frame.centre(4), y}, 12), 4U);
    EXPECT_FALSE(frame.weekAt({frame.plot.left() - 5, y}, 12));
    EXPECT_FALSE(frame.weekAt({frame.plot.right() + 5, y}, 12));
    QTest::mouseMove(&m_chart, QPointF(frame.centre(4), y).toPoint());
    EXPECT_EQ(m_chart.chosen(), 4U);
}

TEST_F(PlanChartTest, AScreenReaderHearsTheWeekAsTheValue)
{
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&m_chart);
    ASSERT_NE(spoken, nullptr);
    EXPECT_EQ(spoken->text(QAccessible::Name), m_chart.scene().spoken);
    for (const PlanChartWeek& week : m_chart.scene().weeks) {
        EXPECT_TRUE(spoken->text(QAccessible::Value).contains(week.spoken));
    }
    QTest::keyClick(&m_chart, Qt::Key_Home);
    EXPECT_EQ(spoken->text(QAccessible::Value), m_chart.scene().weeks[0].spoken);
}

TEST_F(PlanChartTest, EverythingLiesOnTheAxes)
{
    const PlanChartFrame frame = m_chart.frame();
    EXPECT_LE(frame.highest, 100);
    EXPECT_LT(frame.yOfIntensity(1), frame.yOfIntensity(0.7));
    EXPECT_NEAR(frame.yOfSets(0), frame.plot.bottom(), 1e-9);
    for (const PlanChartWeek& week : m_chart.scene().weeks) {
        EXPECT_GE(frame.yOfIntensity(week.intensity), frame.plot.top());
        EXPECT_LT(frame.yOfIntensity(week.intensity), frame.plot.bottom());
        EXPECT_GT(frame.yOfSets(week.hardSets), frame.plot.top());
        EXPECT_LT(week.hardSets, frame.setsTop);
    }
}

}  // namespace chalk::ui::direction
