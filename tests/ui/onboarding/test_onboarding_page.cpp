#include "ui/onboarding/onboarding_page.h"

#include "tests/support/accessible_audit.h"
#include "tests/ui/onboarding/onboarding_fixture.h"
#include "ui/onboarding/onboarding_step.h"

#include <QAbstractButton>
#include <QApplication>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

namespace chalk::ui::onboarding {

class OnboardingPageTest : public test::OnboardingTest {
protected:
    QAbstractButton* button(const char* text)
    {
        for (QAbstractButton* one : m_page->findChildren<QAbstractButton*>()) {
            if (one->isVisible() && one->text() == QLatin1String(text)) {
                return one;
            }
        }
        return nullptr;
    }
};

TEST_F(OnboardingPageTest, SomebodyNewBeginsWithTheNameAndLeavesNothingBehindWithoutOne)
{
    open();
    EXPECT_EQ(m_page->title(), QStringLiteral("New client"));
    EXPECT_TRUE(field("Name").hasFocus());
    EXPECT_FALSE(says("A name is needed."));
    EXPECT_FALSE(field("Phone").isEnabled());
    press(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(m_page->presentStep(), StepKind::Profile);
    button("Save and close")->click();
    EXPECT_EQ(m_asked.page, QStringLiteral("roster"));
    EXPECT_EQ(people(), 2U);
}

TEST_F(OnboardingPageTest, ANameAndEnterPutSomebodyInTheStudio)
{
    open();
    QSignalSpy changed(m_page.get(), &shell::Page::studioChanged);
    QTest::keyClicks(&field("Name"), QStringLiteral("  Cleo Marsh "));
    EXPECT_EQ(people(), 2U) << "no half-typed names";
    press(Qt::Key_Return);
    EXPECT_EQ(people(), 3U);
    EXPECT_EQ(changed.size(), 1);
    ASSERT_TRUE(m_page->openClient());
    EXPECT_EQ(m_page->openClient()->name, QStringLiteral("Cleo Marsh"));
    EXPECT_EQ(clientOf(m_page->openClient()->id).startedOn, m_clock.today());
    EXPECT_TRUE(field("Birth date").hasFocus());
}

TEST_F(OnboardingPageTest, WhoWasOnlyBegunIsDiscardedAfterAQuestion)
{
    const base::ClientId cleo = addCleo();
    open(cleo);
    button("Discard")->click();
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    EXPECT_EQ(people(), 3U) << "the safe answer keeps";
    m_dialogs.answers = {1};
    button("Discard")->click();
    EXPECT_EQ(people(), 2U);
    EXPECT_EQ(m_asked.page, QStringLiteral("roster"));
}

TEST_F(OnboardingPageTest, WhoTrainsCannotBeDiscarded)
{
    open(base::ClientId(1));
    EXPECT_EQ(button("Discard"), nullptr);
}

TEST_F(OnboardingPageTest, GoesOnWhereItWasLeft)
{
    const base::ClientId cleo = addCleo();
    open(cleo);
    EXPECT_EQ(m_page->presentStep(), firstOpenStep(readOnboardingCase(m_studio.database(), cleo, m_clock.today()).value()));
    open(cleo, "time");
    EXPECT_EQ(m_page->presentStep(), StepKind::TimeAndKit);
    EXPECT_EQ(m_page->place().client, cleo);
    EXPECT_EQ(m_page->place().tab, QStringLiteral("time"));
    open(cleo, "no such step");
    EXPECT_EQ(m_page->presentStep(), firstOpenStep(readOnboardingCase(m_studio.database(), cleo, m_clock.today()).value()));
}

TEST_F(OnboardingPageTest, TheKeysWalkThroughTheStepsAndStopAtTheEnds)
{
    open(addCleo(), "profile");
    press(Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(m_page->presentStep(), StepKind::Profile);
    press(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(m_page->presentStep(), StepKind::Health);
    press(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(m_page->presentStep(), StepKind::TimeAndKit);
    press(Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(m_page->presentStep(), StepKind::Health);
}

TEST_F(OnboardingPageTest, HealthWaitsForConsentAndLeadsToIt)
{
    open(test::clientNamed(m_studio.database(), "Bo Arden"), "health");
    EXPECT_TRUE(says("Waits for consent."));
    QAbstractButton* way = button("Go to Profile");
    ASSERT_NE(way, nullptr);
    way->click();
    EXPECT_EQ(m_page->presentStep(), StepKind::Profile);
    EXPECT_FALSE(says("Waits for consent."));
}

TEST_F(OnboardingPageTest, MovementWaitsForTheIntake)
{
    open(addCleo(), "movement");
    EXPECT_TRUE(says("Waits for the health intake."));
    ASSERT_NE(button("Go to Health"), nullptr);
}

TEST_F(OnboardingPageTest, WhatIsBeingTypedIsKeptWhenAnotherClientIsOpened)
{
    const base::ClientId cleo = addCleo();
    const base::ClientId bo = test::clientNamed(m_studio.database(), "Bo Arden");
    open(cleo, "profile");
    field("Phone").setFocus();
    QTest::keyClicks(&field("Phone"), QStringLiteral("0151 22"));
    open(bo, "profile");
    EXPECT_EQ(profileOf(cleo).contact.phone, "0151 22");
    EXPECT_TRUE(field("Phone").text().isEmpty());
    EXPECT_EQ(field("Name").text(), QStringLiteral("Bo Arden"));
    EXPECT_TRUE(m_page->step()->keep());
    EXPECT_TRUE(profileOf(bo).contact.phone.empty());
    EXPECT_EQ(clientOf(bo).goal, "Stairs");
}

TEST_F(OnboardingPageTest, LeavingThePageKeepsWhatIsBeingTyped)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    field("Phone").setFocus();
    QTest::keyClicks(&field("Phone"), QStringLiteral("0151 33"));
    m_page->hide();
    EXPECT_EQ(profileOf(cleo).contact.phone, "0151 33");
}

TEST_F(OnboardingPageTest, WhatTheStudioRefusesIsNamedAndStaysInItsField)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    m_studio.rows(QStringLiteral("CREATE TRIGGER no_form BEFORE UPDATE ON form BEGIN SELECT RAISE(ABORT, 'the disk is full'); END"));
    enter("Phone", "0151 44");
    EXPECT_TRUE(says("Not saved."));
    EXPECT_TRUE(says("the disk is full"));
    EXPECT_EQ(field("Phone").text(), QStringLiteral("0151 44"));
    press(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(m_page->presentStep(), StepKind::Profile) << "does not leave what is not saved";
    m_studio.rows(QStringLiteral("DROP TRIGGER no_form"));
    EXPECT_TRUE(m_page->step()->keep());
    EXPECT_EQ(profileOf(cleo).contact.phone, "0151 44");
    EXPECT_FALSE(says("Not saved."));
}

TEST_F(OnboardingPageTest, AClientThatIsNotThereIsSaid)
{
    open(base::ClientId(99));
    EXPECT_TRUE(says("This client cannot be shown"));
    open(addCleo(), "time");
    EXPECT_FALSE(says("This client cannot be shown"));
}

TEST_F(OnboardingPageTest, EverythingHasANameForScreenReaders)
{
    const base::ClientId cleo = addCleo();
    for (const char* tab : {"profile", "health", "time"}) {
        open(cleo, tab);
        EXPECT_EQ(tests::unnamedFocusables(*m_page), QStringList()) << tab;
    }
}

}  // namespace chalk::ui::onboarding
