#include "tests/support/accessible_audit.h"
#include "ui/common/segmented_choice.h"

#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include <gtest/gtest.h>

namespace chalk::ui::common {

class SegmentedChoiceTest : public ::testing::Test {
protected:
    SegmentedChoiceTest() : m_choice(QStringLiteral("Where"), {{QStringLiteral("Left")}, {QStringLiteral("Both")}, {QStringLiteral("Right")}})
    {
        m_choice.show();
    }

    [[nodiscard]] QToolButton* button(int index) const { return m_choice.findChildren<QToolButton*>().at(index); }

    SegmentedChoice m_choice;
};

TEST_F(SegmentedChoiceTest, StartsWithNothingChosenAndTellsOnlyWhatThePersonDoes)
{
    const QSignalSpy made(&m_choice, &SegmentedChoice::choiceMade);
    EXPECT_EQ(m_choice.chosen(), -1);
    m_choice.setChosen(1);
    EXPECT_EQ(m_choice.chosen(), 1);
    m_choice.setChosen(-1);
    EXPECT_EQ(m_choice.chosen(), -1);
    EXPECT_EQ(made.count(), 0);
    QTest::mouseClick(button(2), Qt::LeftButton);
    EXPECT_EQ(m_choice.chosen(), 2);
    EXPECT_EQ(made.count(), 1);
}

TEST_F(SegmentedChoiceTest, ArrowsMoveAndDigitsChoose)
{
    const QSignalSpy made(&m_choice, &SegmentedChoice::choiceMade);
    QTest::keyClick(button(0), Qt::Key_Right);
    EXPECT_EQ(m_choice.chosen(), 1);
    QTest::keyClick(button(1), Qt::Key_Right);
    EXPECT_EQ(m_choice.chosen(), 2);
    QTest::keyClick(button(2), Qt::Key_Right);
    EXPECT_EQ(m_choice.chosen(), 2);
    QTest::keyClick(button(2), Qt::Key_1);
    EXPECT_EQ(m_choice.chosen(), 0);
    QTest::keyClick(button(0), Qt::Key_9);
    EXPECT_EQ(m_choice.chosen(), 0);
    EXPECT_EQ(made.count(), 3);
}

TEST_F(SegmentedChoiceTest, EverySegmentHasAName)
{
    EXPECT_EQ(tests::unnamedFocusables(m_choice), QStringList());
    EXPECT_EQ(tests::focusableCount(m_choice), 3);
    EXPECT_EQ(button(1)->accessibleName().toStdString(), "Where: Both");
}

}  // namespace chalk::ui::common
