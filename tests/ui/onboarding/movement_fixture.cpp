#include "tests/ui/onboarding/movement_fixture.h"

#include "core/exchange/movement_screen_json.h"

#include <QApplication>
#include <QTest>

namespace chalk::test {

MovementTest::MovementTest()
{
    store::ClientWriter writer(m_studio.database());
    clients::Client client;
    client.name = "Cleo Marsh";
    client.birthDate = base::Date::fromYmd(1990, 4, 2);
    client.coach = base::CoachId(1);
    client.startedOn = m_today - 200;
    m_client = writer.add(client, m_today).value();
    clients::Profile profile;
    profile.sex = clients::NormSex::Female;
    profile.consentOn = m_today - 200;
    EXPECT_TRUE(writer.saveProfile(m_client, profile, m_today));
    clients::HealthIntake calm;
    for (clients::HealthAnswer& answer : calm.answers) {
        answer.isYes = false;
    }
    calm.isRegularExerciser = false;
    EXPECT_TRUE(writer.saveIntake(m_client, calm, {}, "calm", m_today));
    m_step.setNow([this] { return m_now; });
    QObject::connect(&m_step, &ui::onboarding::OnboardingStep::saved, &m_step, [this] { show(); });
    QObject::connect(&m_step, &ui::onboarding::OnboardingStep::refused, &m_step, [this](const QString& message) { m_refusals.append(message); });
    QObject::connect(&m_step, &ui::onboarding::OnboardingStep::nextAsked, &m_step, [this] { ++m_nextAsked; });
    m_step.resize(1120, 780);
    show();
    m_step.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&m_step));
    m_step.takeFocus();
}

void MovementTest::show()
{
    m_step.setCase(ui::onboarding::readOnboardingCase(m_studio.database(), m_client, m_today).value());
}

void MovementTest::press(int key, Qt::KeyboardModifiers modifiers)
{
    QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(key), modifiers);
}

void MovementTest::type(const QString& text)
{
    QTest::keyClicks(QApplication::focusWidget(), text);
}

void MovementTest::markPattern(const char* digits)
{
    for (const char* digit = digits; *digit != '\0'; ++digit) {
        press(Qt::Key_0 + (*digit - '0'));
    }
}

screens::MovementScreen MovementTest::kept()
{
    return store::ClientForms(m_studio.database()).movementScreen(m_client).value().value();
}

std::vector<screens::FieldTestDay> MovementTest::keptTests()
{
    return store::ClientForms(m_studio.database()).fieldTests(m_client).value();
}

void MovementTest::keepFinished(base::Date date, screens::Mark mark)
{
    screens::MovementScreen screen = m_screens.blankScreen(date);
    for (screens::PatternScreen& pattern : screen.patterns) {
        for (screens::PointMark& point : pattern.points) {
            point.mark = mark;
        }
    }
    screen.isFinished = true;
    store::ClientWriter writer(m_studio.database());
    EXPECT_TRUE(writer.saveForm(m_client, store::FormKind::MovementScreen, exchange::toJson(screen), date));
    EXPECT_TRUE(writer.finishForm(m_client, store::FormKind::MovementScreen));
}

}  // namespace chalk::test
