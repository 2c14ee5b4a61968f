#include "ui/lock/lock_section.h"

#include "core/store/key_ring.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/small_studio.h"
#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"
#include "ui/lock/lock_desk.h"
#include "ui/lock/passphrase_field.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QSettings>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::lock {

class LockSectionTest : public ::testing::Test {
protected:
    LockSectionTest()
    {
        m_section.resize(1080, 820);
        m_section.show();
    }
    void type(int field, const QString& text) { m_section.findChildren<PassphraseField*>()[field]->field()->setText(text); }
    QCheckBox* understood() { return m_section.findChild<QCheckBox*>(); }
    common::ActionButton* button(const QString& text)
    {
        for (auto* one : m_section.findChildren<common::ActionButton*>()) {
            if (one->text() == text) {
                return one;
            }
        }
        return nullptr;
    }
    void typeNew(const QString& text)
    {
        type(1, text);
        type(2, text);
        understood()->setChecked(true);
    }
    void press(const QString& text, const QString& said)
    {
        button(text)->click();
        EXPECT_TRUE(QTest::qWaitFor([&] { return m_section.saying() == said; }, 20'000)) << m_section.saying().toStdString();
    }
    bool opensWith(const QString& passphrase) const
    {
        store::Access access(m_studio.file());
        access.keys = std::make_shared<store::KeyRing>(seal::Passphrase(passphrase));
        return store::Database::open(access, store::OpenMode::ReadOnly).has_value();
    }

    test::StudioOnTest m_studio;
    common::Look m_look;
    QSettings m_settings{m_studio.folder() + QStringLiteral("/settings.ini"), QSettings::IniFormat};
    LockDesk m_desk{m_look, m_studio.database(), m_settings};
    LockSection m_section{m_look, m_studio.database(), m_desk, nullptr, seal::KeyCost::least()};
    const QString m_first = QStringLiteral("three quiet mornings");
};

TEST_F(LockSectionTest, SealsOnlyWhatIsTypedTwiceAndUnderstood)
{
    auto* seal = button(QStringLiteral("Seal the studio"));
    EXPECT_FALSE(seal->isEnabled());
    typeNew(QStringLiteral("short"));
    EXPECT_FALSE(seal->isEnabled());
    typeNew(m_first);
    EXPECT_TRUE(seal->isEnabled());
    understood()->setChecked(false);
    EXPECT_FALSE(seal->isEnabled());
    understood()->setChecked(true);
    type(2, QStringLiteral("three quiet morning"));
    EXPECT_FALSE(seal->isEnabled());
}

TEST_F(LockSectionTest, SetsChangesAndTakesAway)
{
    EXPECT_FALSE(button(QStringLiteral("Lock now"))->isEnabled());
    typeNew(m_first);
    press(QStringLiteral("Seal the studio"), QStringLiteral("The studio is sealed."));
    EXPECT_TRUE(m_desk.canLock());
    EXPECT_TRUE(button(QStringLiteral("Lock now"))->isEnabled());
    EXPECT_TRUE(opensWith(m_first));
    EXPECT_FALSE(opensWith(QStringLiteral("no")));
    for (const auto* field : m_section.findChildren<PassphraseField*>()) {
        EXPECT_EQ(field->text(), QString());
    }

    type(0, QStringLiteral("not this one"));
    typeNew(QStringLiteral("four loud evenings"));
    press(QStringLiteral("Change the passphrase"), QStringLiteral("That is not the present passphrase. Nothing was changed."));
    EXPECT_TRUE(opensWith(m_first));
    type(0, m_first);
    typeNew(QStringLiteral("four loud evenings"));
    press(QStringLiteral("Change the passphrase"), QStringLiteral("The passphrase is another one now."));
    EXPECT_FALSE(opensWith(m_first));
    EXPECT_TRUE(opensWith(QStringLiteral("four loud evenings")));

    type(0, QStringLiteral("four loud evenings"));
    press(QStringLiteral("Remove the passphrase"), QStringLiteral("The passphrase is gone. Nothing is sealed any more."));
    EXPECT_FALSE(m_desk.canLock());
    EXPECT_TRUE(opensWith(QString()));
}

TEST_F(LockSectionTest, EnterInAFieldSealsAsSoonAsEverythingIsThere)
{
    typeNew(m_first);
    understood()->setChecked(false);
    QTest::keyClick(m_section.findChildren<PassphraseField*>().at(2)->field(), Qt::Key_Return);
    EXPECT_FALSE(m_desk.canLock());
    EXPECT_EQ(m_section.saying(), QString());
    understood()->setChecked(true);
    QTest::keyClick(m_section.findChildren<PassphraseField*>().at(2)->field(), Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([this] { return m_section.saying() == QStringLiteral("The studio is sealed."); }, 10'000));
}

TEST_F(LockSectionTest, TheMinutesAreKept)
{
    auto* minutes = m_section.findChild<common::SegmentedChoice*>();
    EXPECT_EQ(minutes->chosen(), 3) << "a quarter of an hour";
    Q_EMIT minutes->choiceMade(1);
    EXPECT_EQ(m_desk.minutes(), 2);
    m_section.refresh();
    EXPECT_EQ(minutes->chosen(), 1);
}

TEST_F(LockSectionTest, EverythingInItHasAName)
{
    EXPECT_GT(tests::focusableCount(m_section), 4);
    EXPECT_EQ(tests::unnamedFocusables(m_section), QStringList());
}

}  // namespace chalk::ui::lock
