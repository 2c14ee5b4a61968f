#include "tests/ui/onboarding/movement_fixture.h"

#include <QApplication>
#include <QTest>

namespace chalk::test {

MovementTest::MovementTest()
{
    m_client = addCleo(200);
    clients::Profile profile = store::ClientForms(m_studio.database()).profile(m_client).value();
    profile.sex = clients::NormSex::Female;
    EXPECT_TRUE(store::ClientWriter(m_studio.database()).saveProfile(m_client, profile, m_today));
    answerAllNo(m_client);
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
    OnboardingBench::keepFinished(m_client, date, mark);
}

}  // namespace chalk::test
