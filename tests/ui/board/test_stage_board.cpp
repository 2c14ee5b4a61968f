#include "ui/board/stage_board.h"

#include "tests/ui/board/client_fixture.h"
#include "ui/board/board_words.h"
#include "ui/common/look.h"

#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::board {

using progression::Stage;

class StageBoardTest : public ::testing::Test {
protected:
    void show(const ClientCase& client, QSize size = {900, 650})
    {
        m_board.resize(size);
        m_board.setColumns(columnsOf(client));
        m_board.show();
        m_board.setFocus();
    }

    void click(BoardPart part, int column)
    {
        for (const BoardBox& box : m_board.geometryNow().boxesOf(column, m_board.columns()[static_cast<std::size_t>(column)])) {
            if (box.part == part) {
                QTest::mouseClick(&m_board, Qt::LeftButton, {}, box.rect.center().toPoint());
                return;
            }
        }
        FAIL() << "the column has no such part";
    }

    common::Look m_look;
    StageBoard m_board{m_look};
};

TEST_F(StageBoardTest, LeftAndRightChooseALiftAndStopAtTheEnds)
{
    show(test::ferro());
    const QSignalSpy chosen(&m_board, &StageBoard::selectionChanged);
    EXPECT_EQ(m_board.selected(), 0);
    QTest::keyClick(&m_board, Qt::Key_Left);
    EXPECT_EQ(m_board.selected(), 0);
    QTest::keyClick(&m_board, Qt::Key_Right);
    QTest::keyClick(&m_board, Qt::Key_Right);
    EXPECT_EQ(m_board.selected(), 2);
    QTest::keyClick(&m_board, Qt::Key_End);
    QTest::keyClick(&m_board, Qt::Key_Right);
    EXPECT_EQ(m_board.selected(), 7);
    EXPECT_EQ(chosen.count(), 3);
}

TEST_F(StageBoardTest, UpAndDownReadTheRungsAndEscapeEndsIt)
{
    show(test::ferro());
    const QSignalSpy read(&m_board, &StageBoard::rungRead);
    const Stage present = m_board.columns().front().stage;
    QTest::keyClick(&m_board, Qt::Key_Down);
    EXPECT_EQ(m_board.rung(), present);
    QTest::keyClick(&m_board, Qt::Key_Down);
    EXPECT_EQ(numberOf(*m_board.rung()), numberOf(present) - 1);
    for (int i = 0; i < 10; ++i) {
        QTest::keyClick(&m_board, Qt::Key_Down);
    }
    EXPECT_EQ(m_board.rung(), Stage::Pattern);
    QTest::keyClick(&m_board, Qt::Key_Escape);
    EXPECT_FALSE(m_board.rung());
    EXPECT_GE(read.count(), 3);
}

TEST_F(StageBoardTest, AnotherLiftEndsTheReading)
{
    show(test::ferro());
    QTest::keyClick(&m_board, Qt::Key_Up);
    ASSERT_TRUE(m_board.rung());
    QTest::keyClick(&m_board, Qt::Key_Right);
    EXPECT_FALSE(m_board.rung());
}

TEST_F(StageBoardTest, EnterOpensTheSessionsOfTheRungThatIsRead)
{
    show(test::ferro());
    int column = -1;
    std::optional<Stage> stage = Stage::RestCut;
    QObject::connect(&m_board, &StageBoard::sessionsAsked, &m_board, [&](int c, std::optional<Stage> s) {
        column = c;
        stage = s;
    });
    QTest::keyClick(&m_board, Qt::Key_Return);
    EXPECT_EQ(column, 0);
    EXPECT_FALSE(stage);
    QTest::keyClick(&m_board, Qt::Key_Up);
    QTest::keyClick(&m_board, Qt::Key_Return);
    EXPECT_EQ(stage, m_board.columns().front().stage);
}

TEST_F(StageBoardTest, AClickAsksForWhatItPointsAt)
{
    show(test::ferro());
    const QSignalSpy evidence(&m_board, &StageBoard::evidenceAsked);
    std::optional<Stage> stage;
    QObject::connect(&m_board, &StageBoard::sessionsAsked, &m_board, [&](int /*column*/, std::optional<Stage> s) { stage = s; });
    click(BoardPart::Need, 1);
    EXPECT_EQ(m_board.selected(), 1);
    EXPECT_EQ(evidence.count(), 1);
    click(BoardPart::Date, 2);
    EXPECT_EQ(m_board.selected(), 2);
    EXPECT_TRUE(stage);
    click(BoardPart::Block, 3);
    EXPECT_EQ(m_board.selected(), 3);
    EXPECT_EQ(evidence.count(), 1);
}

TEST_F(StageBoardTest, OnlyAScreenThatCanBeOpenedIsOffered)
{
    ClientCase none = test::ferro();
    none.lifts.clear();
    none.clearance.state = clients::ClearanceState::Unanswered;
    show(none);
    const QSignalSpy asked(&m_board, &StageBoard::screenAsked);
    QTest::keyClick(&m_board, Qt::Key_Return);
    EXPECT_EQ(asked.count(), 0);
    none.clearance = {};
    show(none);
    QTest::keyClick(&m_board, Qt::Key_Return);
    EXPECT_EQ(asked.count(), 1);
}

TEST_F(StageBoardTest, TenLiftsScrollAndTheSelectedOneIsInView)
{
    show(test::clientWithLifts(10));
    auto* bar = m_board.findChild<QScrollBar*>();
    ASSERT_TRUE(bar->isVisible());
    QTest::keyClick(&m_board, Qt::Key_End);
    EXPECT_GT(bar->value(), 0);
    const BoardGeometry geometry = m_board.geometryNow();
    EXPECT_TRUE(geometry.columnsArea().adjusted(-1, 0, 1, 0).contains(geometry.columnRect(9)));
    QTest::keyClick(&m_board, Qt::Key_Home);
    EXPECT_EQ(bar->value(), 0);
}

TEST_F(StageBoardTest, EightLiftsDoNotScroll)
{
    show(test::ferro(), {814, 543});
    EXPECT_FALSE(m_board.findChild<QScrollBar*>()->isVisible());
}

TEST_F(StageBoardTest, TheSelectedLiftStaysSelectedWhenTheBoardIsReadAgain)
{
    show(test::ferro());
    m_board.select(4);
    m_board.setColumns(columnsOf(test::clientWithLifts(10)));
    EXPECT_EQ(m_board.columns()[static_cast<std::size_t>(m_board.selected())].lift, base::LiftId(5));
}

TEST_F(StageBoardTest, WithoutMotionTheWashIsThereAtOnce)
{
    show(test::ferro());
    m_board.setMotion(false);
    m_board.select(3);
    const QImage at = m_board.grab().toImage();
    QTest::qWait(0);
    const QRect column = m_board.geometryNow().columnRect(3).toRect();
    EXPECT_EQ(at.pixelColor(column.center().x(), column.top() + 3), m_look.theme().wash);
}

}  // namespace chalk::ui::board
