#include "ui/settings/backup_section.h"

#include "tests/support/accessible_audit.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/look.h"
#include "ui/settings/backup_notice.h"

#include <QDir>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QSettings>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>

namespace chalk::ui::settings {

class BackupSectionTest : public ::testing::Test {
protected:
    BackupSectionTest()
    {
        m_section.resize(1100, 800);
        m_section.show();
    }
    common::ActionButton& button(const char* text)
    {
        for (auto* button : m_section.findChildren<common::ActionButton*>()) {
            if (button->text() == QString::fromUtf8(text)) {
                return *button;
            }
        }
        throw std::runtime_error(text);
    }
    /// Whether words are on show, in a label or a banner.
    bool shows(const char* words)
    {
        const auto all = m_section.findChildren<QWidget*>();
        return std::any_of(all.begin(), all.end(), [words](const QWidget* widget) {
            const auto* label = qobject_cast<const QLabel*>(widget);
            return widget->isVisible() && ((label != nullptr && label->text().contains(QString::fromUtf8(words))) || widget->accessibleName().contains(QString::fromUtf8(words)));
        });
    }
    void backUp()
    {
        button("Back up now").click();
        ASSERT_TRUE(QTest::qWaitFor([this] { return !m_keeper.isMaking(); }, 10000));
    }

    test::StudioOnTest m_studio;
    store::BackupShelf::Moment m_now{{test::smallStudioDay(), 362}, 1};
    common::BackupKeeper m_keeper{m_studio.file(), [this] { return m_now; }};
    common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
    QSettings m_settings{m_studio.folder() + QStringLiteral("/settings.ini"), QSettings::IniFormat};
    BackupSection m_section{{m_look, m_dialogs, m_settings, m_keeper}};
};

TEST_F(BackupSectionTest, BackingUpIsShownAndListed)
{
    EXPECT_TRUE(shows("None yet."));
    EXPECT_TRUE(shows("The latest 10 are kept"));
    button("Back up now").click();
    EXPECT_FALSE(button("Back up now").isVisible());
    EXPECT_TRUE(button("Stop").isVisible());
    EXPECT_FALSE(button("Restore…").isEnabled());
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_keeper.isMaking(); }, 10000));
    EXPECT_TRUE(shows("Today 06:02 · "));
    EXPECT_TRUE(shows("opened and verified after it was written"));
    EXPECT_EQ(m_section.findChild<QListWidget*>()->count(), 1);
    EXPECT_TRUE(button("Back up now").isVisible());
}

TEST_F(BackupSectionTest, AFurtherFolderIsKeptAndMissedInWords)
{
    const QString stick = m_studio.folder() + QStringLiteral("/stick");
    ASSERT_TRUE(QDir().mkpath(stick));
    m_dialogs.paths = {stick};
    button("Choose a folder…").click();
    EXPECT_EQ(keptFurtherFolder(m_settings), stick);
    EXPECT_TRUE(shows("Each backup is copied to"));
    backUp();
    EXPECT_EQ(QDir(stick + QStringLiteral("/studio")).entryList(QDir::Files).size(), 1);
    ASSERT_TRUE(QDir(stick).removeRecursively());
    m_now.second = 2;
    backUp();
    EXPECT_TRUE(shows("is not there. Plug it in"));
    EXPECT_EQ(m_section.findChild<QListWidget*>()->count(), 2) << "the backup is made all the same";
    button("No longer").click();
    EXPECT_EQ(keptFurtherFolder(m_settings), QString());
    EXPECT_FALSE(shows("is not there. Plug it in"));
}

TEST_F(BackupSectionTest, WhatDidNotGoIsSaidHereOrAcrossTheWindow)
{
    BackupNotice notice(m_look, m_keeper);
    QSignalSpy asked(&notice, &BackupNotice::backupsAsked);
    QFile inTheWay(m_studio.folder() + QStringLiteral("/backups"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    backUp();
    EXPECT_TRUE(shows("No backup was made."));
    EXPECT_TRUE(shows("The studio itself is saved."));
    EXPECT_FALSE(notice.isVisible()) << "it is told at its place";
    m_section.hide();
    EXPECT_TRUE(notice.isVisible());
    m_section.show();
    EXPECT_FALSE(notice.isVisible());
    m_section.hide();
    notice.findChildren<common::ActionButton*>().last()->click();
    EXPECT_EQ(asked.count(), 1);
    ASSERT_TRUE(inTheWay.remove());
    notice.findChildren<common::ActionButton*>().first()->click();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_keeper.isMaking(); }, 10000));
    EXPECT_FALSE(notice.isVisible());
    m_section.show();
    EXPECT_FALSE(shows("No backup was made."));
}

TEST_F(BackupSectionTest, TwoOfOneMinuteAreToldApart)
{
    backUp();
    m_now.second = 5;
    backUp();
    const auto* list = m_section.findChild<QListWidget*>();
    ASSERT_EQ(list->count(), 2);
    EXPECT_TRUE(list->item(0)->text().startsWith(QStringLiteral("today 06:02:05 · "))) << list->item(0)->text().toStdString();
    EXPECT_TRUE(list->item(1)->text().startsWith(QStringLiteral("today 06:02:01 · ")));
}

TEST_F(BackupSectionTest, DamageIsNamedAndLeadsBack)
{
    const common::BannerMessage said = backupTrouble({store::StoreError::Kind::Damaged, QStringLiteral("x is damaged: page 7")});
    EXPECT_EQ(said.signal, common::Signal::Pain);
    EXPECT_TRUE(said.text.contains(QStringLiteral("Go back to the last sound backup")));
}

TEST_F(BackupSectionTest, TheChosenOneIsAskedFor)
{
    backUp();
    m_now.second = 5;
    backUp();
    QSignalSpy asked(&m_section, &BackupSection::restoreAsked);
    auto* list = m_section.findChild<QListWidget*>();
    ASSERT_EQ(list->count(), 2);
    list->setCurrentRow(1);
    button("Restore…").click();
    ASSERT_EQ(asked.count(), 1);
    EXPECT_TRUE(asked.at(0).at(0).toString().endsWith(QStringLiteral("06.02.01.chalkrung")));
}

TEST_F(BackupSectionTest, ADamagedFileIsNamedAndDeletedWhenThePersonAgrees)
{
    backUp();
    const QString folder = m_keeper.shelf().folder();
    const QString damaged = folder + QStringLiteral("/damaged 2026-11-24 06.00.00.chalkrung");
    ASSERT_TRUE(QFile::copy(m_keeper.last()->file, damaged));
    EXPECT_FALSE(shows("Kept today 06:00"));
    m_section.refresh();
    EXPECT_TRUE(shows("Kept today 06:00"));
    EXPECT_EQ(tests::unnamedFocusables(m_section), QStringList());
    button("Delete…").click();
    EXPECT_TRUE(QFile::exists(damaged)) << "the safe answer";
    m_dialogs.answers = {1};
    button("Delete…").click();
    EXPECT_FALSE(QFile::exists(damaged));
    EXPECT_FALSE(shows("Kept today 06:00"));
    EXPECT_EQ(m_keeper.shelf().list().size(), 1U);
}

TEST_F(BackupSectionTest, EverythingThatCanBeUsedHasAName)
{
    backUp();
    EXPECT_EQ(tests::unnamedFocusables(m_section), QStringList());
    EXPECT_GT(tests::focusableCount(m_section), 3);
}

}  // namespace chalk::ui::settings
