#include "ui/direction/plan_editor.h"

#include "tests/support/accessible_audit.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/ui/direction/plan_on_test.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"
#include "ui/direction/plan_editor_monday.h"
#include "ui/direction/plan_editor_sheet.h"
#include "ui/direction/plan_editor_table.h"
#include "ui/direction/plan_editor_words.h"

#include <QAbstractButton>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QScrollBar>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

class PlanEditorTest : public ::testing::Test {
protected:
    PlanEditorTest()
    {
        m_editor.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_editor));
    }
    template <class Widget>
    Widget& named(const char* name)
    {
        for (Widget* widget : m_editor.findChildren<Widget*>()) {
            if (widget->accessibleName() == QLatin1String(name)) {
                return *widget;
            }
        }
        throw std::logic_error(name);
    }
    QAbstractButton& button(const char* text)
    {
        for (QAbstractButton* one : m_editor.findChildren<QAbstractButton*>()) {
            if (one->text() == QLatin1String(text)) {
                return *one;
            }
        }
        throw std::logic_error(text);
    }
    PlanEditorTable& table() { return *m_editor.findChild<PlanEditorTable*>(); }
    /// What stands in a cell of the lift that is shown.
    std::string textAt(int row, int column)
    {
        return table().model()->index(row, PlanEditorSheet::FirstWorkColumn + column).data().toString().toStdString();
    }
    void goTo(int row, int column) { table().setCurrentIndex(table().model()->index(row, PlanEditorSheet::FirstWorkColumn + column)); }
    /// Types into whatever has the focus, key by key.
    static void type(const char* keys)
    {
        for (const char* key = keys; *key != '\0'; ++key) {
            QTest::keyClick(QApplication::focusWidget(), *key);
        }
    }
    static void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(QApplication::focusWidget(), key, modifiers); }
    /// Row and work column of the current cell.
    std::pair<int, int> current() { return {table().currentIndex().row(), table().currentIndex().column() - PlanEditorSheet::FirstWorkColumn}; }

    const common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
    PlanEditor m_editor{m_look, m_dialogs, caseOnTest()};
};

TEST_F(PlanEditorTest, DigitsAreWrittenAndEnterGoesDown)
{
    ASSERT_TRUE(table().hasFocus());
    ASSERT_EQ(current(), std::pair(0, 0));
    type("6");
    press(Qt::Key_Return);
    type("3");
    press(Qt::Key_Return);
    EXPECT_EQ(textAt(0, PlanEditorSheet::SetsColumn), "6");
    EXPECT_EQ(textAt(1, PlanEditorSheet::SetsColumn), "3");
    EXPECT_EQ(current(), std::pair(2, 0));
    EXPECT_TRUE(table().hasFocus());
    EXPECT_EQ(m_editor.plan().plan.weeks[0].work[0][0].scheme.sets, base::Sets(6));
}

TEST_F(PlanEditorTest, TabGoesAcrossWhatCanBeEdited)
{
    goTo(0, PlanEditorSheet::ShareColumn);
    type("82.5");
    press(Qt::Key_Tab);
    EXPECT_EQ(textAt(0, PlanEditorSheet::ShareColumn), "82.5");
    EXPECT_EQ(textAt(0, PlanEditorSheet::LoadColumn), "82.5");
    EXPECT_EQ(current(), std::pair(0, static_cast<int>(PlanEditorSheet::RestColumn))) << "the load is passed over";
    press(Qt::Key_Backtab);
    EXPECT_EQ(current(), std::pair(0, static_cast<int>(PlanEditorSheet::ShareColumn)));
    goTo(0, PlanEditorSheet::SetsColumn);
    press(Qt::Key_Backtab);
    EXPECT_FALSE(table().hasFocus()) << "before the first cell the table is left";
}

TEST_F(PlanEditorTest, WhatIsBadIsRefusedInTheCell)
{
    goTo(0, PlanEditorSheet::ShareColumn);
    type("150");
    press(Qt::Key_Return);
    EXPECT_EQ(m_editor.saying(), editFaultText(EditFault::ShareRange));
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(line, nullptr) << "the cell stays open";
    EXPECT_TRUE(line->property("invalid").toBool());
    EXPECT_EQ(textAt(0, PlanEditorSheet::ShareColumn), "80");
    type("85");
    press(Qt::Key_Return);
    EXPECT_EQ(textAt(0, PlanEditorSheet::ShareColumn), "85");
    EXPECT_EQ(m_editor.saying(), QString());
}

TEST_F(PlanEditorTest, EscLeavesACellAndThenAsks)
{
    type("9");
    press(Qt::Key_Escape);
    EXPECT_EQ(textAt(0, PlanEditorSheet::SetsColumn), "4");
    EXPECT_TRUE(m_editor.isVisible());
    type("5");
    press(Qt::Key_Return);
    press(Qt::Key_Escape);
    EXPECT_EQ(m_dialogs.asked.size(), 1U);
    EXPECT_TRUE(m_editor.isVisible()) << "the safe answer goes on";
    m_dialogs.answers = {1};
    press(Qt::Key_Escape);
    EXPECT_FALSE(m_editor.isVisible());
    EXPECT_EQ(m_editor.result(), QDialog::Rejected);
}

TEST_F(PlanEditorTest, UndoAndRedoByKeys)
{
    const auto before = m_editor.plan();
    type("6");
    press(Qt::Key_Return);
    const auto after = m_editor.plan();
    EXPECT_TRUE(button("Undo").isEnabled());
    EXPECT_FALSE(button("Redo").isEnabled());
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(m_editor.plan(), before);
    EXPECT_FALSE(button("Undo").isEnabled());
    EXPECT_TRUE(button("Redo").isEnabled());
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(m_editor.plan(), after);
}

TEST_F(PlanEditorTest, CtrlDCopiesTheRowDownAndSpaceSetsMarks)
{
    type("6");
    press(Qt::Key_Return);
    goTo(0, PlanEditorSheet::RestColumn);
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(m_editor.plan().plan.weeks[1].work[0], m_editor.plan().plan.weeks[0].work[0]);
    goTo(0, PlanEditorSheet::PauseColumn);
    press(Qt::Key_Space);
    EXPECT_TRUE(m_editor.plan().plan.weeks[0].work[0][0].isPauseAsked);
    table().setCurrentIndex(table().model()->index(0, PlanEditorSheet::KindColumn));
    press(Qt::Key_Space);
    EXPECT_EQ(m_editor.plan().plan.weeks[0].kind, chalk::direction::WeekKind::Lighter);
}

TEST_F(PlanEditorTest, AMarkIsSetByTheMouse)
{
    goTo(2, PlanEditorSheet::PauseColumn);
    const QRect cell = table().visualRect(table().currentIndex());
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, cell.center());
    EXPECT_TRUE(m_editor.plan().plan.weeks[2].work[0][0].isPauseAsked);
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, cell.center());
    EXPECT_FALSE(m_editor.plan().plan.weeks[2].work[0][0].isPauseAsked);
}

TEST_F(PlanEditorTest, AWishIsFollowedAtOnceWhereNothingWasSetByHand)
{
    QTest::keyClick(&named<QSpinBox>("Weeks"), Qt::Key_Down);
    EXPECT_EQ(m_editor.plan().plan.weeks.size(), 11U);
    EXPECT_TRUE(m_dialogs.asked.empty());
    QTest::keyClick(&named<MondayEntry>("First Monday"), Qt::Key_Up);
    EXPECT_EQ(m_editor.plan().plan.weeks[0].monday, firstMonday() + 7);
    named<QComboBox>("Role of Bench press").setFocus();
    QTest::keyClick(&named<QComboBox>("Role of Bench press"), Qt::Key_Down);
    EXPECT_EQ(m_editor.plan().plan.wishes.lifts[1].role, chalk::direction::LiftRole::Assistance);
}

TEST_F(PlanEditorTest, AWishAsksWhatBecomesOfHandEdits)
{
    type("6");
    press(Qt::Key_Return);
    auto& weeks = named<QSpinBox>("Weeks");
    QTest::keyClick(&weeks, Qt::Key_Down);
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    EXPECT_EQ(m_editor.plan().plan.weeks.size(), 12U) << "left as it is";
    EXPECT_EQ(weeks.value(), 12);
    m_dialogs.answers = {1};
    QTest::keyClick(&weeks, Qt::Key_Down);
    EXPECT_EQ(m_editor.plan().plan.weeks.size(), 11U);
    EXPECT_EQ(m_editor.plan().plan.weeks[0].work[0][0].scheme.sets, base::Sets(6));
    m_dialogs.answers = {2};
    QTest::keyClick(&weeks, Qt::Key_Down);
    EXPECT_EQ(m_editor.plan().plan, planFor(m_editor.plan().plan.wishes));
}

TEST_F(PlanEditorTest, TheLastLiftStaysIn)
{
    for (const char* name : {"Back squat", "Bench press", "Dumbbell row"}) {
        for (QCheckBox* box : m_editor.findChildren<QCheckBox*>()) {
            if (box->text() == QLatin1String(name)) {
                box->setFocus();
                QTest::keyClick(box, Qt::Key_Space);
                EXPECT_EQ(box->isChecked(), box->text() == QLatin1String("Dumbbell row"));
            }
        }
    }
    EXPECT_EQ(m_editor.plan().plan.wishes.lifts.size(), 1U);
    EXPECT_EQ(m_editor.saying(), wishFaultText({"lifts", {}}));
}

TEST_F(PlanEditorTest, ASingleIsTypedAndMovesTheLoads)
{
    auto& single = named<QLineEdit>("Single of Back squat");
    single.setFocus();
    single.selectAll();
    type("110");
    press(Qt::Key_Return);
    EXPECT_EQ(textAt(0, PlanEditorSheet::LoadColumn), "87.5");
    EXPECT_EQ(m_editor.model().originOf(0), SingleOrigin::Typed);
    single.selectAll();
    type("heavy");
    press(Qt::Key_Return);
    EXPECT_EQ(single.text(), QStringLiteral("110"));
    EXPECT_FALSE(m_editor.saying().isEmpty());
}

TEST_F(PlanEditorTest, CtrlSKeepsEvenWhatIsStillOpen)
{
    type("6");
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(m_editor.result(), QDialog::Accepted);
    EXPECT_EQ(m_editor.plan().plan.weeks[0].work[0][0].scheme.sets, base::Sets(6));
}

TEST_F(PlanEditorTest, LiftsAreChosenByKeysAndAllShown)
{
    press(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_EQ(textAt(0, PlanEditorSheet::LoadColumn), "62.5") << "of the bench press: 64 is not to be had";
    named<QComboBox>("Lift shown").setCurrentIndex(3);
    EXPECT_EQ(table().model()->rowCount(), 36);
}

TEST_F(PlanEditorTest, FitsASmallScreenAndNamesWhatTakesTheFocus)
{
    EXPECT_GT(tests::focusableCount(m_editor), 10);
    EXPECT_EQ(tests::unnamedFocusables(m_editor), QStringList());
    EXPECT_LE(m_editor.minimumSizeHint().width(), 1280);
    EXPECT_LE(m_editor.minimumSizeHint().height(), 800);
    m_editor.resize(1256, 776);
    QApplication::processEvents();
    EXPECT_FALSE(table().horizontalScrollBar()->isVisible()) << "two exposures stand beside each other";
}

}  // namespace chalk::ui::direction
