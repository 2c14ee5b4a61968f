#include "ui/direction/plan_editor_monday.h"

#include "tests/ui/direction/plan_on_test.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

class MondayEntryTest : public ::testing::Test {
protected:
    MondayEntryTest()
    {
        m_entry.setMonday(firstMonday());
        m_entry.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_entry));
        m_entry.setFocus();
    }
    void type(const char* day)
    {
        m_entry.selectAll();
        QTest::keyClicks(&m_entry, QString::fromUtf8(day));
        QTest::keyClick(&m_entry, Qt::Key_Return);
    }

    MondayEntry m_entry;
};

TEST_F(MondayEntryTest, ArrowsGoFromWeekToWeek)
{
    EXPECT_EQ(m_entry.text(), QStringLiteral("30 Nov 2026"));
    QTest::keyClick(&m_entry, Qt::Key_Up);
    EXPECT_EQ(m_entry.monday(), firstMonday() + 7);
    QTest::keyClick(&m_entry, Qt::Key_Down);
    QTest::keyClick(&m_entry, Qt::Key_Down);
    EXPECT_EQ(m_entry.monday(), firstMonday() - 7);
    m_entry.setMonday(firstMonday() + 5);
    EXPECT_EQ(m_entry.monday(), firstMonday()) << "a Saturday stands for its Monday";
}

TEST_F(MondayEntryTest, AMondayIsTypedAndAnotherDayRefused)
{
    QSignalSpy refused(&m_entry, &MondayEntry::refused);
    type("4 Jan 2027");
    EXPECT_EQ(m_entry.monday(), firstMonday() + 35);
    EXPECT_EQ(refused.count(), 0);
    type("5 Jan 2027");
    EXPECT_EQ(m_entry.monday(), firstMonday() + 35);
    EXPECT_GE(refused.count(), 1);
    EXPECT_EQ(m_entry.text(), QStringLiteral("4 Jan 2027"));
}

}  // namespace chalk::ui::direction
