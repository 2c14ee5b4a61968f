#include "core/store/unfinished_file.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace chalk::store {

class UnfinishedFileTest : public ::testing::Test {
protected:
    [[nodiscard]] QString path(const char* name) const { return m_folder.filePath(QLatin1String(name)); }
    [[nodiscard]] QStringList files() const { return QDir(m_folder.path()).entryList(QDir::Files); }
    QByteArray content(const char* name) const
    {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    void write(const QString& where, const QByteArray& bytes) const
    {
        QFile file(where);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
    }

    QTemporaryDir m_folder;
};

TEST_F(UnfinishedFileTest, ItHasItsNameWhenItIsFinishedAndGoesOtherwise)
{
    write(path("a.chalkrung"), "old");
    {
        UnfinishedFile unfinished(path("a.chalkrung"));
        ASSERT_TRUE(unfinished.make());
        write(unfinished.path(), "half");
        EXPECT_EQ(QFileInfo(unfinished.path()).permissions() & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions());
    }
    EXPECT_EQ(files(), QStringList{QStringLiteral("a.chalkrung")});
    EXPECT_EQ(content("a.chalkrung"), "old");
    UnfinishedFile unfinished(path("a.chalkrung"));
    const QString log = QFileInfo(unfinished.path()).fileName() + QStringLiteral("-wal");
    write(path(log.toUtf8().constData()), "of somebody who was ended");
    ASSERT_TRUE(unfinished.make());
    EXPECT_FALSE(QFileInfo::exists(unfinished.path() + QStringLiteral("-wal"))) << "it would be played into this one";
    write(unfinished.path(), "new");
    ASSERT_TRUE(unfinished.finish());
    EXPECT_EQ(content("a.chalkrung"), "new");
}

TEST_F(UnfinishedFileTest, TwoThatWriteTheSameFileDoNotMeet)
{
    UnfinishedFile one(path("a.chalkrung"));
    UnfinishedFile other(path("a.chalkrung"));
    ASSERT_TRUE(one.make() && other.make());
    write(one.path(), "one");
    write(other.path(), "other");
    ASSERT_TRUE(one.finish());
    EXPECT_EQ(content("a.chalkrung"), "one");
    ASSERT_TRUE(other.finish());
    EXPECT_EQ(content("a.chalkrung"), "other");
    EXPECT_EQ(files(), QStringList{QStringLiteral("a.chalkrung")});
}

TEST_F(UnfinishedFileTest, WhatNobodyFinishesForAnHourIsTakenAway)
{
    for (const char* name : {"old.chalkrung.part", "old.chalkrung.part-journal", "old.chalkrung.part-wal", "new.chalkrung.part", "other.part", "kept.chalkrung"}) {
        write(path(name), "x");
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        const bool isOld = !QString::fromLatin1(name).startsWith(QLatin1String("new"));
        ASSERT_TRUE(file.setFileTime(QDateTime::currentDateTimeUtc().addSecs(isOld ? -3700 : -3000), QFileDevice::FileModificationTime));
    }
    EXPECT_EQ(UnfinishedFile::clear(m_folder.path()), 3);
    EXPECT_EQ(files(), (QStringList{QStringLiteral("kept.chalkrung"), QStringLiteral("new.chalkrung.part"), QStringLiteral("other.part")}));
}

TEST_F(UnfinishedFileTest, ACopyIsTheSameToTheByte)
{
    QByteArray bytes(2'500'000, 'x');
    bytes[1'999'999] = '\0';
    write(path("from"), bytes);
    ASSERT_TRUE(copyWholeFile(path("from"), path("to.chalkrung")));
    EXPECT_EQ(content("to.chalkrung"), bytes);
    const auto again = copyWholeFile(path("from"), path("to.chalkrung"));
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, StoreError::Kind::Refused);
    const auto stopped = copyWholeFile(path("from"), path("other.chalkrung"), [](int done, int) { return done < 1; });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().kind, StoreError::Kind::Cancelled);
    EXPECT_EQ(copyWholeFile(path("nothing"), path("other.chalkrung")).error().kind, StoreError::Kind::CannotRead);
    EXPECT_EQ(copyWholeFile(path("from"), path("no/such/folder")).error().kind, StoreError::Kind::CannotWrite);
    EXPECT_EQ(files(), (QStringList{QStringLiteral("from"), QStringLiteral("to.chalkrung")}));
}

}  // namespace chalk::store
