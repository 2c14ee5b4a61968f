#include "tests/ui/onboarding/onboarding_fixture.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <stdexcept>

namespace chalk::test {

OnboardingTest::OnboardingTest() : m_page(std::make_unique<ui::onboarding::OnboardingPage>(m_services))
{
    QObject::connect(m_page.get(), &ui::shell::Page::placeAsked, m_page.get(), [this](const ui::shell::Place& place) { m_asked = place; });
    m_page->resize(1360, 856);
    m_page->show();
    m_page->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(m_page.get(), 5000));
}

void OnboardingTest::open(base::ClientId client, const char* tab)
{
    ui::shell::Place place;
    place.client = client;
    place.tab = QLatin1String(tab);
    m_page->open(place);
}

QLineEdit& OnboardingTest::field(const char* name)
{
    for (QLineEdit* line : m_page->findChildren<QLineEdit*>()) {
        if (line->isVisible() && line->accessibleName() == QLatin1String(name)) {
            return *line;
        }
    }
    throw std::runtime_error(std::string("no field ") + name);
}

void OnboardingTest::enter(const char* name, const char* text)
{
    QLineEdit& line = field(name);
    line.setFocus();
    line.selectAll();
    QTest::keyClick(&line, Qt::Key_Delete);
    QTest::keyClicks(&line, QString::fromUtf8(text));
    QTest::keyClick(&line, Qt::Key_Tab);
}

bool OnboardingTest::says(const char* text)
{
    const auto labels = m_page->findChildren<QLabel*>();
    return std::any_of(labels.begin(), labels.end(), [text](const QLabel* label) { return label->isVisible() && label->text().contains(QString::fromUtf8(text)); });
}

QPushButton* OnboardingTest::button(const char* text)
{
    for (QPushButton* one : m_page->findChildren<QPushButton*>()) {
        if (one->isVisible() && one->text() == QString::fromUtf8(text)) {
            return one;
        }
    }
    return nullptr;
}

QComboBox* OnboardingTest::box(const char* name)
{
    for (QComboBox* one : m_page->findChildren<QComboBox*>()) {
        if (one->isVisible() && one->accessibleName() == QLatin1String(name)) {
            return one;
        }
    }
    return nullptr;
}

void OnboardingTest::press(Qt::Key key, Qt::KeyboardModifiers modifiers)
{
    QTest::keyClick(m_page->focusWidget() == nullptr ? m_page.get() : m_page->focusWidget(), key, modifiers);
}

clients::Client OnboardingTest::clientOf(base::ClientId client)
{
    return store::ClientReader(m_studio.database()).read(client, m_clock.today()).value().client;
}

clients::Profile OnboardingTest::profileOf(base::ClientId client)
{
    return store::ClientForms(m_studio.database()).profile(client).value();
}

std::size_t OnboardingTest::people()
{
    return store::ClientReader(m_studio.database()).names().value().size();
}

}  // namespace chalk::test
