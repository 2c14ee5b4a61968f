#include "ui/common/hours_grid.h"

#include "ui/common/look.h"

#include <QApplication>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::common {

class HoursGridTest : public ::testing::Test {
protected:
    HoursGridTest()
    {
        m_grid.resize(700, 700);
        m_grid.show();
        m_grid.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_grid, 5000));
        m_grid.setFocus();
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) { QTest::keyClick(&m_grid, key, modifiers); }

    Look m_look;
    HoursGrid m_grid{m_look};
};

TEST_F(HoursGridTest, ArrowsMoveAndKeysPaint)
{
    QSignalSpy painted(&m_grid, &HoursGrid::painted);
    press(Qt::Key_F);
    press(Qt::Key_Down);
    press(Qt::Key_R);
    press(Qt::Key_Right);
    press(Qt::Key_Space);
    EXPECT_EQ(painted.size(), 3);
    EXPECT_EQ(m_grid.free().stretches(), (std::vector<clients::DayHours>{{0, 540, 600}, {1, 570, 600}}));
    EXPECT_EQ(m_grid.preferred().stretches(), (std::vector<clients::DayHours>{{0, 570, 600}})) << "what is preferred is free too";
}

TEST_F(HoursGridTest, ShiftSelectsABlockAndDeleteEmptiesIt)
{
    press(Qt::Key_Right, Qt::ShiftModifier);
    press(Qt::Key_Down, Qt::ShiftModifier);
    press(Qt::Key_Down, Qt::ShiftModifier);
    press(Qt::Key_F);
    EXPECT_EQ(m_grid.free().stretches(), (std::vector<clients::DayHours>{{0, 540, 630}, {1, 540, 630}}));
    press(Qt::Key_Delete);
    EXPECT_TRUE(m_grid.free().isEmpty());
}

TEST_F(HoursGridTest, StopsAtTheEdgesAndTheNightCanBeReached)
{
    for (int i = 0; i < 60; ++i) {
        press(Qt::Key_Up);
        press(Qt::Key_Left);
    }
    press(Qt::Key_F);
    EXPECT_TRUE(m_grid.free().isSet(0, 12)) << "six o'clock";
    m_grid.setWholeDay(true);
    for (int i = 0; i < 60; ++i) {
        press(Qt::Key_Up);
    }
    press(Qt::Key_F);
    EXPECT_TRUE(m_grid.free().isSet(0, 0));
    for (int i = 0; i < 60; ++i) {
        press(Qt::Key_Down);
    }
    press(Qt::Key_F);
    EXPECT_TRUE(m_grid.free().isSet(0, 47));
}

TEST_F(HoursGridTest, HoursOfTheNightThatAreSetAreShownWithoutAsking)
{
    const int folded = m_grid.sizeHint().height();
    clients::WeekHours early;
    ASSERT_TRUE(early.add({2, 5 * 60, 6 * 60}));
    m_grid.setHours(early, {});
    EXPECT_GT(m_grid.sizeHint().height(), folded);
}

TEST_F(HoursGridTest, ADragPaintsABlockAndIsOneChange)
{
    QSignalSpy painted(&m_grid, &HoursGrid::painted);
    QTest::mousePress(&m_grid, Qt::LeftButton, {}, QPoint(100, 100));
    QMouseEvent move(QEvent::MouseMove, QPointF(300, 300), m_grid.mapToGlobal(QPointF(300, 300)), Qt::NoButton, Qt::LeftButton, {});
    QApplication::sendEvent(&m_grid, &move);
    EXPECT_EQ(painted.size(), 0);
    QTest::mouseRelease(&m_grid, Qt::LeftButton, {}, QPoint(300, 300));
    EXPECT_EQ(painted.size(), 1);
    EXPECT_GE(m_grid.free().stretches().size(), 2U);
}

TEST_F(HoursGridTest, SaysWhereItIsAndWhatIsThere)
{
    EXPECT_TRUE(m_grid.accessibleDescription().isEmpty() || m_grid.accessibleDescription().contains(QStringLiteral("not free")));
    press(Qt::Key_R);
    EXPECT_EQ(m_grid.accessibleDescription(), QStringLiteral("Monday 09:00, preferred"));
    press(Qt::Key_Down);
    EXPECT_EQ(m_grid.accessibleDescription(), QStringLiteral("Monday 09:30, not free"));
}

}  // namespace chalk::ui::common
