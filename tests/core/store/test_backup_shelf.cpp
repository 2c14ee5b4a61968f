#include "core/store/backup_shelf.h"

#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>

#include <gtest/gtest.h>

namespace chalk::store {

class BackupShelfTest : public ::testing::Test {
protected:
    BackupShelf shelf() { return {m_folder, [this] { return m_now; }}; }

    test::StudioOnTest m_studio;
    QString m_folder = BackupShelf::folderFor(m_studio.file());
    BackupShelf::Moment m_now{{test::smallStudioDay(), 17 * 60 + 45}, 9};
};

TEST_F(BackupShelfTest, ABackupIsNamedByItsMoment)
{
    EXPECT_TRUE(shelf().list().empty());
    EXPECT_FALSE(shelf().hasOneOf(test::smallStudioDay()));
    const auto file = shelf().add(m_studio.database());
    ASSERT_TRUE(file) << file.error().message.toStdString();
    EXPECT_EQ(*file, QString(m_studio.folder() + QStringLiteral("/backups/studio/2026-11-24 17.45.09.chalkrung")));
    EXPECT_TRUE(shelf().hasOneOf(test::smallStudioDay()));
    EXPECT_FALSE(shelf().hasOneOf(test::smallStudioDay() - 1));
    const auto second = shelf().add(m_studio.database());
    EXPECT_TRUE(second->endsWith(QStringLiteral("17.45.09 (2).chalkrung"))) << "two of one second";
    m_now.second = 11;
    const auto latest = shelf().add(m_studio.database());
    const auto list = shelf().list();
    ASSERT_EQ(list.size(), 3U);
    EXPECT_EQ(list.front(), (KeptBackup{*latest, m_now.at, 11}));
    EXPECT_EQ(QDir(m_folder).entryList(QDir::Files).size(), 3) << "nothing else lies there";
}

TEST_F(BackupShelfTest, WhatMayGoGoesWhenOneIsMadeAndWhatIsNotOursStays)
{
    ASSERT_TRUE(QDir().mkpath(m_folder));
    for (const char* name : {"notes.txt", "copy of 2026-11-24 17.45.09.chalkrung"}) {
        QFile other(m_folder + QLatin1Char('/') + QLatin1String(name));
        ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    }
    for (int i = 0; i < 13; ++i) {
        m_now.at.minute = 600 + i;
        ASSERT_TRUE(shelf().add(m_studio.database()));
    }
    EXPECT_EQ(shelf().list().size(), 10U);
    EXPECT_EQ(shelf().list().back().made.minute, 603);
    EXPECT_EQ(QDir(m_folder).entryList(QDir::Files).size(), 12);
}

}  // namespace chalk::store
