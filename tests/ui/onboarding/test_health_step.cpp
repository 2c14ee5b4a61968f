#include "ui/onboarding/health_step.h"

#include "core/store/record_writer.h"
#include "core/store/studio_settings.h"
#include "tests/ui/onboarding/onboarding_bench.h"
#include "ui/onboarding/letter_editor.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/question_row.h"

#include <QCheckBox>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::onboarding {

using clients::ClearanceState;
using clients::HealthMark;
using clients::HealthQuestion;

/// Ada, who agreed that health data is kept, in the Health step.
class HealthStepTest : public ::testing::Test, protected test::OnboardingBench {
protected:
    HealthStepTest()
    {
        consent();
        m_step.resize(1080, 780);
        m_step.show();
        QObject::connect(&m_step, &OnboardingStep::saved, &m_step, [this] { show(m_today); });
        show(m_today);
    }

    void consent()
    {
        clients::Profile profile;
        profile.consentOn = m_today;
        EXPECT_TRUE(store::ClientWriter(m_studio.database()).saveProfile(m_ada, profile, m_today));
    }

    void show(base::Date today)
    {
        m_today = today;
        m_step.setCase(readOnboardingCase(m_studio.database(), m_ada, today).value());
    }

    /// Keys go where they would go: to what has the focus.
    void press(int key)
    {
        QWidget* target = m_step.focusWidget();
        ASSERT_NE(target, nullptr);
        QTest::keyClick(target, static_cast<Qt::Key>(key));
    }

    std::optional<clients::HealthIntake> kept() { return store::ClientForms(m_studio.database()).healthIntake(m_ada).value(); }
    clients::Clearance clearance() { return store::ClientReader(m_studio.database()).read(m_ada, m_today)->clearance; }

    QPushButton* button(const QString& text)
    {
        for (QPushButton* one : m_step.findChildren<QPushButton*>()) {
            if (one->text() == text && one->isVisible()) {
                return one;
            }
        }
        return nullptr;
    }

    void answerAllNo()
    {
        m_step.takeFocus();
        for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
            press(Qt::Key_N);
        }
    }

    base::Date m_today = test::smallStudioDay();
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    HealthStep m_step{m_services};
};

TEST_F(HealthStepTest, NAnswersAndMovesOnAndEveryAnswerIsKeptAtOnce)
{
    m_step.takeFocus();
    press(Qt::Key_N);
    press(Qt::Key_N);
    ASSERT_TRUE(kept());
    EXPECT_EQ(kept()->answerTo(HealthQuestion::HeartOrPressure).isYes, false);
    EXPECT_EQ(kept()->answerTo(HealthQuestion::ChestPain).isYes, false);
    EXPECT_FALSE(kept()->answerTo(HealthQuestion::Breathless).isYes) << "not answered yet";
    EXPECT_EQ(clearance().state, ClearanceState::Unanswered);
}

TEST_F(HealthStepTest, ALetterAmongTheMarksOfAYesAnswersTheQuestionBelow)
{
    m_step.takeFocus();
    press(Qt::Key_N);
    press(Qt::Key_Y);
    press(Qt::Key_Space);
    press(Qt::Key_N);
    ASSERT_TRUE(kept());
    EXPECT_EQ(kept()->answerTo(HealthQuestion::ChestPain).isYes, true) << "the yes stays";
    EXPECT_EQ(kept()->answerTo(HealthQuestion::ChestPain).marks, std::vector{HealthMark::ChestPainAtRest});
    EXPECT_EQ(kept()->answerTo(HealthQuestion::Breathless).isYes, false);
    press(Qt::Key_Y);
    EXPECT_EQ(kept()->answerTo(HealthQuestion::FaintOrDizzy).isYes, true);
}

TEST_F(HealthStepTest, YOpensTheMarksOfTheQuestion)
{
    m_step.takeFocus();
    press(Qt::Key_N);
    press(Qt::Key_Y);
    press(Qt::Key_Space);
    EXPECT_EQ(kept()->answerTo(HealthQuestion::ChestPain).marks, std::vector{HealthMark::ChestPainAtRest});
    EXPECT_EQ(clearance().state, ClearanceState::StopAndSeek);
    EXPECT_TRUE(clearance().reason.find("Answer 2: chest pain at rest.") == 0) << clearance().reason;
}

TEST_F(HealthStepTest, WhatWasAnsweredIsThereAfterComingBack)
{
    m_step.takeFocus();
    press(Qt::Key_Y);
    QTest::keyClicks(m_step.findChildren<QuestionRow*>().front()->findChild<QLineEdit*>(), QStringLiteral("Tablets since 2019"));
    EXPECT_TRUE(m_step.keep());
    HealthStep again{{m_studio.database(), m_catalogue, m_screens, m_look, m_clock, m_acts, m_dialogs, test::someMoment}};
    again.setCase(readOnboardingCase(m_studio.database(), m_ada, m_today).value());
    const clients::HealthAnswer answer = again.findChildren<QuestionRow*>().front()->answer();
    EXPECT_EQ(answer.isYes, true);
    EXPECT_EQ(answer.detail, "Tablets since 2019");
}

TEST_F(HealthStepTest, AFinishedIntakeStaysAsItWasAndALaterChangeIsOneOfItsOwn)
{
    answerAllNo();
    clients::HealthIntake first = *kept();
    first.isRegularExerciser = true;
    first.agreedOn = m_today;
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).saveIntake(m_ada, first, {}, {}, m_today));
    show(m_today + 30);
    QuestionRow* injury = m_step.findChildren<QuestionRow*>().at(static_cast<qsizetype>(HealthQuestion::OperationOrInjury));
    injury->takeFocus();
    press(Qt::Key_Y);
    const auto forms = store::ClientForms(m_studio.database()).all(m_ada, store::FormKind::HealthIntake).value();
    ASSERT_EQ(forms.size(), 2U);
    EXPECT_TRUE(forms.front().isFinished);
    EXPECT_EQ(forms.back().day, m_today);
    EXPECT_EQ(kept()->answerTo(HealthQuestion::ChestPain).isYes, false) << "begins with the same answers";
    EXPECT_FALSE(kept()->agreedOn) << "and was not agreed to yet";
}

TEST_F(HealthStepTest, ALetterFreesAndOneThatIsTooLargeIsRefusedInWords)
{
    m_step.takeFocus();
    press(Qt::Key_Y);
    press(Qt::Key_Space);
    ASSERT_NE(button(QStringLiteral("Record the answer")), nullptr);
    button(QStringLiteral("Record the answer"))->click();
    const QString path = m_studio.folder() + QStringLiteral("/scan.pdf");
    QFile scan(path);
    ASSERT_TRUE(scan.open(QIODevice::WriteOnly) && scan.resize(LetterEditor::kMostBytes + 1));
    scan.close();
    m_dialogs.paths = {path, path};
    button(QStringLiteral("Attach a copy"))->click();
    EXPECT_TRUE(button(QStringLiteral("Attach a copy"))->accessibleDescription().contains(QStringLiteral("larger than 10 MB")));
    QFile::resize(path, 1000);
    button(QStringLiteral("Attach a copy"))->click();
    m_step.findChild<LetterEditor*>()->findChildren<QLineEdit*>().front()->setText(QStringLiteral("Dr Vane"));
    button(QStringLiteral("Put on file"))->click();
    EXPECT_EQ(clearance().state, ClearanceState::Granted);
    const auto letter = store::ClientForms(m_studio.database()).latestLetter(m_ada).value();
    ASSERT_TRUE(letter);
    EXPECT_EQ(letter->fileName, "scan.pdf");
    EXPECT_EQ(letter->file.size(), 1000);
}

TEST_F(HealthStepTest, AReminderIsKeptForAWeekLater)
{
    m_step.takeFocus();
    press(Qt::Key_Y);
    press(Qt::Key_Space);
    ASSERT_NE(button(QStringLiteral("Remind me in a week")), nullptr);
    button(QStringLiteral("Remind me in a week"))->click();
    EXPECT_EQ(clearance().remindOn, m_today + 7);
    EXPECT_EQ(button(QStringLiteral("Remind me in a week")), nullptr) << "it says when instead";
}

TEST_F(HealthStepTest, WithoutConsentNothingIsAsked)
{
    const base::ClientId bo = test::clientNamed(m_studio.database(), "Bo Arden");
    m_step.setCase(readOnboardingCase(m_studio.database(), bo, m_today).value());
    EXPECT_FALSE(m_step.findChildren<QuestionRow*>().front()->isEnabled());
}

TEST_F(HealthStepTest, TheLimitsAtRestAreTheStudiosToSet)
{
    const auto clickNamed = [this](const char* text) {
        for (auto* one : m_step.findChildren<QPushButton*>()) {
            if (one->isVisible() && (one->text() == QLatin1String(text) || one->accessibleName() == QLatin1String(text))) {
                return one->click();
            }
        }
        FAIL() << text;
    };
    const auto fieldNamed = [this](const char* name) {
        const auto lines = m_step.findChildren<QLineEdit*>();
        return *std::find_if(lines.begin(), lines.end(), [name](const QLineEdit* one) { return one->accessibleName() == QLatin1String(name); });
    };
    const auto limits = [this] { return store::StudioSettings(m_studio.database()).restingLimits().value(); };
    clickNamed("Change the limits at rest");
    fieldNamed("Blood pressure over")->setText(QStringLiteral("160"));
    QTest::keyClick(fieldNamed("Blood pressure over"), Qt::Key_Return);
    EXPECT_EQ(limits(), clients::RestingLimits()) << "one number is no pressure";
    fieldNamed("Blood pressure over")->setText(QStringLiteral("160/95"));
    fieldNamed("Heart rate over")->setText(QStringLiteral("90"));
    QTest::keyClick(fieldNamed("Heart rate over"), Qt::Key_Return);
    EXPECT_EQ(limits(), (clients::RestingLimits{90, 160, 95}));
    clickNamed("Change the limits at rest");
    clickNamed("Back to the default");
    EXPECT_EQ(limits(), clients::RestingLimits());
}

}  // namespace chalk::ui::onboarding
