#include "ui/common/backup_keeper.h"

#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>

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
    EXPECT_EQ(shelf().list().front().file, made.at(0).at(0).toString());
    m_keeper.start();
    EXPECT_FALSE(m_keeper.isMaking()) << "the day has one";
    m_now.at.day = m_now.at.day + 1;
    m_keeper.start();
    waitFor(made, 2);
    EXPECT_EQ(shelf().list().size(), 2U);
}

TEST_F(BackupKeeperTest, TheLastOneIsMadeAtTheEnd)
{
    const auto file = m_keeper.makeLast();
    ASSERT_TRUE(file) << file.error().message.toStdString();
    EXPECT_EQ(store::contentsOf(*file)->clients, 2);
}

TEST_F(BackupKeeperTest, WhatDoesNotGoIsToldOnceADay)
{
    QFile inTheWay(m_studio.folder() + QStringLiteral("/backups"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    QSignalSpy failed(&m_keeper, &BackupKeeper::failed);
    m_keeper.start();
    waitFor(failed, 1);
    EXPECT_TRUE(failed.at(0).at(0).toString().contains(QStringLiteral("backups/studio cannot be made")));
    m_keeper.start();
    while (m_keeper.isMaking()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 100);
    }
    EXPECT_EQ(failed.count(), 1);
    EXPECT_FALSE(m_keeper.makeLast());
}

}  // namespace chalk::ui::common
