#include "ui/direction/missed_weeks.h"

#include "tests/support/accessible_audit.h"
#include "tests/support/lift_on_test.h"
#include "tests/ui/direction/plan_on_test.h"
#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"

#include <QListWidget>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

using chalk::direction::MissedWeeks;

class MissedWeeksDialogTest : public ::testing::Test {
protected:
    MissedWeeksDialogTest()
    {
        m_dialog.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_dialog));
    }
    /// In the third week; nothing was done in the second.
    static MissedWeeksCase facts()
    {
        MissedWeeksCase facts;
        facts.plan = caseOnTest().plan;
        facts.done = {{{firstMonday() + 1, test::kilos(80), base::Reps(4)}}, {}, {}};
        facts.client = QStringLiteral("Sefa Reid");
        facts.today = firstMonday() + 15;
        return facts;
    }
    QListWidget& weeks() { return *m_dialog.findChild<QListWidget*>(); }
    std::string textAt(int row, int column) { return m_dialog.findChild<QTableWidget*>()->item(row, column)->text().toStdString(); }

    const common::Look m_look;
    MissedWeeksDialog m_dialog{m_look, facts()};
};

TEST_F(MissedWeeksDialogTest, MarksWhatLooksMissed)
{
    EXPECT_EQ(m_dialog.missed(), std::vector{firstMonday() + 7});
    EXPECT_EQ(weeks().item(1)->data(Qt::AccessibleTextRole).toString(), QStringLiteral("2  7 Dec, Base · nothing done"));
    EXPECT_EQ(m_dialog.way(), MissedWeeks::Shift);
    EXPECT_EQ(textAt(1, 2), "missed");
    EXPECT_EQ(textAt(12, 2), "12  Test");
}

TEST_F(MissedWeeksDialogTest, SpaceMarksAndEnterAnswersTheChangedPlan)
{
    ASSERT_TRUE(weeks().hasFocus());
    QTest::keyClick(&weeks(), Qt::Key_Down);
    QTest::keyClick(&weeks(), Qt::Key_Space);
    const std::vector both{firstMonday() + 7, firstMonday() + 14};
    EXPECT_EQ(m_dialog.missed(), both);
    QTest::keyClick(&weeks(), Qt::Key_Return);
    EXPECT_EQ(m_dialog.result(), QDialog::Accepted);
    auto wanted = facts().plan;
    wanted.plan = withMissedWeeks(wanted.plan, both, MissedWeeks::Shift);
    EXPECT_EQ(m_dialog.plan(), wanted);
}

TEST_F(MissedWeeksDialogTest, SqueezeIsChosenByTheMouse)
{
    for (QToolButton* segment : m_dialog.findChildren<QToolButton*>()) {
        if (segment->text() == QStringLiteral("Squeeze")) {
            QTest::mouseClick(segment, Qt::LeftButton);
        }
    }
    EXPECT_EQ(m_dialog.way(), MissedWeeks::Squeeze);
    EXPECT_EQ(m_dialog.plan().plan, withMissedWeeks(facts().plan.plan, m_dialog.missed(), MissedWeeks::Squeeze));
    EXPECT_EQ(m_dialog.plan().plan.weeks.size(), 11U);
}

TEST_F(MissedWeeksDialogTest, NothingMarkedCannotBeKept)
{
    weeks().setCurrentRow(1);
    QTest::keyClick(&weeks(), Qt::Key_Space);
    EXPECT_TRUE(m_dialog.missed().empty());
    QTest::keyClick(&weeks(), Qt::Key_Return);
    EXPECT_TRUE(m_dialog.isVisible());
    EXPECT_EQ(m_dialog.plan(), facts().plan);
}

TEST_F(MissedWeeksDialogTest, NamesWhatTakesTheFocus)
{
    EXPECT_GT(tests::focusableCount(m_dialog), 3);
    EXPECT_EQ(tests::unnamedFocusables(m_dialog), QStringList());
}

}  // namespace chalk::ui::direction
