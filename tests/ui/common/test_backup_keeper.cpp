#include "ui/common/backup_keeper.h"

#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::common {

class BackupKeeperTest : public ::testing::Test {
protected:
    store::BackupShelf shelf() { return {store::BackupShelf::folderFor(m_studio.file()), [this] { return m_now; }}; }
    void waitFor(QSignalSpy& spy, int count)
    {
        while (spy.count() < count && spy.wait(5000)) {
        }
        ASSERT_EQ(spy.count(), count);
    }

    test::StudioOnTest m_studio;
    store::BackupShelf::Moment m_now{{test::smallStudioDay(), 500}, 1};
    BackupKeeper m_keeper{m_studio.file(), [this] { return m_now; }};
};

TEST_F(BackupKeeperTest, ADayThatHasNoneGetsOneWhileTheStudioIsOpen)
{
    QSignalSpy made(&m_keeper, &BackupKeeper::made);
    m_keeper.start();
    EXPECT_TRUE(m_keeper.isMaking());
    waitFor(made, 1);
    EXPECT_FALSE(m_keeper.isMaking());
    ASSERT_EQ(shelf().list().size(), 1U);
    EXPECT_EQ(shelf().list().front().file, m_keeper.last()->file);
    m_keeper.start();
    EXPECT_FALSE(m_keeper.isMaking()) << "the day has one";
    m_now.at.day = m_now.at.day + 1;
    m_keeper.start();
    waitFor(made, 2);
    EXPECT_EQ(shelf().list().size(), 2U);
}

TEST_F(BackupKeeperTest, OneIsMadeWhenSomebodyAsksAndCopiedToAFurtherFolder)
{
    QSignalSpy made(&m_keeper, &BackupKeeper::made);
    const QString stick = m_studio.folder() + QStringLiteral("/stick");
    m_keeper.setFurtherFolder(stick);
    m_keeper.makeNow();
    m_keeper.makeNow();
    waitFor(made, 1);
    EXPECT_EQ(m_keeper.last()->furtherFault, QString(stick + QStringLiteral(" is not there"))) << "the stick is missing: the backup is made all the same";
    EXPECT_EQ(store::contentsOf(m_keeper.last()->file)->clients, 2);
    ASSERT_TRUE(QDir().mkpath(stick));
    m_now.second = 2;
    m_keeper.makeNow();
    waitFor(made, 2);
    EXPECT_EQ(m_keeper.last()->furtherFault, QString());
    EXPECT_EQ(m_keeper.last()->furtherFile, QString(stick + QStringLiteral("/studio/2026-11-24 08.20.02.chalkrung")));
    EXPECT_EQ(store::verifyBackup(m_keeper.last()->furtherFile)->clients, 2);
}

TEST_F(BackupKeeperTest, TheLastOneIsMadeAtTheEnd)
{
    m_keeper.start();
    m_keeper.end();
    EXPECT_FALSE(m_keeper.isMaking());
    const std::size_t before = shelf().list().size();
    EXPECT_FALSE(m_keeper.makeLast());
    ASSERT_EQ(shelf().list().size(), before + 1);
    EXPECT_EQ(store::contentsOf(shelf().list().front().file)->clients, 2);
    EXPECT_EQ(m_keeper.makeLast([](int, int) { return false; })->kind, store::StoreError::Kind::Cancelled);
}

TEST_F(BackupKeeperTest, WhatDoesNotGoIsToldOnceADayAndWheneverItWasAskedFor)
{
    const QString inTheWay = m_studio.folder() + QStringLiteral("/backups");
    QFile file(inTheWay);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    QSignalSpy failed(&m_keeper, &BackupKeeper::failed);
    m_keeper.start();
    waitFor(failed, 1);
    EXPECT_TRUE(m_keeper.fault()->message.contains(QStringLiteral("backups/studio cannot be made")));
    m_keeper.start();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_keeper.isMaking(); }, 5000));
    EXPECT_EQ(failed.count(), 1);
    m_keeper.makeNow();
    waitFor(failed, 2);
    ASSERT_TRUE(QFile::remove(inTheWay));
    QSignalSpy made(&m_keeper, &BackupKeeper::made);
    m_keeper.start();
    waitFor(made, 1);
    EXPECT_FALSE(m_keeper.fault());
}

}  // namespace chalk::ui::common
