#include "core/store/backup.h"

#include "core/store/record_writer.h"
#include "core/store/studio_check.h"
#include "core/store/studio_export.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

namespace chalk::store {

class BackupTest : public ::testing::Test {
protected:
    QString path(const char* name) const { return m_studio.folder() + QLatin1Char('/') + QLatin1String(name); }
    void recordASquat()
    {
        const base::ClientId ada = test::clientNamed(m_studio.database(), "Ada Lund");
        const base::LiftId squat = test::liftOf(m_studio.database(), ada, lifts::Pattern::Squat);
        RecordWriter records(m_studio.database(), test::someMoment);
        ASSERT_TRUE(records.record(ada, {}, {{squat, {test::smallStudioDay(), test::exposureOf({{45, 8, 2}})}}}));
    }
    exchange::StudioDocument documentIn(const QString& file)
    {
        const auto database = Database::open(file, OpenMode::MustExist);
        EXPECT_TRUE(database);
        return database ? exportStudio(**database, test::smallStudioDay()).value() : exchange::StudioDocument();
    }
    QStringList filesBeside() const { return QDir(m_studio.folder()).entryList(QDir::Files); }

    test::StudioOnTest m_studio;
};

TEST_F(BackupTest, ACopyHoldsAllThatTheStudioHoldsAndNobodyElseReadsIt)
{
    const auto before = exportStudio(m_studio.database(), test::smallStudioDay()).value();
    ASSERT_TRUE(copyStudio(m_studio.database(), path("copy.chalkrung")));
    recordASquat();
    EXPECT_EQ(documentIn(path("copy.chalkrung")), before) << "what came later is not in it";
    EXPECT_EQ(QFileInfo(path("copy.chalkrung")).permissions() & (QFile::ReadGroup | QFile::ReadOther | QFile::WriteGroup | QFile::WriteOther), QFile::Permissions());
    EXPECT_FALSE(filesBeside().contains(QStringLiteral("copy.chalkrung.part")));
}

TEST_F(BackupTest, WhatIsThereIsNeverWrittenOver)
{
    ASSERT_TRUE(copyStudio(m_studio.database(), path("copy.chalkrung")));
    const auto again = copyStudio(m_studio.database(), path("copy.chalkrung"));
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, StoreError::Kind::Refused);
    EXPECT_TRUE(again.error().message.contains(QStringLiteral("copy.chalkrung is there already")));
    EXPECT_FALSE(copyStudio(m_studio.database(), path("no/such/folder.chalkrung")));
}

TEST_F(BackupTest, OneThatIsStoppedLeavesNothingBehind)
{
    const QStringList before = filesBeside();
    const auto stopped = copyStudio(m_studio.database(), path("copy.chalkrung"), [](int, int) { return false; });
    // A small studio is copied in one step, and then there is nothing to stop any more.
    EXPECT_EQ(filesBeside().size(), before.size() + (stopped ? 1 : 0));
    EXPECT_TRUE(stopped || stopped.error().kind == StoreError::Kind::Cancelled);
}

TEST_F(BackupTest, ContentsAreToldWithoutTouchingTheFile)
{
    ASSERT_TRUE(copyStudio(m_studio.database(), path("copy.chalkrung")));
    const QStringList before = filesBeside();
    const auto contents = contentsOf(path("copy.chalkrung"));
    ASSERT_TRUE(contents) << contents.error().message.toStdString();
    EXPECT_EQ(contents->clients, 2);
    EXPECT_EQ(contents->lifts, 3);
    EXPECT_EQ(contents->sessions, 4);
    EXPECT_GT(contents->entries, 5);
    EXPECT_FALSE(contents->lastActAtUtc.isEmpty());
    EXPECT_EQ(filesBeside(), before);
    EXPECT_EQ(contentsOf(path("none.chalkrung")).error().kind, StoreError::Kind::NotThere);
    QFile other(path("other.chalkrung"));
    ASSERT_TRUE(other.open(QIODevice::WriteOnly) && other.write("a letter") > 0);
    other.close();
    EXPECT_EQ(contentsOf(path("other.chalkrung")).error().kind, StoreError::Kind::NotAStudio);
}

TEST_F(BackupTest, RestoringPutsTheBackupInPlaceAndKeepsWhatWasThere)
{
    const auto before = exportStudio(m_studio.database(), test::smallStudioDay()).value();
    ASSERT_TRUE(copyStudio(m_studio.database(), path("copy.chalkrung")));
    recordASquat();
    const auto after = exportStudio(m_studio.database(), test::smallStudioDay()).value();
    m_studio.close();
    const auto restored = restoreStudio(path("copy.chalkrung"), m_studio.file(), path("kept.chalkrung"));
    ASSERT_TRUE(restored) << restored.error().message.toStdString();
    EXPECT_EQ(documentIn(m_studio.file()), before);
    EXPECT_EQ(documentIn(path("kept.chalkrung")), after);
    EXPECT_EQ(documentIn(path("copy.chalkrung")), before) << "the backup stays";
}

TEST_F(BackupTest, AStudioThatIsOpenIsNotReplaced)
{
    ASSERT_TRUE(copyStudio(m_studio.database(), path("copy.chalkrung")));
    const auto refused = restoreStudio(path("copy.chalkrung"), m_studio.file(), path("kept.chalkrung"));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, StoreError::Kind::Busy);
    EXPECT_FALSE(QFileInfo::exists(path("kept.chalkrung")));
    recordASquat();
}

TEST_F(BackupTest, ADamagedStudioIsKeptAndReplacedAndADamagedBackupIsRefused)
{
    ASSERT_TRUE(copyStudio(m_studio.database(), path("copy.chalkrung")));
    m_studio.close();
    QFile studio(m_studio.file());
    ASSERT_TRUE(studio.open(QIODevice::ReadWrite) && studio.seek(0) && studio.write(QByteArray(8192, '\x55')) == 8192);
    studio.close();
    ASSERT_TRUE(restoreStudio(path("copy.chalkrung"), m_studio.file(), path("kept.chalkrung")));
    EXPECT_EQ(documentIn(m_studio.file()).clients.size(), 2U);
    EXPECT_TRUE(QFileInfo::exists(path("kept.chalkrung")));
    ASSERT_TRUE(QFile::resize(path("copy.chalkrung"), 20000));
    const auto refused = restoreStudio(path("copy.chalkrung"), m_studio.file(), path("kept2.chalkrung"));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, StoreError::Kind::Damaged);
    EXPECT_EQ(documentIn(m_studio.file()).clients.size(), 2U);
}

}  // namespace chalk::store
