#include "core/store/studio_transfer.h"

#include "core/store/studio_export.h"
#include "tests/support/server_on_test.h"
#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

namespace chalk::store {

using Kind = StoreError::Kind;

/// A studio, in a file or on the server that the tests are given, and places to take it to.
class StudioTransferTest : public ::testing::Test {
protected:
    QString path(const char* name) { return m_studio.folder() + QLatin1Char('/') + QLatin1String(name); }
    QStringList leftovers() { return QDir(m_studio.folder()).entryList({QStringLiteral("*.part*")}); }
    void expectSameAt(const QString& target)
    {
        const auto there = Database::open(target, OpenMode::MustExist);
        ASSERT_TRUE(there) << there.error().message.toStdString();
        EXPECT_TRUE(exportStudio(**there, test::smallStudioDay()).value() == exportStudio(m_studio.database(), test::smallStudioDay()).value());
    }

    test::StudioOnTest m_studio;
};

TEST_F(StudioTransferTest, ToAFile)
{
    int asked = 0;
    const auto rows = transferStudio(m_studio.database(), path("there.chalkrung"), [&asked](int done, int of) {
        EXPECT_LE(done, of);
        ++asked;
        return true;
    });
    ASSERT_TRUE(rows) << rows.error().message.toStdString();
    EXPECT_GT(*rows, 50);
    EXPECT_GT(asked, 0);
    EXPECT_EQ(leftovers(), QStringList());
    expectSameAt(path("there.chalkrung"));
}

TEST_F(StudioTransferTest, ToADatabaseThatIsNotThereYet)
{
    if (test::serverOnTest().isEmpty()) {
        GTEST_SKIP() << "there is no server";
    }
    const test::DatabaseOnServer server(test::DatabaseOnServer::Holding::Nothing);
    ASSERT_TRUE(transferStudio(m_studio.database(), server.url()));
    expectSameAt(server.url());
    const auto again = transferStudio(m_studio.database(), server.url());
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, Kind::Refused);
    expectSameAt(server.url());
}

TEST_F(StudioTransferTest, StoppedAtAServerItLeavesNothing)
{
    if (test::serverOnTest().isEmpty()) {
        GTEST_SKIP() << "there is no server";
    }
    const test::DatabaseOnServer server(test::DatabaseOnServer::Holding::EmptyStudio);
    // In the middle of the copy, and where all is copied and being verified.
    for (const bool isVerifying : {false, true}) {
        const auto stopped = transferStudio(m_studio.database(), server.url(), [&](int done, int of) { return isVerifying && done < of; });
        ASSERT_FALSE(stopped);
        EXPECT_EQ(stopped.error().kind, Kind::Cancelled) << stopped.error().message.toStdString();
        const auto there = Database::open(server.url(), OpenMode::MustExist);
        ASSERT_TRUE(there) << "the empty studio stays";
        EXPECT_TRUE(exportStudio(**there, test::smallStudioDay()).value().clients.empty());
    }
    ASSERT_TRUE(transferStudio(m_studio.database(), server.url()));
    expectSameAt(server.url());
}

TEST_F(StudioTransferTest, WhatIsThereIsLeftAsItIs)
{
    QFile other(path("other.txt"));
    ASSERT_TRUE(other.open(QIODevice::WriteOnly) && other.write("mine") == 4);
    other.close();
    EXPECT_EQ(transferStudio(m_studio.database(), path("other.txt")).error().kind, Kind::Refused);
    EXPECT_EQ(QFileInfo(path("other.txt")).size(), 4);
}

TEST_F(StudioTransferTest, StoppedItLeavesNothing)
{
    const auto stopped = transferStudio(m_studio.database(), path("there.chalkrung"), [](int, int) { return false; });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().kind, Kind::Cancelled) << stopped.error().message.toStdString();
    EXPECT_FALSE(QFileInfo::exists(path("there.chalkrung")));
    EXPECT_EQ(leftovers(), QStringList());
}

TEST_F(StudioTransferTest, AFolderThatIsNotThereIsNamed)
{
    const auto failed = transferStudio(m_studio.database(), path("none/there.chalkrung"));
    ASSERT_FALSE(failed);
    EXPECT_TRUE(failed.error().message.contains(path("none/there.chalkrung"))) << failed.error().message.toStdString();
    EXPECT_FALSE(failed.error().message.contains(QStringLiteral(".part")));
}

}  // namespace chalk::store
