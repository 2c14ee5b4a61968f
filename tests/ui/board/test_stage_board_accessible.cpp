#include "ui/board/stage_board_accessible.h"

#include "tests/ui/board/client_fixture.h"
#include "ui/board/board_words.h"
#include "ui/board/stage_board.h"
#include "ui/common/look.h"

#include <QAccessible>
#include <QAccessibleActionInterface>

#include <gtest/gtest.h>

namespace chalk::ui::board {

class StageBoardAccessible : public ::testing::Test {
protected:
    StageBoardAccessible()
    {
        m_board.resize(900, 650);
        m_board.setColumns(columnsOf(test::ferro()));
        m_board.show();
        m_list = QAccessible::queryAccessibleInterface(&m_board);
    }

    common::Look m_look;
    StageBoard m_board{m_look};
    QAccessibleInterface* m_list = nullptr;
};

TEST_F(StageBoardAccessible, TheBoardIsAListOfLifts)
{
    ASSERT_NE(m_list, nullptr);
    EXPECT_EQ(m_list->role(), QAccessible::List);
    EXPECT_EQ(m_list->childCount(), 8);
    EXPECT_EQ(m_list->child(8), nullptr);
    EXPECT_EQ(m_list->indexOfChild(m_list->child(5)), 5);
}

TEST_F(StageBoardAccessible, EachLiftIsASentence)
{
    for (int i = 0; i < 8; ++i) {
        EXPECT_EQ(m_list->child(i)->text(QAccessible::Name), m_board.columns()[static_cast<std::size_t>(i)].spoken);
        EXPECT_EQ(m_list->child(i)->role(), QAccessible::ListItem);
    }
}

TEST_F(StageBoardAccessible, ALiftLiesWhereItIsPainted)
{
    const QRect rect = m_list->child(3)->rect();
    const QRect painted = m_board.geometryNow().columnRect(3).toAlignedRect();
    EXPECT_EQ(rect.topLeft(), m_board.mapToGlobal(painted.topLeft()));
    EXPECT_EQ(m_list->childAt(rect.center().x(), rect.center().y()), m_list->child(3));
}

TEST_F(StageBoardAccessible, ALiftCanBeSelected)
{
    QAccessibleInterface* lift = m_list->child(2);
    EXPECT_FALSE(lift->state().selected);
    lift->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(m_board.selected(), 2);
    EXPECT_TRUE(lift->state().selected);
}

TEST_F(StageBoardAccessible, ALiftThatIsGoneIsNotValid)
{
    QAccessibleInterface* last = m_list->child(7);
    BoardColumns fewer = m_board.columns();
    fewer.resize(3);
    m_board.setColumns(fewer);
    EXPECT_FALSE(last->isValid());
    EXPECT_TRUE(last->text(QAccessible::Name).isEmpty());
    EXPECT_EQ(m_list->childCount(), 3);
}

}  // namespace chalk::ui::board
