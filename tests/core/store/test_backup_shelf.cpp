#include "core/store/backup_shelf.h"

#include "core/store/key_ring.h"
#include "core/store/sealing.h"
#include "core/store/server_target.h"
#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

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

TEST_F(BackupShelfTest, OneIsCopiedToAnotherDiskWithItsOwnRotation)
{
    const QString stick = m_studio.folder() + QStringLiteral("/stick");
    const auto made = shelf().add(m_studio.database());
    const auto missing = shelf().copyTo(stick, *made);
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().kind, StoreError::Kind::NotThere);
    EXPECT_FALSE(QFileInfo::exists(stick)) << "a stick that is not there is not made up";
    ASSERT_TRUE(QDir().mkpath(stick));
    const auto copied = shelf().copyTo(stick, *made);
    ASSERT_TRUE(copied) << copied.error().message.toStdString();
    EXPECT_EQ(*copied, QString(stick + QStringLiteral("/studio/2026-11-24 17.45.09.chalkrung")));
    EXPECT_EQ(verifyBackup(*copied)->clients, 2);
    for (int i = 0; i < 13; ++i) {
        m_now.at.minute = 600 + i;
        ASSERT_TRUE(shelf().copyTo(stick, *shelf().add(m_studio.database())));
    }
    EXPECT_EQ(QDir(stick + QStringLiteral("/studio")).entryList(QDir::Files).size(), 11) << "ten, and the one of 17:45, which is still to come";
}

TEST_F(BackupShelfTest, TheLatestSoundOneIsFoundAmongDamagedOnes)
{
    EXPECT_FALSE(shelf().latestSound());
    const auto sound = shelf().add(m_studio.database());
    m_now.second = 20;
    const auto damaged = shelf().add(m_studio.database());
    ASSERT_TRUE(QFile::resize(*damaged, 20000));
    const auto found = shelf().latestSound();
    ASSERT_TRUE(found);
    EXPECT_EQ(found->backup.file, *sound);
    EXPECT_EQ(found->contents.clients, 2);
    EXPECT_FALSE(shelf().latestSound([](int, int) { return false; }));
}

TEST_F(BackupShelfTest, ADamagedStudioIsKeptApartFromTheBackups)
{
    const auto sound = shelf().add(m_studio.database());
    m_studio.close();
    const auto restored = shelf().restore(*sound, m_studio.file());
    ASSERT_TRUE(restored) << restored.error().message.toStdString();
    EXPECT_FALSE(restored->wasDamaged);
    EXPECT_EQ(shelf().list().size(), 2U) << "what was there is a backup like others";
    ASSERT_TRUE(QFile::resize(m_studio.file(), 20000));
    const auto rescued = shelf().restore(*sound, m_studio.file());
    ASSERT_TRUE(rescued) << rescued.error().message.toStdString();
    EXPECT_TRUE(rescued->wasDamaged);
    EXPECT_EQ(rescued->kept, QString(m_folder + QStringLiteral("/damaged 2026-11-24 17.45.09.chalkrung")));
    EXPECT_EQ(QFileInfo(rescued->kept).size(), 20000);
    EXPECT_EQ(shelf().list().size(), 2U);
    ASSERT_EQ(shelf().damaged().size(), 1U);
    EXPECT_EQ(shelf().damaged().front(), (KeptBackup{rescued->kept, m_now.at, 9}));
    m_studio.open();
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT count(*) FROM client")), QStringList{QStringLiteral("2")});
}

TEST_F(BackupShelfTest, OfASealedStudioTheKeysOpenWhatIsRestoredAndNoted)
{
    if (isServerTarget(m_studio.file())) {
        GTEST_SKIP() << "only a file is sealed";
    }
    const seal::Passphrase passphrase(QStringLiteral("three quiet mornings"));
    ASSERT_TRUE(Sealing(m_studio.database(), seal::KeyCost::least()).set(passphrase));
    Access access(m_studio.file());
    access.keys = m_studio.database().access().keys;
    const auto backup = shelf().add(m_studio.database());
    ASSERT_TRUE(backup) << backup.error().message.toStdString();
    m_studio.close();
    ASSERT_TRUE(QFile::resize(m_studio.file(), 20000));
    EXPECT_TRUE(shelf().latestSound()->isLocked) << "without its keys nothing is known of it";
    EXPECT_EQ(shelf().restore(*backup, m_studio.file()).error().kind, StoreError::Kind::Locked);
    EXPECT_EQ(QFileInfo(m_studio.file()).size(), 20000);
    KeyRing typed(passphrase);
    ASSERT_TRUE(typed.open(*seal::sealedHeadOf(*backup), *backup));
    EXPECT_EQ(shelf().latestSound({}, &typed)->contents.clients, 2);
    const auto rescued = shelf().restore(*backup, m_studio.file(), {}, access.keys.get());
    ASSERT_TRUE(rescued) << rescued.error().message.toStdString();
    EXPECT_TRUE(rescued->wasDamaged);
    EXPECT_EQ(noteRestored(m_studio.file(), *backup).error().kind, StoreError::Kind::Locked);
    ASSERT_TRUE(noteRestored(access, *backup));
    const auto opened = Database::open(access, OpenMode::MustExist);
    ASSERT_TRUE(opened);
    EXPECT_FALSE(test::clientNamed(**opened, "Ada Lund").isNone());
}

TEST_F(BackupShelfTest, OnlyADamagedOneIsDeletedByHand)
{
    const auto sound = shelf().add(m_studio.database());
    const QString damaged = m_folder + QStringLiteral("/damaged 2026-11-24 17.45.09.chalkrung");
    for (const char* ending : {"", "-wal"}) {
        ASSERT_TRUE(QFile::copy(*sound, damaged + QLatin1String(ending)));
    }
    EXPECT_EQ(shelf().discardDamaged(*sound).error().kind, StoreError::Kind::NotThere);
    EXPECT_TRUE(shelf().discardDamaged(damaged));
    EXPECT_TRUE(shelf().damaged().empty());
    EXPECT_EQ(QDir(m_folder).entryList(QDir::Files), QStringList{QFileInfo(*sound).fileName()});
}

TEST_F(BackupShelfTest, ARestoreIsNotedInTheStudioThatItBrought)
{
    const auto sound = shelf().add(m_studio.database());
    m_studio.close();
    ASSERT_TRUE(shelf().restore(*sound, m_studio.file()));
    ASSERT_TRUE(noteRestored(m_studio.file(), *sound));
    m_studio.open();
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT what, after FROM audit")),
              QStringList{QStringLiteral("studio_restored|{\"backup\":\"2026-11-24 17.45.09.chalkrung\"}")});
    EXPECT_EQ(noteRestored(QString(m_studio.folder() + QStringLiteral("/none.chalkrung")), *sound).error().kind, StoreError::Kind::NotThere);
}

TEST_F(BackupShelfTest, ALogThatWaitsBesideADamagedStudioIsNotPlayedIntoItsSuccessor)
{
    const auto sound = shelf().add(m_studio.database());
    m_studio.close();
    m_studio.open();  // so that the log holds what follows and no more
    m_studio.rows(QStringLiteral("UPDATE client SET name = 'Somebody Else'"));
    const QString log = m_studio.file() + QStringLiteral("-wal");
    QFile waiting(log);
    ASSERT_TRUE(waiting.open(QIODevice::ReadOnly));
    const QByteArray frames = waiting.readAll();
    ASSERT_GT(frames.size(), 0);
    m_studio.close();
    QFile damaged(m_studio.file());
    ASSERT_TRUE(damaged.open(QIODevice::ReadWrite) && damaged.write(QByteArray(100, '\x55')) == 100);
    damaged.close();
    QFile again(log);
    ASSERT_TRUE(again.open(QIODevice::WriteOnly) && again.write(frames) == frames.size());
    again.close();
    const auto rescued = shelf().restore(*sound, m_studio.file());
    ASSERT_TRUE(rescued) << rescued.error().message.toStdString();
    EXPECT_EQ(QFileInfo(rescued->kept + QStringLiteral("-wal")).size(), frames.size()) << "it is kept with what it belongs to";
    m_studio.open();
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT count(*) FROM client WHERE name = 'Somebody Else'")), QStringList{QStringLiteral("0")});
}

}  // namespace chalk::store
