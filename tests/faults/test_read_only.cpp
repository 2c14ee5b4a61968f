#include "core/store/backup_shelf.h"
#include "tests/faults/studio_content.h"
#include "tests/support/small_studio.h"
#include "tests/support/without_rights.h"

#include <QDir>
#include <QFile>

#include <gtest/gtest.h>

namespace chalk::faults {

using Kind = store::StoreError::Kind;

/// Folders and files that may be read and not written. The tests give up their rights, as root may write everywhere.
class ReadOnlyTest : public ::testing::Test {
protected:
    ReadOnlyTest()
    {
        letWrite(m_studio.folder(), true);
        letWrite(m_studio.file(), true);
    }
    ~ReadOnlyTest() override
    {
        for (const QString& folder : {m_studio.folder(), m_shelf.folder()}) {
            QFile::setPermissions(folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        }
    }
    ReadOnlyTest(const ReadOnlyTest&) = delete;
    ReadOnlyTest& operator=(const ReadOnlyTest&) = delete;

    static void letWrite(const QString& path, bool mayWrite)
    {
        const auto reading = QFile::ReadOwner | QFile::ExeOwner | QFile::ReadOther | QFile::ExeOther;
        ASSERT_TRUE(QFile::setPermissions(path, mayWrite ? reading | QFile::WriteOwner | QFile::WriteOther : QFileDevice::Permissions(reading)));
    }
    /// A backup of the studio, which is changed and closed then.
    QString backUpAndChange()
    {
        const auto backup = m_shelf.add(m_studio.database());
        EXPECT_TRUE(backup) << backup.error().message.toStdString();
        letWrite(m_shelf.folder(), true);
        letWrite(*backup, false);
        m_studio.rows(QStringLiteral("UPDATE client SET name = name || '!'"));
        m_changed = contentOf(m_studio.database());
        m_studio.close();
        return *backup;
    }
    /// Nothing is restored, the message names `named`, and all is as it was.
    void expectRefused(const QString& backup, const QString& named)
    {
        const QStringList before = QDir(m_shelf.folder()).entryList(QDir::Files);
        {
            const test::WithoutRights nobody;
            const auto refused = m_shelf.restore(backup, m_studio.file());
            ASSERT_FALSE(refused);
            EXPECT_EQ(refused.error().kind, Kind::CannotWrite);
            EXPECT_TRUE(refused.error().message.contains(named)) << refused.error().message.toStdString();
        }
        EXPECT_EQ(QDir(m_shelf.folder()).entryList(QDir::Files), before);
        EXPECT_EQ(contentOfFile(m_studio.file()), m_changed);
    }

    test::StudioOnTest m_studio;
    store::BackupShelf m_shelf{store::BackupShelf::folderFor(m_studio.file()), [] { return store::BackupShelf::Moment{{test::smallStudioDay(), 600}, 0}; }};
    StudioContent m_changed;
};

TEST_F(ReadOnlyTest, ABackupFolderThatCannotBeWrittenIsNamedAndTheNextBackupGoes)
{
    ASSERT_TRUE(QDir().mkpath(m_shelf.folder()));
    letWrite(m_shelf.folder(), false);
    const StudioContent before = contentOf(m_studio.database());
    {
        const test::WithoutRights nobody;
        const auto refused = m_shelf.add(m_studio.database());
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().kind, Kind::CannotWrite);
        EXPECT_TRUE(refused.error().message.contains(m_shelf.folder())) << refused.error().message.toStdString();
    }
    EXPECT_EQ(QDir(m_shelf.folder()).entryList(QDir::Files), QStringList());
    EXPECT_EQ(contentOf(m_studio.database()), before);
    letWrite(m_shelf.folder(), true);
    const test::WithoutRights nobody;
    EXPECT_TRUE(m_shelf.add(m_studio.database()));
}

TEST_F(ReadOnlyTest, AStudioInAReadOnlyFolderIsNotReplaced)
{
    const QString backup = backUpAndChange();
    letWrite(m_studio.folder(), false);
    expectRefused(backup, m_studio.file());
}

TEST_F(ReadOnlyTest, AStudioThatIsReadOnlyIsNotReplaced)
{
    const QString backup = backUpAndChange();
    letWrite(m_studio.file(), false);
    expectRefused(backup, m_studio.file() + QStringLiteral(" cannot be written: it is read-only"));
}

TEST_F(ReadOnlyTest, NothingIsReplacedThatCannotBeKeptFirst)
{
    const QString backup = backUpAndChange();
    letWrite(m_shelf.folder(), false);
    expectRefused(backup, m_shelf.folder());
}

}  // namespace chalk::faults
