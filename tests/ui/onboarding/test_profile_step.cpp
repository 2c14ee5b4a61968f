#include "ui/onboarding/profile_step.h"

#include "core/store/client_forms.h"
#include "tests/ui/onboarding/onboarding_fixture.h"
#include "ui/common/segmented_choice.h"

#include <QAbstractButton>
#include <QCheckBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTest>

namespace chalk::ui::onboarding {

class ProfileStepTest : public test::OnboardingTest {
protected:
    QAbstractButton& button(const char* text)
    {
        for (QAbstractButton* one : m_page->findChildren<QAbstractButton*>()) {
            if (one->isVisible() && one->text() == QLatin1String(text)) {
                return *one;
            }
        }
        throw std::runtime_error(std::string("no button ") + text);
    }
    bool hasField(const char* name)
    {
        const auto lines = m_page->findChildren<QLineEdit*>();
        return std::any_of(lines.begin(), lines.end(), [name](const QLineEdit* line) { return line->isVisible() && line->accessibleName() == QLatin1String(name); });
    }
};

TEST_F(ProfileStepTest, ASameNameIsAskedAbout)
{
    open();
    QTest::keyClicks(&field("Name"), QStringLiteral("ada lund"));
    press(Qt::Key_Return);
    EXPECT_TRUE(says("There is a client of this name."));
    EXPECT_EQ(people(), 2U);
    button("Open that client").click();
    EXPECT_EQ(m_asked.client, test::clientNamed(m_studio.database(), "Ada Lund"));
    button("Somebody else").click();
    EXPECT_EQ(people(), 3U);
    EXPECT_FALSE(says("There is a client of this name."));
}

TEST_F(ProfileStepTest, BirthDatesAreReadInCommonOrdersAndTheAgeIsShown)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    for (const char* typed : {"1960-05-20", "20.5.1960", "20/5/1960", "20 May 1960"}) {
        enter("Birth date", typed);
        EXPECT_EQ(clientOf(cleo).birthDate, base::Date::fromYmd(1960, 5, 20)) << typed;
        EXPECT_TRUE(says("66 years old")) << typed;
    }
}

TEST_F(ProfileStepTest, ABirthDateThatCannotBeIsSaidInPlaceAndStaysUntilItIsMended)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    const std::pair<const char*, const char*> faulty[] = {
        {"31.2.1990", "There is no such day."}, {"25 Nov 2026", "This day is still to come."}, {"24 Nov 1905", "That is more than 120 years ago."}};
    for (const auto& [typed, fault] : faulty) {
        enter("Birth date", typed);
        EXPECT_TRUE(says(fault)) << typed;
        enter("Phone", typed);
        EXPECT_EQ(field("Birth date").text(), QLatin1String(typed)) << "lost by what was saved after it";
        EXPECT_TRUE(says(fault)) << typed;
        EXPECT_EQ(clientOf(cleo).birthDate, base::Date::fromYmd(1990, 4, 2)) << typed;
    }
    enter("Birth date", "24 Nov 2026");
    EXPECT_EQ(clientOf(cleo).birthDate, m_clock.today());
    enter("Birth date", "");
    EXPECT_FALSE(clientOf(cleo).birthDate);
}

TEST_F(ProfileStepTest, ConsentHasItsDateAndOpensTheMeasures)
{
    const base::ClientId bo = test::clientNamed(m_studio.database(), "Bo Arden");
    open(bo, "profile");
    EXPECT_TRUE(says("Nothing is measured before the client agrees"));
    QCheckBox* consent = m_page->findChildren<QCheckBox*>().front();
    ASSERT_EQ(consent->text(), QStringLiteral("Agrees that health data is kept"));
    consent->click();
    EXPECT_EQ(profileOf(bo).consentOn, m_clock.today());
    EXPECT_TRUE(says("Given on 24 Nov 2026."));
    EXPECT_FALSE(says("Nothing is measured before the client agrees"));
    consent->click();
    EXPECT_FALSE(profileOf(bo).consentOn);
}

TEST_F(ProfileStepTest, AMinorNeedsAGuardian)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    EXPECT_FALSE(hasField("Guardian"));
    enter("Birth date", "25 Nov 2008");
    ASSERT_TRUE(hasField("Guardian")) << "17 for one more day";
    EXPECT_EQ(stateOf(StepKind::Health, readOnboardingCase(m_studio.database(), cleo, m_clock.today()).value()), StepState::WaitsForConsent);
    enter("Guardian", "Rhea Marsh");
    EXPECT_EQ(profileOf(cleo).guardian, "Rhea Marsh");
    enter("Birth date", "24 Nov 2008");
    EXPECT_FALSE(hasField("Guardian")) << "18 today";
}

TEST_F(ProfileStepTest, TextIsKeptAfterAPauseOfTyping)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    QPlainTextEdit* goal = m_page->findChildren<QPlainTextEdit*>().front();
    goal->setFocus();
    QTest::keyClicks(goal, QStringLiteral("Lift the grandchildren"));
    EXPECT_TRUE(clientOf(cleo).goal.empty());
    EXPECT_TRUE(QTest::qWaitFor([&] { return clientOf(cleo).goal == "Lift the grandchildren"; }, 3000));
    QTest::keyClicks(goal, QStringLiteral(" again"));
    EXPECT_EQ(goal->toPlainText(), QStringLiteral("Lift the grandchildren again")) << "saving leaves what is typed on alone";
}

TEST_F(ProfileStepTest, WhatSomebodyElseWroteIsShownInTheFieldThatHasTheFocus)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    QPlainTextEdit* goal = m_page->findChildren<QPlainTextEdit*>().front();
    goal->setFocus();
    clients::Client other = clientOf(cleo);
    other.goal = "Strong for sailing";
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).change(other, m_clock.today()));
    m_page->refresh();
    EXPECT_EQ(goal->toPlainText(), QStringLiteral("Strong for sailing"));
    enter("Phone", "0700 1");
    EXPECT_EQ(clientOf(cleo).goal, "Strong for sailing") << "written over by what the field had before";
}

TEST_F(ProfileStepTest, WhatIsTypedIsSettledAgainstWhatWasSeenWhenItWasTyped)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    QPlainTextEdit* goal = m_page->findChildren<QPlainTextEdit*>().front();
    goal->setFocus();
    QTest::keyClicks(goal, QStringLiteral("Lift 140"));
    clients::Client other = clientOf(cleo);
    other.goal = "Strong for sailing";
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).change(other, m_clock.today()));
    m_page->refresh();
    EXPECT_EQ(goal->toPlainText(), QStringLiteral("Lift 140"));
    ASSERT_TRUE(m_dialogs.asked.empty());
    m_dialogs.answers = {0};  // keep theirs
    ASSERT_TRUE(QTest::qWaitFor([&] { return !m_dialogs.asked.empty(); }, 3000));
    EXPECT_EQ(clientOf(cleo).goal, "Strong for sailing");
    EXPECT_EQ(goal->toPlainText(), QStringLiteral("Strong for sailing")) << "what is kept, though the field has the focus";
}

TEST_F(ProfileStepTest, MeasuresAreTypedByKeyboardAndTheSameDayIsAddedTo)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    button("Add").click();
    EXPECT_TRUE(field("Body mass").hasFocus());
    enter("Body mass", "82,4");
    enter("Height", "178");
    press(Qt::Key_Return);
    const auto measures = [&] { return store::ClientForms(m_studio.database()).measures(cleo).value(); };
    ASSERT_EQ(measures().size(), 1U);
    EXPECT_EQ(measures().front().mass, base::Mass::of(base::Load::fromCenti(8240), base::MassUnit::Kilogram));
    button("Add").click();
    field("Blood pressure").setFocus();
    QTest::keyClicks(&field("Blood pressure"), QStringLiteral("182/90"));
    press(Qt::Key_Return);
    ASSERT_EQ(measures().size(), 1U);
    EXPECT_EQ(measures().front().height, clients::Millimetres(1780)) << "of earlier that day";
    EXPECT_EQ(measures().front().systolic, 182);
}

TEST_F(ProfileStepTest, MeasuresOfADayThatSomebodyElseTookMeanwhileAreShown)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    button("Add").click();
    const auto second = store::Database::open(m_studio.file(), store::OpenMode::MustExist).value();
    clients::BodyMeasures theirs;
    theirs.date = m_clock.today();
    theirs.heartRate = 58;
    ASSERT_TRUE(store::ClientWriter(*second).saveMeasures(cleo, theirs, m_clock.today()));
    m_page->refresh();  // as the window does at news: the editor stays, and what it began from too
    enter("Waist", "81");
    m_dialogs.answers = {2};
    press(Qt::Key_Return);
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    EXPECT_EQ(m_dialogs.asked[0].answers.size(), 3);
    const auto measures = store::ClientForms(m_studio.database()).measures(cleo).value();
    ASSERT_EQ(measures.size(), 1U);
    EXPECT_EQ(measures.front().heartRate, 58);
    EXPECT_EQ(measures.front().waist, clients::Millimetres(810));
}

TEST_F(ProfileStepTest, AMeasureThatCannotBeIsNamedAndNothingIsKept)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "profile");
    button("Add").click();
    enter("Body mass", "82");
    QTest::keyClicks(&field("Blood pressure"), QStringLiteral("80/120"));
    QTest::keyClick(&field("Blood pressure"), Qt::Key_Return);
    EXPECT_TRUE(says("the larger first"));
    EXPECT_TRUE(field("Blood pressure").hasFocus());
    EXPECT_TRUE(store::ClientForms(m_studio.database()).measures(cleo).value().empty());
    EXPECT_TRUE(m_page->closeOrClear());
    EXPECT_FALSE(m_page->closeOrClear());
}

TEST_F(ProfileStepTest, AnotherUnitLeavesTheMassAsItIs)
{
    const base::ClientId cleo = addCleo();
    clients::BodyMeasures day;
    day.date = m_clock.today();
    day.mass = base::Mass::of(base::Load::fromCenti(8000), base::MassUnit::Kilogram);
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).saveMeasures(cleo, day, m_clock.today()));
    open(cleo, "profile");
    button("lb").click();
    EXPECT_EQ(clientOf(cleo).unit, base::MassUnit::Pound);
    ASSERT_TRUE(clientOf(cleo).bodyMass);
    EXPECT_NEAR(clientOf(cleo).bodyMass->centi(), 17637, 1) << "80 kg are 176.37 lb, at 0.45359237 kg to the pound";
    EXPECT_EQ(store::ClientForms(m_studio.database()).measures(cleo).value().front().mass, day.mass);
    button("kg").click();
    EXPECT_NEAR(clientOf(cleo).bodyMass->centi(), 8000, 1);
}

TEST_F(ProfileStepTest, TheUnitOfLiftsThatRunIsLocked)
{
    open(test::clientNamed(m_studio.database(), "Ada Lund"), "profile");
    EXPECT_FALSE(button("lb").isEnabled());
    EXPECT_TRUE(says("Lifts that run keep the unit"));
}

}  // namespace chalk::ui::onboarding
