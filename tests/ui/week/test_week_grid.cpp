#include "ui/week/week_grid.h"

#include "tests/ui/week/week_fixture.h"
#include "ui/common/look.h"
#include "ui/week/block_spoken.h"

#include <QAccessible>
#include <QApplication>
#include <QDropEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>

namespace chalk::ui::week {

using chalk::week::kDayMinutes;
using chalk::week::Slot;
using test::clock;

/// Ada on Monday at nine, Bo on Tuesday at nine and at eleven, Cleo on Thursday at nine with Tobias. Nothing may begin before eight.
class WeekGridTest : public ::testing::Test {
protected:
    WeekGridTest() : m_grid(m_look, rules())
    {
        chalk::week::WeekFacts facts = test::someWeek();
        test::book(test::addClient(facts, "Ada Lund"), 0, clock(9));
        chalk::week::ClientOfWeek& bo = test::addClient(facts, "Bo Arden");
        test::book(bo, 1, clock(9));
        test::book(bo, 1, clock(11));
        test::book(test::addClient(facts, "Cleo Marsh"), 3, clock(9), 2);
        m_grid.resize(900, 700);
        m_grid.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_grid));
        m_grid.setScene(test::WeekOnTest(facts).scene());
        m_grid.setFocus();
        QObject::connect(&m_grid, &WeekGrid::dropped, &m_grid, [this](const std::vector<std::size_t>& wishes, const Slot& slot) { m_drops.emplace_back(wishes, slot); });
    }

    MoveRules rules()
    {
        return {[](const std::vector<std::size_t>&, const Slot& slot) { return slot.start % kDayMinutes < clock(8) ? QStringLiteral("Too early.") : QString(); },
                [](const std::vector<std::size_t>&) { return std::vector<Slot>{{0, clock(7)}}; }, [](std::size_t) { return ConflictWords(); }};
    }
    void press(int key) { QTest::keyClick(&m_grid, static_cast<Qt::Key>(key)); }
    QPoint pointOf(const Slot& slot) const { return (m_grid.geometryNow().slotRect(slot, 15).center() - m_grid.offset()).toPoint(); }
    void drag(const Slot& from, const Slot& to)
    {
        QTest::mousePress(m_grid.viewport(), Qt::LeftButton, {}, pointOf(from));
        QMouseEvent move(QEvent::MouseMove, pointOf(to), m_grid.viewport()->mapToGlobal(pointOf(to)), Qt::NoButton, Qt::LeftButton, {});
        QApplication::sendEvent(m_grid.viewport(), &move);
        QTest::mouseRelease(m_grid.viewport(), Qt::LeftButton, {}, pointOf(to));
    }

    const common::Look m_look;
    std::vector<std::pair<std::vector<std::size_t>, Slot>> m_drops;
    WeekGrid m_grid;
};

TEST_F(WeekGridTest, TheArrowsGoFromBlockToBlock)
{
    EXPECT_EQ(m_grid.selected(), 0);
    press(Qt::Key_Right);
    EXPECT_EQ(m_grid.selectedBlock()->start(), kDayMinutes + clock(9));
    press(Qt::Key_Down);
    EXPECT_EQ(m_grid.selectedBlock()->start(), kDayMinutes + clock(11));
    press(Qt::Key_Down);
    EXPECT_EQ(m_grid.selectedBlock()->day, 1) << "the last of its day";
    press(Qt::Key_Right);
    EXPECT_EQ(m_grid.selectedBlock()->day, 3);
    press(Qt::Key_Right);
    EXPECT_EQ(m_grid.selectedBlock()->day, 3);
    press(Qt::Key_Left);
    EXPECT_EQ(m_grid.selectedBlock()->day, 1);
}

TEST_F(WeekGridTest, EnterOpensTheBlock)
{
    QSignalSpy opened(&m_grid, &WeekGrid::blockOpened);
    press(Qt::Key_Return);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened.front().front().toInt(), 0);
}

TEST_F(WeekGridTest, WhatMovesIsMovedByTheArrowsAndPutDownByEnter)
{
    m_grid.beginMove({0}, Slot{0, clock(9)}, 60, QStringLiteral("Ada"));
    press(Qt::Key_Down);
    EXPECT_EQ(m_grid.ghost().slot, (Slot{0, clock(9, 15)}));
    press(Qt::Key_Right);
    EXPECT_EQ(m_grid.ghost().slot, (Slot{1, clock(9, 15)}));
    press(Qt::Key_Right);
    EXPECT_EQ(m_grid.ghost().slot, (Slot{0, kDayMinutes + clock(9, 15)})) << "the next day";
    press(Qt::Key_Return);
    ASSERT_EQ(m_drops.size(), 1U);
    EXPECT_EQ(m_drops[0].second, (Slot{0, kDayMinutes + clock(9, 15)}));
    EXPECT_FALSE(m_grid.isMoving());
}

TEST_F(WeekGridTest, WhereARuleIsInTheWayItIsNotPutDownAndEscLetsItBe)
{
    QString reason;
    QObject::connect(&m_grid, &WeekGrid::moving, &m_grid, [&reason](const QString&, const QString& why) { reason = why; });
    m_grid.beginMove({0}, Slot{0, clock(7, 45)}, 60, QStringLiteral("Ada"));
    EXPECT_EQ(reason, QStringLiteral("Too early."));
    EXPECT_FALSE(m_grid.ghost().isLegal);
    press(Qt::Key_Return);
    EXPECT_TRUE(m_grid.isMoving());
    press(Qt::Key_Escape);
    EXPECT_FALSE(m_grid.isMoving());
    EXPECT_TRUE(reason.isEmpty());
    EXPECT_TRUE(m_drops.empty());
}

TEST_F(WeekGridTest, ABlockIsDraggedByWhereItWasTaken)
{
    drag({0, clock(9, 30)}, {0, 2 * kDayMinutes + clock(14, 30)});
    ASSERT_EQ(m_drops.size(), 1U);
    EXPECT_EQ(m_drops[0].second, (Slot{0, 2 * kDayMinutes + clock(14)}));
    drag({0, clock(9)}, {0, clock(6)});
    EXPECT_EQ(m_drops.size(), 1U) << "too early";
    EXPECT_FALSE(m_grid.isMoving());
}

TEST_F(WeekGridTest, AClickAloneMovesNothing)
{
    QSignalSpy clicked(&m_grid, &WeekGrid::blockClicked);
    QTest::mouseClick(m_grid.viewport(), Qt::LeftButton, {}, pointOf({0, kDayMinutes + clock(9)}));
    ASSERT_EQ(clicked.count(), 1);
    EXPECT_EQ(m_grid.selectedBlock()->day, 1);
    EXPECT_TRUE(m_drops.empty());
    QTest::mouseClick(m_grid.viewport(), Qt::LeftButton, {}, pointOf({1, 2 * kDayMinutes + clock(15)}));
    EXPECT_EQ(m_grid.place(), (Slot{1, 2 * kDayMinutes + clock(15)}));
}

TEST_F(WeekGridTest, WhatIsLeftOverIsDroppedOntoIt)
{
    QMimeData mime;
    mime.setData(QLatin1String(kWishMime), "7");
    mime.setText(QStringLiteral("Gwen"));
    const Slot slot{1, 2 * kDayMinutes + clock(12)};
    QDragEnterEvent enter(pointOf({0, clock(9)}), Qt::MoveAction, &mime, Qt::LeftButton, {});
    QApplication::sendEvent(m_grid.viewport(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(pointOf(slot), Qt::MoveAction, &mime, Qt::LeftButton, {});
    QApplication::sendEvent(m_grid.viewport(), &drop);
    ASSERT_EQ(m_drops.size(), 1U);
    EXPECT_EQ(m_drops[0], std::pair(std::vector<std::size_t>{7}, slot));
}

TEST_F(WeekGridTest, ScreenReadersHearEveryBlock)
{
    QAccessibleInterface* list = QAccessible::queryAccessibleInterface(&m_grid);
    ASSERT_NE(list, nullptr);
    ASSERT_EQ(list->childCount(), 4);
    EXPECT_EQ(list->child(1)->text(QAccessible::Name), QStringLiteral("Tuesday 09:00 to 10:00, Ines: Bo Arden. 1 of 3 places taken. Conflict.")) << "two on one day";
    EXPECT_FALSE(list->child(1)->rect().isEmpty());
    EXPECT_EQ(list->child(9), nullptr);
}

}  // namespace chalk::ui::week
