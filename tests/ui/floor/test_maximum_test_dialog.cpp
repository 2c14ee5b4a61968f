#include "ui/floor/maximum_test_dialog.h"

#include "tests/support/lift_on_test.h"
#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/floor/maximum_test_start.h"
#include "ui/floor/maximum_test_step.h"

#include <QCheckBox>
#include <QComboBox>
#include <QSpinBox>
#include <QTest>

#include <gtest/gtest.h>

#include <chrono>

namespace chalk::ui::floor {

using chalk::direction::NoTest;
using chalk::direction::TestEnd;
using test::kilos;

class MaximumTestDialogTest : public ::testing::Test {
protected:
    void make(std::optional<NoTest> reason = {})
    {
        lifts::Exercise squat;
        squat.name = "Back squat";
        TestedLift lift{base::ClientId(3), "Ada Lund", base::LiftId(7), squat, *progression::LiftMachine::create(test::lowerLift()), kilos(100), reason};
        m_dialog = std::make_unique<MaximumTestDialog>(
            m_look, lift,
            [this](const MaximumTestRun& run, const QString& note) {
                m_kept = run;
                m_note = note;
                return m_refusal;
            },
            RestServices{nullptr, [this] { return m_now; }, {}});
        m_dialog->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_dialog.get()));
    }
    void tickAll()
    {
        for (QCheckBox* check : m_dialog->startPage()->checks()) {
            check->setFocus();
            QTest::keyClick(check, Qt::Key_Space);
        }
    }
    void begin()
    {
        make();
        tickAll();
        QTest::keyClick(m_dialog->startPage()->singleButton(), Qt::Key_Return);
    }
    void press(int key) { QTest::keyClick(m_dialog->focusWidget() != nullptr ? m_dialog->focusWidget() : m_dialog.get(), static_cast<Qt::Key>(key)); }
    MaximumTestStep& step() { return *m_dialog->stepPage(); }

    const common::Look m_look;
    RestTimers::Moment m_now{};
    QString m_refusal;
    QString m_note;
    std::optional<MaximumTestRun> m_kept;
    std::unique_ptr<MaximumTestDialog> m_dialog;
};

TEST_F(MaximumTestDialogTest, BeginsOnlyWhenEveryLineIsTicked)
{
    make();
    ASSERT_NE(m_dialog->startPage()->singleButton(), nullptr);
    EXPECT_FALSE(m_dialog->startPage()->singleButton()->isEnabled());
    tickAll();
    EXPECT_TRUE(m_dialog->startPage()->singleButton()->isEnabled());
    QTest::keyClick(m_dialog->startPage()->checks().front(), Qt::Key_Space);
    EXPECT_FALSE(m_dialog->startPage()->singleButton()->isEnabled());
}

TEST_F(MaximumTestDialogTest, WhoIsNotTestedByASingleIsOfferedThreeToFiveRepetitions)
{
    make(NoTest::TooEarly);
    EXPECT_EQ(m_dialog->startPage()->singleButton(), nullptr);
    ASSERT_NE(m_dialog->startPage()->repsButton(), nullptr);
    tickAll();
    QTest::keyClick(m_dialog->startPage()->repsButton(), Qt::Key_Return);
    EXPECT_EQ(m_dialog->run()->kind(), TestKind::Reps);
    make(NoTest::OnHold);
    EXPECT_EQ(m_dialog->startPage()->repsButton(), nullptr);
    EXPECT_TRUE(m_dialog->startPage()->checks().empty());
}

TEST_F(MaximumTestDialogTest, ItsKeysLeadToTheResultThatIsKept)
{
    begin();
    for (int set = 0; set < 4; ++set) {
        press(Qt::Key_M);
    }
    ASSERT_TRUE(m_dialog->run()->best());
    const base::Load made = m_dialog->run()->best()->load;
    step().loads()->setCurrentIndex(step().loads()->currentIndex() + 1);
    press(Qt::Key_X);
    EXPECT_EQ(m_dialog->run()->best()->load, made);
    if (!m_dialog->isAtResult()) {
        press(Qt::Key_S);
    }
    ASSERT_TRUE(m_dialog->isAtResult());
    EXPECT_FALSE(m_kept) << "nothing is written before it is kept";
    QTest::keyClicks(m_dialog->focusWidget(), QStringLiteral("good depth"));
    press(Qt::Key_Return);
    ASSERT_TRUE(m_kept);
    EXPECT_EQ(m_kept->best()->load, made);
    EXPECT_EQ(m_note, QStringLiteral("good depth"));
    EXPECT_EQ(m_dialog->result(), QDialog::Accepted);
}

TEST_F(MaximumTestDialogTest, PainAsksHowMuchAndEndsIt)
{
    begin();
    press(Qt::Key_M);
    press(Qt::Key_P);
    EXPECT_TRUE(m_dialog->run()->next()) << "how much it hurt is not said yet";
    EXPECT_TRUE(step().pain()->hasFocus());
    QTest::keyClicks(step().pain(), QStringLiteral("5"));
    press(Qt::Key_P);
    EXPECT_EQ(m_dialog->run()->end(), TestEnd::Pain);
    EXPECT_EQ(m_dialog->run()->exposure()->pain, 5);
    EXPECT_TRUE(m_dialog->isAtResult());
}

TEST_F(MaximumTestDialogTest, TheRestOfAStepIsCounted)
{
    begin();
    EXPECT_TRUE(step().restWords().isEmpty()) << "none before the warm-up";
    press(Qt::Key_M);
    EXPECT_EQ(step().restWords(), QStringLiteral("Rest 1:00 before it. 1:00 of rest left."));
    m_now += std::chrono::seconds(75);
    EXPECT_EQ(step().restWords(), QStringLiteral("Rest 1:00 before it. Ready since 0:15."));
    press(Qt::Key_M);
    EXPECT_EQ(step().restWords(), QStringLiteral("Rest 2:00 before it. 2:00 of rest left."));
}

TEST_F(MaximumTestDialogTest, ClosingInTheMiddleAsks)
{
    begin();
    press(Qt::Key_Escape);
    EXPECT_FALSE(m_dialog->isVisible()) << "nothing was done, nothing is asked";
    begin();
    press(Qt::Key_M);
    press(Qt::Key_Escape);
    EXPECT_TRUE(m_dialog->isVisible());
    EXPECT_TRUE(m_dialog->isAsking());
    press(Qt::Key_Escape);
    EXPECT_FALSE(m_dialog->isAsking()) << "Esc goes on with the test";
    ASSERT_TRUE(m_dialog->run()->next());
    press(Qt::Key_Escape);
    for (auto* button : m_dialog->findChildren<common::ActionButton*>()) {
        if (button->isVisible() && button->text() == MaximumTestDialog::tr("Keep what was done")) {
            button->click();
            break;
        }
    }
    ASSERT_TRUE(m_kept);
    EXPECT_EQ(m_kept->done().size(), 1U);
    EXPECT_EQ(m_kept->end(), TestEnd::Stopped);
}

TEST_F(MaximumTestDialogTest, WhatIsRefusedStaysOnShow)
{
    m_refusal = QStringLiteral("The studio is in use");
    begin();
    press(Qt::Key_M);
    press(Qt::Key_S);
    ASSERT_TRUE(m_dialog->isAtResult());
    press(Qt::Key_Return);
    EXPECT_TRUE(m_dialog->isVisible());
    EXPECT_TRUE(m_dialog->isAtResult());
}

}  // namespace chalk::ui::floor
