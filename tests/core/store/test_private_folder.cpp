#include "core/store/private_folder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using chalk::store::makePrivateFolder;

namespace {

constexpr auto kOfTheOwner = QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner;
constexpr auto kOfOthers = QFile::ReadGroup | QFile::WriteGroup | QFile::ExeGroup | QFile::ReadOther | QFile::WriteOther | QFile::ExeOther;

}  // namespace

TEST(PrivateFolder, IsMadeForItsOwnerAlone)
{
    const QTemporaryDir around;
    const QString folder = around.filePath(QStringLiteral("a/b"));
    ASSERT_TRUE(makePrivateFolder(folder));
    EXPECT_EQ(QFile::permissions(folder) & (kOfTheOwner | kOfOthers), kOfTheOwner);
}

TEST(PrivateFolder, IsLeftAsItIsWhereItIsThere)
{
    const QTemporaryDir around;
    const QString folder = around.filePath(QStringLiteral("shared"));
    ASSERT_TRUE(QDir().mkpath(folder) && QFile::setPermissions(folder, kOfTheOwner | QFile::ReadGroup | QFile::ExeGroup));
    ASSERT_TRUE(makePrivateFolder(folder));
    EXPECT_TRUE(QFile::permissions(folder).testFlag(QFile::ReadGroup));
}

TEST(PrivateFolder, CannotBeMadeBelowAFile)
{
    const QTemporaryDir around;
    QFile file(around.filePath(QStringLiteral("file")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    EXPECT_FALSE(makePrivateFolder(file.fileName() + QStringLiteral("/below")));
}
