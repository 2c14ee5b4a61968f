#include "core/store/folder_beside.h"

#include <QDir>
#include <QFile>

#include <gtest/gtest.h>

namespace chalk::store {

class FolderBesideTest : public ::testing::Test {
protected:
    static void write(const QString& path, const QByteArray& bytes)
    {
        ASSERT_TRUE(QDir().mkpath(QFileInfo(path).path()));
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }
    QByteArray read(const QString& name) const
    {
        QFile file(m_place.filePath(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("nothing");
    }
    QStringList allIn(const QString& folder) const
    {
        return QDir(m_place.filePath(folder)).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot, QDir::Name);
    }

    QTemporaryDir m_place;
    QString m_folder = m_place.filePath(QStringLiteral("a/b"));
};

TEST_F(FolderBesideTest, MakesANewFolderForItsOwnerOnly)
{
    {
        FolderBeside beside(m_folder);
        ASSERT_TRUE(beside.begin());
        write(beside.path() + QStringLiteral("/clients/1.json"), "new");
        ASSERT_TRUE(beside.keep());
    }
    EXPECT_EQ(read(QStringLiteral("a/b/clients/1.json")), "new");
    EXPECT_EQ(allIn(QStringLiteral("a/b")), QStringList{QStringLiteral("clients")});
    EXPECT_FALSE(QFile::permissions(m_folder) & (QFile::ReadGroup | QFile::ReadOther | QFile::ExeOther));
}

TEST_F(FolderBesideTest, WhatIsGivenUpLeavesAllAsItWas)
{
    {
        FolderBeside beside(m_folder);
        ASSERT_TRUE(beside.begin());
        write(beside.path() + QStringLiteral("/1.json"), "new");
    }
    EXPECT_TRUE(allIn(QStringLiteral(".")).isEmpty()) << "a folder was made for nothing";
    write(m_folder + QStringLiteral("/1.json"), "old");
    {
        FolderBeside beside(m_folder);
        ASSERT_TRUE(beside.begin());
        write(beside.path() + QStringLiteral("/1.json"), "new");
        EXPECT_EQ(read(QStringLiteral("a/b/1.json")), "old");
    }
    EXPECT_EQ(read(QStringLiteral("a/b/1.json")), "old");
    EXPECT_EQ(allIn(QStringLiteral("a/b")).size(), 1);
}

TEST_F(FolderBesideTest, TakesThePlaceOfItsNamesAndLeavesOthersAlone)
{
    write(m_folder + QStringLiteral("/clients/1.json"), "old");
    write(m_folder + QStringLiteral("/clients/mine.txt"), "mine");
    {
        FolderBeside beside(m_folder + QLatin1Char('/'));
        ASSERT_TRUE(beside.begin());
        write(beside.path() + QStringLiteral("/clients/1.json"), "new");
        ASSERT_TRUE(beside.keep());
    }
    EXPECT_EQ(read(QStringLiteral("a/b/clients/1.json")), "new");
    EXPECT_EQ(read(QStringLiteral("a/b/clients/mine.txt")), "mine");
    EXPECT_EQ(allIn(QStringLiteral("a/b")), QStringList{QStringLiteral("clients")});
}

/// A file stands where a folder is needed: whatever comes before it in the order of the disk goes back.
TEST_F(FolderBesideTest, WhereOneCannotBePutTheOthersGoBack)
{
    const QStringList others{QStringLiteral("1.json"), QStringLiteral("2.json"), QStringLiteral("z/3.json")};
    write(m_folder + QStringLiteral("/tables"), "a file");
    for (const QString& name : others) {
        write(m_folder + QLatin1Char('/') + name, "old");
    }
    {
        FolderBeside beside(m_folder);
        ASSERT_TRUE(beside.begin());
        write(beside.path() + QStringLiteral("/tables/a.csv"), "new");
        for (const QString& name : others) {
            write(beside.path() + QLatin1Char('/') + name, "new");
        }
        const auto kept = beside.keep();
        ASSERT_FALSE(kept);
        EXPECT_EQ(kept.error().kind, StoreError::Kind::CannotWrite);
        EXPECT_TRUE(kept.error().message.contains(QLatin1String("tables/a.csv"))) << kept.error().message.toStdString();
    }
    for (const QString& name : others) {
        EXPECT_EQ(read(QStringLiteral("a/b/") + name), "old") << name.toStdString();
    }
    EXPECT_EQ(read(QStringLiteral("a/b/tables")), "a file");
    EXPECT_EQ(allIn(QStringLiteral("a/b")).size(), 4);
}

}  // namespace chalk::store
