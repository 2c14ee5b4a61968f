#include "core/store/sqlite_file.h"

#include "core/store/statement.h"
#include "tests/support/small_studio.h"
#include "tests/support/without_rights.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

#include <sys/stat.h>
#include <unistd.h>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

/// A studio file that everybody may read and write, in a folder that nobody may write to.
class SealedStudio {
public:
    SealedStudio()
    {
        m_studio.close();
        QFile::setPermissions(m_studio.file(), QFile::ReadOwner | QFile::WriteOwner | QFile::ReadOther | QFile::WriteOther);
        QFile::setPermissions(m_studio.folder(), QFile::ReadOwner | QFile::ExeOwner | QFile::ReadOther | QFile::ExeOther);
    }
    ~SealedStudio() { QFile::setPermissions(m_studio.folder(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner); }
    SealedStudio(const SealedStudio&) = delete;
    SealedStudio& operator=(const SealedStudio&) = delete;

    [[nodiscard]] QString file() const { return m_studio.file(); }
    [[nodiscard]] QString folder() const { return m_studio.folder(); }

private:
    test::StudioOnTest m_studio;
};

/// The error of opening, and that it names the file.
Kind kindOfOpening(const QString& file, OpenMode mode)
{
    const auto opened = Database::open(file, mode);
    if (opened) {
        return Kind::Other;
    }
    EXPECT_TRUE(opened.error().message.contains(file)) << opened.error().message.toStdString();
    return opened.error().kind;
}

}  // namespace

TEST(SqliteFile, ANewStudioIsForItsOwnerAlone)
{
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("chalkrung/studio"));
    const ::mode_t before = ::umask(0);
    const auto opened = Database::open(file, OpenMode::CreateIfMissing);
    ::umask(before);
    ASSERT_TRUE(opened) << opened.error().message.toStdString();
    const auto modeOf = [](const QString& path) {
        struct stat status {};
        return ::stat(QFile::encodeName(path).constData(), &status) == 0 ? status.st_mode & 0777U : 0U;
    };
    EXPECT_EQ(modeOf(file), 0600U);
    EXPECT_EQ(modeOf(file + QStringLiteral("-wal")), 0600U);
    EXPECT_EQ(modeOf(QFileInfo(file).path()), 0700U);
}

TEST(SqliteFile, AFolderThatIsReadOnlyIsNamedAndNothingIsLost)
{
    const SealedStudio sealed;
    const QByteArray before = [&sealed] { QFile in(sealed.file()); return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray(); }();
    {
        const test::WithoutRights nobody;
        EXPECT_EQ(kindOfOpening(sealed.file(), OpenMode::MustExist), Kind::CannotWrite);
        EXPECT_EQ(kindOfOpening(sealed.file(), OpenMode::CreateIfMissing), Kind::CannotWrite);
        EXPECT_EQ(kindOfOpening(sealed.folder() + QStringLiteral("/new"), OpenMode::CreateIfMissing), Kind::CannotWrite);
        EXPECT_EQ(kindOfOpening(sealed.folder() + QStringLiteral("/a/b/new"), OpenMode::CreateIfMissing), Kind::CannotWrite);
    }
    QFile in(sealed.file());
    ASSERT_TRUE(in.open(QIODevice::ReadOnly));
    EXPECT_EQ(in.readAll(), before);
    EXPECT_EQ(QDir(sealed.folder()).entryList(QDir::Files).size(), 1);
}

TEST(SqliteFile, AStudioInAReadOnlyFolderCanBeRead)
{
    const SealedStudio sealed;
    const test::WithoutRights nobody;
    const auto opened = Database::open(sealed.file(), OpenMode::ReadOnly);
    ASSERT_TRUE(opened) << opened.error().message.toStdString();
    EXPECT_EQ(test::clientNamed(**opened, "Ada Lund"), base::ClientId(1));
}

TEST(SqliteFile, WhatWaitsBesideAStudioInAReadOnlyFolderIsNotOverlooked)
{
    test::StudioOnTest studio;
    {
        Transaction transaction(studio.database());
        Statement(studio.database(), QStringLiteral("INSERT INTO client (name, goal, coach_id, unit, started_day, sessions_per_week) VALUES ('Cy', '', 1, 'kg', 1, 1)"))
            .run();
        ASSERT_TRUE(transaction.commit());
    }
    const QTemporaryDir folder;
    const QString copy = folder.filePath(QStringLiteral("copy.chalkrung"));
    for (const char* suffix : {"", "-wal"}) {  // as after a crash, on another disk
        ASSERT_TRUE(QFile::copy(studio.file() + QLatin1String(suffix), copy + QLatin1String(suffix)));
        QFile::setPermissions(copy + QLatin1String(suffix), QFile::ReadOwner | QFile::ReadOther);
    }
    QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::ExeOwner | QFile::ReadOther | QFile::ExeOther);
    {
        const test::WithoutRights nobody;
        const auto opened = Database::open(copy, OpenMode::ReadOnly);
        ASSERT_FALSE(opened);
        EXPECT_EQ(opened.error().kind, Kind::CannotRead);
        EXPECT_EQ(opened.error().message, copy + QStringLiteral(" cannot be read: changes wait in ") + copy + QStringLiteral("-wal, and its folder is read-only"));
    }
    QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    EXPECT_EQ(test::clientNamed(*Database::open(copy, OpenMode::ReadOnly).value(), "Cy"), base::ClientId(3)) << "nothing of it was lost";
}

TEST(SqliteFile, AFileWithoutTheRightsIsNamed)
{
    test::StudioOnTest studio;
    studio.close();
    QFile::setPermissions(studio.folder(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner | QFile::ReadOther | QFile::WriteOther | QFile::ExeOther);
    QFile::setPermissions(studio.file(), QFile::ReadOwner | QFile::ReadOther);
    {
        const test::WithoutRights nobody;
        EXPECT_EQ(kindOfOpening(studio.file(), OpenMode::MustExist), Kind::CannotWrite);
        EXPECT_TRUE(Database::open(studio.file(), OpenMode::ReadOnly));
    }
    QFile::setPermissions(studio.file(), QFile::WriteOwner);
    const test::WithoutRights nobody;
    EXPECT_EQ(kindOfOpening(studio.file(), OpenMode::ReadOnly), Kind::CannotRead);
}

}  // namespace chalk::store
