#include "ui/settings/sharing_section.h"

#include "core/store/server_logins.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/look.h"

#include <QCoreApplication>
#include <QPushButton>

#include <gtest/gtest.h>

namespace chalk::ui::settings {

TEST(SharingSection, SaysWhereTheStudioLivesAndWhoWorksThere)
{
    test::StudioOnTest studio;
    const common::Look look;
    tests::ScriptedDialogs dialogs;
    SharingSection section(look, studio.database(), dialogs);
    EXPECT_EQ(section.words().at(0), studio.file());
    EXPECT_EQ(section.words().at(2), QStringLiteral("Nobody named"));
    EXPECT_TRUE(section.words().at(3).startsWith(QStringLiteral("Owner")));
    studio.database().setAuthor(base::CoachId(2));
    section.refresh();
    const QString second = studio.rows(QStringLiteral("SELECT name FROM coach WHERE id = 2")).at(0);
    EXPECT_EQ(section.words().at(2), second);
    EXPECT_TRUE(section.words().at(4).contains(second));
    EXPECT_EQ(section.words().size(), 5) << "a file has no logins";
    EXPECT_EQ(section.findChild<QPushButton*>()->text(), QStringLiteral("Move to a server…"));
    EXPECT_TRUE(tests::unnamedFocusables(section).isEmpty()) << tests::unnamedFocusables(section).join(QLatin1Char('\n')).toStdString();
}

/// A studio on a server at which Ines signs in as a coach.
class SharingSectionOnServer : public ::testing::Test {
protected:
    void SetUp() override
    {
        if (test::serverOnTest().isEmpty()) {
            GTEST_SKIP() << "there is no server";
        }
        const auto added = store::ServerLogins(m_studio.database()).add({m_login, store::Role::Coach, "Ines"}, m_password);
        ASSERT_TRUE(added) << added.error().message.toStdString();
    }
    void TearDown() override
    {
        if (!test::serverOnTest().isEmpty()) {
            EXPECT_TRUE(store::ServerLogins(m_studio.database()).remove(m_login));
        }
    }
    std::unique_ptr<store::Database> asInes()
    {
        store::Access access(QString(m_studio.file()).replace(QStringLiteral("chalk@"), m_login + QLatin1Char('@')));
        access.password = m_password;
        return store::Database::open(access, store::OpenMode::MustExist).value();
    }

    const QString m_login = QStringLiteral("s%1_ines").arg(QCoreApplication::applicationPid());
    const QString m_password = QStringLiteral("a long enough one");
    test::StudioOnTest m_studio;
    common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
};

TEST_F(SharingSectionOnServer, TellsAnOwnerWhoMaySignInAndWhoIsThere)
{
    SharingSection section(m_look, m_studio.database(), m_dialogs);
    ASSERT_EQ(section.words().size(), 7);
    EXPECT_EQ(section.words().at(5), QStringLiteral("Ines, coach, as %1").arg(m_login));
    EXPECT_FALSE(section.words().at(6).contains(m_login));
    EXPECT_EQ(section.findChild<QPushButton*>()->text(), QStringLiteral("Move to a file…"));
    const auto ines = asInes();
    section.refresh();
    EXPECT_TRUE(section.words().at(6).contains(m_login)) << section.words().at(6).toStdString();
}

TEST_F(SharingSectionOnServer, ACoachSeesNoLogins)
{
    const auto ines = asInes();
    const SharingSection section(m_look, *ines, m_dialogs);
    EXPECT_EQ(section.words().size(), 5);
    EXPECT_EQ(section.findChild<QPushButton*>(), nullptr) << "the studio as a whole is its owner’s";
    EXPECT_EQ(section.words().at(2), QStringLiteral("Ines"));
    EXPECT_TRUE(section.words().at(3).startsWith(QStringLiteral("Coach")));
}

}  // namespace chalk::ui::settings
