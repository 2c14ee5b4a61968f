#include "ui/board/change_editor.h"

#include "core/progression/event.h"
#include "tests/ui/board/client_fixture.h"
#include "ui/common/look.h"

#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::ui::board {

using progression::Stage;

namespace {

LiftCase squatInRepBuild()
{
    LiftCase lift = test::trainedLift({lifts::Pattern::Squat, "Back squat", lifts::Region::Lower, test::fixtureBar(), 75, 4}, 1);
    progression::CoachSet set;
    set.stage = Stage::RepBuild;
    set.load = base::Load::fromCenti(7750);
    set.reps = base::Reps(7);
    set.reason = "a test";
    lift.machine.apply(test::fixtureDay(), set);
    settle(lift, test::fixtureDay());
    return lift;
}

}  // namespace

class ChangeEditorTest : public ::testing::Test {
protected:
    ChangeEditorTest() { m_editor.show(); }

    QLineEdit* field(const QString& name)
    {
        for (QLineEdit* one : m_editor.findChildren<QLineEdit*>()) {
            if (one->accessibleName().startsWith(name)) {
                return one;
            }
        }
        return nullptr;
    }
    QPushButton* use() { return m_editor.findChildren<QPushButton*>().front(); }
    void type(const QString& name, const QString& text) { field(name)->setText(text); }

    common::Look m_look;
    ChangeEditor m_editor{m_look, squatInRepBuild()};
};

TEST_F(ChangeEditorTest, LettersAreNoShortcutsWhileAButtonHasTheFocus)
{
    const auto isKept = [this](Qt::Key key, Qt::KeyboardModifiers modifiers, const QString& text) {
        QKeyEvent event(QEvent::ShortcutOverride, key, modifiers, text);
        event.ignore();
        QApplication::sendEvent(use(), &event);
        return event.isAccepted();
    };
    EXPECT_TRUE(isKept(Qt::Key_R, Qt::NoModifier, QStringLiteral("r")));
    EXPECT_TRUE(isKept(Qt::Key_Slash, Qt::NoModifier, QStringLiteral("/")));
    EXPECT_FALSE(isKept(Qt::Key_K, Qt::ControlModifier, QStringLiteral("\x0b")));
    EXPECT_FALSE(isKept(Qt::Key_F1, Qt::NoModifier, {}));
}

TEST_F(ChangeEditorTest, TheNumbersOfTheRuleNeedNoEntry)
{
    EXPECT_EQ(field(QStringLiteral("Load"))->text(), QStringLiteral("77.5"));
    EXPECT_EQ(field(QStringLiteral("Reps"))->text(), QStringLiteral("8"));
    type(QStringLiteral("Reason"), QStringLiteral("just because"));
    EXPECT_FALSE(use()->isEnabled());
    EXPECT_FALSE(m_editor.event());
}

TEST_F(ChangeEditorTest, InALighterWeekItBeginsWithTheUsualNumbers)
{
    LiftCase lift = squatInRepBuild();
    lift.machine.apply(test::fixtureDay(), progression::LighterWeek{});
    settle(lift, test::fixtureDay());
    ASSERT_LT(lift.next.load, base::Load::fromCenti(7750));
    const ChangeEditor editor(m_look, lift);
    const auto fields = editor.findChildren<QLineEdit*>();
    EXPECT_TRUE(std::any_of(fields.begin(), fields.end(), [](const QLineEdit* one) { return one->text() == QLatin1String("77.5"); }));
    EXPECT_FALSE(editor.event()) << "the usual numbers are those of the rule";
}

TEST_F(ChangeEditorTest, ANumberOutsideTheRuleAsksForAReason)
{
    const QSignalSpy accepted(&m_editor, &decisions::CoachEditor::accepted);
    type(QStringLiteral("Load"), QStringLiteral("82,5"));
    EXPECT_EQ(use()->text(), QStringLiteral("Use 82.5"));
    EXPECT_FALSE(use()->isEnabled());
    type(QStringLiteral("Reason"), QStringLiteral("   "));
    EXPECT_FALSE(use()->isEnabled());
    QTest::keyClick(field(QStringLiteral("Reason")), Qt::Key_Return);
    EXPECT_EQ(accepted.count(), 0);
    type(QStringLiteral("Reason"), QStringLiteral("moved house, slept badly"));
    EXPECT_TRUE(use()->isEnabled());
    QTest::keyClick(field(QStringLiteral("Reason")), Qt::Key_Return);
    EXPECT_EQ(accepted.count(), 1);
    const auto event = m_editor.event();
    ASSERT_TRUE(event);
    EXPECT_EQ(event->load, base::Load::fromCenti(8250));
    EXPECT_EQ(event->reps, base::Reps(7));
    EXPECT_EQ(event->reason, "moved house, slept badly");
}

TEST_F(ChangeEditorTest, ALoadThatCannotBeSetUpIsRefusedWithTheNextOnes)
{
    type(QStringLiteral("Reason"), QStringLiteral("a reason"));
    for (const char* load : {"81", "", "heavy", "99999"}) {
        type(QStringLiteral("Load"), QString::fromLatin1(load));
        EXPECT_FALSE(use()->isEnabled()) << load;
        EXPECT_TRUE(field(QStringLiteral("Load"))->property("invalid").toBool()) << load;
        EXPECT_FALSE(m_editor.event());
    }
}

TEST_F(ChangeEditorTest, AnotherStageHasItsOwnFields)
{
    auto* stage = m_editor.findChild<QComboBox*>();
    stage->setCurrentIndex(numberOf(Stage::RestCut) - 1);
    EXPECT_TRUE(field(QStringLiteral("Rest"))->isVisible());
    EXPECT_EQ(field(QStringLiteral("Rest"))->text(), QStringLiteral("2:30"));
    stage->setCurrentIndex(numberOf(Stage::Control) - 1);
    EXPECT_FALSE(field(QStringLiteral("Load"))->isVisible());
    type(QStringLiteral("Reason"), QStringLiteral("form comes first"));
    const auto event = m_editor.event();
    ASSERT_TRUE(event);
    EXPECT_EQ(event->stage, Stage::Control);
    EXPECT_FALSE(event->load);
}

TEST_F(ChangeEditorTest, EscapeLeavesEverythingAsItIs)
{
    const QSignalSpy cancelled(&m_editor, &decisions::CoachEditor::cancelled);
    QTest::keyClick(&m_editor, Qt::Key_Escape);
    EXPECT_EQ(cancelled.count(), 1);
}

TEST_F(ChangeEditorTest, EnterOnTheButtonThatLeavesItLeavesIt)
{
    const QSignalSpy accepted(&m_editor, &decisions::CoachEditor::accepted);
    const QSignalSpy cancelled(&m_editor, &decisions::CoachEditor::cancelled);
    type(QStringLiteral("Load"), QStringLiteral("82.5"));
    type(QStringLiteral("Reason"), QStringLiteral("a good week"));
    ASSERT_TRUE(use()->isEnabled());
    QPushButton* leave = m_editor.findChildren<QPushButton*>().back();
    m_editor.activateWindow();
    leave->setFocus();
    QTest::keyClick(leave, Qt::Key_Return);
    EXPECT_EQ(accepted.count(), 0);
    EXPECT_EQ(cancelled.count(), 1);
}

}  // namespace chalk::ui::board
