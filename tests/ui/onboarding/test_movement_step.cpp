#include "ui/onboarding/movement_step.h"

#include "tests/ui/onboarding/movement_fixture.h"
#include "ui/common/action_button.h"
#include "ui/onboarding/pattern_list.h"
#include "ui/onboarding/pattern_sheet.h"
#include "ui/onboarding/rescreen_page.h"
#include "ui/onboarding/screen_outcome.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>

namespace chalk::ui::onboarding {

using lifts::Pattern;
using screens::Mark;
using screens::PauseDepth;
using screens::PauseMark;

class MovementStepTest : public test::MovementTest {
protected:
    QString outcomeSays()
    {
        QStringList texts;
        for (const QLabel* label : m_step.findChild<ScreenOutcome*>()->findChildren<QLabel*>()) {
            if (label->isVisibleTo(&m_step)) {
                texts.append(label->text());
            }
        }
        return texts.join(QLatin1Char('\n'));
    }
    common::ActionButton* button(const QString& text)
    {
        const auto buttons = m_step.findChildren<common::ActionButton*>();
        const auto found = std::find_if(buttons.begin(), buttons.end(), [&](const common::ActionButton* one) { return one->text() == text && one->isVisibleTo(&m_step); });
        return found == buttons.end() ? nullptr : *found;
    }
    QString listSays(Pattern pattern)
    {
        return m_step.findChildren<PatternButton*>().at(static_cast<int>(pattern))->accessibleName();
    }
};

TEST_F(MovementStepTest, DigitsMarkAPatternAndEachMarkIsKept)
{
    press(Qt::Key_2);
    EXPECT_EQ(kept().of(Pattern::Squat).points[0].mark, Mark::Partly);
    EXPECT_EQ(kept().of(Pattern::Squat).points[1].mark, Mark::NotJudged);
    markPattern("11311");
    const screens::PatternScreen squat = kept().of(Pattern::Squat);
    EXPECT_EQ(squat.points[3].mark, Mark::NotMet);
    EXPECT_EQ(squat.points[5].mark, Mark::Met);
    EXPECT_EQ(squat.points[0].key, m_screens.of(Pattern::Squat).points[0].key);
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("Start the squat at Pattern.")));
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("4 of 6 points met, 1 partly, 1 not met.")));
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("Work to do first")));
}

TEST_F(MovementStepTest, UpGoesBackAndAMarkIsChanged)
{
    markPattern("33");
    press(Qt::Key_Up);
    press(Qt::Key_1);
    EXPECT_EQ(kept().of(Pattern::Squat).points[0].mark, Mark::NotMet);
    EXPECT_EQ(kept().of(Pattern::Squat).points[1].mark, Mark::Met);
}

TEST_F(MovementStepTest, AllPointsMetAndPausesHeldEarnTheFirstLoad)
{
    markPattern("111111");
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("Start the squat at Control.")));
    markPattern("111");
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("Start the squat at Base load.")));
    EXPECT_TRUE(listSays(Pattern::Squat).contains(QStringLiteral("Base load")));
}

TEST_F(MovementStepTest, AShakyPauseKeepsTheLoadAway)
{
    markPattern("111111112");
    EXPECT_EQ(kept().of(Pattern::Squat).pauseAt(PauseDepth::Bottom).mark, PauseMark::Shaky);
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("Start the squat at Control.")));
}

TEST_F(MovementStepTest, AllEightPatternsAreWalkedByKeyboardAndFinished)
{
    for (const Pattern pattern : lifts::kPatterns) {
        EXPECT_EQ(m_step.pattern(), pattern);
        markPattern("111111111");
        EXPECT_EQ(m_nextAsked, 0);
        press(Qt::Key_Return);
    }
    EXPECT_EQ(m_nextAsked, 1);
    EXPECT_TRUE(kept().isFinished);
    EXPECT_TRUE(screens::openPatternsOf(kept()).empty());
    for (const Pattern pattern : lifts::kPatterns) {
        EXPECT_EQ(kept().of(pattern).points[5].mark, Mark::Met);
    }
}

TEST_F(MovementStepTest, TheLastPatternSaysWhatStaysOpenBeforeTheScreenIsFinished)
{
    markPattern("111111111");
    for (std::size_t i = 1; i < lifts::kPatterns.size(); ++i) {
        press(Qt::Key_PageDown, Qt::ControlModifier);
    }
    ASSERT_EQ(m_step.pattern(), lifts::kPatterns.back());
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("Still open: hinge,")));
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("What is open counts as not met.")));
    ASSERT_NE(button(QStringLiteral("Finish the screen")), nullptr);
}

TEST_F(MovementStepTest, TheStopwatchTimesOneDepthAfterTheOther)
{
    markPattern("111111");
    for (const int held : {3240, 4100, 2990}) {
        press(Qt::Key_T);
        m_now += held;
        press(Qt::Key_T);
    }
    const screens::PatternScreen squat = kept().of(Pattern::Squat);
    EXPECT_EQ(squat.pauseAt(PauseDepth::Top).heldMs, 3200);
    EXPECT_EQ(squat.pauseAt(PauseDepth::Middle).heldMs, 4100);
    EXPECT_EQ(squat.pauseAt(PauseDepth::Bottom).heldMs, 2900);
    EXPECT_EQ(squat.pauseAt(PauseDepth::Top).mark, PauseMark::Held);
}

TEST_F(MovementStepTest, EscStopsTheWatchAndNotesNothing)
{
    markPattern("111111");
    press(Qt::Key_T);
    m_now += 5000;
    EXPECT_TRUE(m_step.closeOrClear());
    EXPECT_FALSE(m_step.closeOrClear());
    EXPECT_FALSE(kept().of(Pattern::Squat).pauseAt(PauseDepth::Top).heldMs);
    EXPECT_EQ(kept().of(Pattern::Squat).pauseAt(PauseDepth::Top).mark, PauseMark::NotTried);
}

TEST_F(MovementStepTest, PainHoldsThePatternAndAsksWhereAndHowMuch)
{
    markPattern("111111111");
    press(Qt::Key_P);
    ASSERT_NE(qobject_cast<QLineEdit*>(QApplication::focusWidget()), nullptr);
    type(QStringLiteral("left knee"));
    ASSERT_TRUE(m_step.keep());
    EXPECT_EQ(kept().of(Pattern::Squat).pain->place, "left knee");
    EXPECT_FALSE(kept().of(Pattern::Squat).pain->score);
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("The squat is on hold.")));
    EXPECT_TRUE(screens::openMarksOf(kept().of(Pattern::Squat)).isPainScoreOpen);
    press(Qt::Key_Tab);
    press(Qt::Key_3);
    EXPECT_EQ(kept().of(Pattern::Squat).pain->score, 3);
}

TEST_F(MovementStepTest, NoPainIsSaidOnlyWhereItWasAsked)
{
    markPattern("111111111");
    ASSERT_TRUE(m_step.keep());
    EXPECT_FALSE(kept().of(Pattern::Squat).pain) << "nobody asked";
    const auto buttons = m_step.findChildren<QAbstractButton*>();
    const auto no = std::find_if(buttons.begin(), buttons.end(), [](const QAbstractButton* one) { return one->isVisible() && one->accessibleName().contains(QLatin1String("Pain")) && one->text() == QLatin1String("No"); });
    ASSERT_NE(no, buttons.end());
    EXPECT_FALSE((*no)->isChecked());
    (*no)->click();
    EXPECT_EQ(kept().of(Pattern::Squat).pain, (screens::ScreenPain{{}, 0}));
    EXPECT_FALSE(screens::isPainful(kept().of(Pattern::Squat)));
}

TEST_F(MovementStepTest, AnotherStageNeedsAReasonAndIsKeptWithThePlan)
{
    markPattern("111111111");
    press(Qt::Key_O);
    press(Qt::Key_2);
    auto* reason = m_step.findChild<ScreenOutcome*>()->findChild<QLineEdit*>();
    reason->setFocus();
    press(Qt::Key_Return);
    EXPECT_TRUE(store::ClientForms(m_studio.database()).planDraft(m_client).value().of(Pattern::Squat).isEmpty()) << "refused without a reason";
    type(QStringLiteral("knee was operated in June"));
    press(Qt::Key_Return);
    const auto choice = store::ClientForms(m_studio.database()).planDraft(m_client).value().of(Pattern::Squat).start;
    ASSERT_TRUE(choice);
    EXPECT_EQ(choice->stage, progression::Stage::Control);
    EXPECT_EQ(choice->reason, "knee was operated in June");
    EXPECT_EQ(m_step.pattern(), Pattern::Squat) << "Enter in the editor does not go on";
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("The coach starts it at Control.")));
}

TEST_F(MovementStepTest, HalfAScreenIsThereAgain)
{
    markPattern("1123");
    MovementStep again(m_services);
    again.setCase(readOnboardingCase(m_studio.database(), m_client, m_today).value());
    const auto sheet = again.findChild<PatternSheet*>()->screen();
    EXPECT_EQ(sheet.points[2].mark, Mark::Partly);
    EXPECT_EQ(sheet.points[3].mark, Mark::NotMet);
    EXPECT_EQ(sheet.points[4].mark, Mark::NotJudged);
}

TEST_F(MovementStepTest, AFinishedScreenIsNeverChanged)
{
    keepFinished(m_today - 10, Mark::Met);
    show();
    m_step.takeFocus();
    const screens::MovementScreen before = kept();
    for (const int key : {Qt::Key_3, Qt::Key_P, Qt::Key_T, Qt::Key_T, Qt::Key_2}) {
        press(key);
    }
    ASSERT_TRUE(m_step.keep());
    EXPECT_EQ(kept(), before);
    EXPECT_EQ(store::ClientForms(m_studio.database()).movementScreens(m_client).value().size(), 1U);
}

TEST_F(MovementStepTest, ANewScreenBeginsTodayBesideTheLastOne)
{
    keepFinished(m_today - 60, Mark::Partly);
    show();
    EXPECT_TRUE(outcomeSays().contains(QStringLiteral("eight weeks old")));
    m_step.showPart(MovementStep::Part::Earlier);
    EXPECT_EQ(m_step.part(), MovementStep::Part::Patterns) << "there is no screen before the first";
    ASSERT_NE(button(QStringLiteral("Screen again")), nullptr);
    button(QStringLiteral("Screen again"))->click();
    press(Qt::Key_1);
    const auto all = store::ClientForms(m_studio.database()).movementScreens(m_client).value();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].of(Pattern::Squat).points[0].mark, Mark::Partly);
    EXPECT_EQ(all[1].date, m_today);
    EXPECT_EQ(all[1].of(Pattern::Squat).points[0].mark, Mark::Met);
    const auto labels = m_step.findChild<PatternSheet*>()->findChildren<QLabel*>();
    EXPECT_EQ(std::count_if(labels.begin(), labels.end(), [](const QLabel* label) { return label->text().endsWith(QStringLiteral("was partly")); }), 6);
    press(Qt::Key_B);
    EXPECT_EQ(m_step.part(), MovementStep::Part::Earlier);
    EXPECT_TRUE(m_step.findChild<RescreenPage*>()->accessibleDescription().contains(QStringLiteral("partly\nmet\nbetter")));
    EXPECT_TRUE(m_step.closeOrClear());
    EXPECT_EQ(m_step.part(), MovementStep::Part::Patterns);
}

TEST_F(MovementStepTest, NothingIsMarkedWhileAClearanceIsAwaited)
{
    clients::HealthIntake chest;
    chest.answerTo(clients::HealthQuestion::ChestPain).isYes = true;
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).saveIntake(m_client, chest, {}, "chest pain", m_today));
    show();
    m_step.takeFocus();
    press(Qt::Key_1);
    press(Qt::Key_P);
    EXPECT_FALSE(store::ClientForms(m_studio.database()).movementScreen(m_client).value());
}

}  // namespace chalk::ui::onboarding
