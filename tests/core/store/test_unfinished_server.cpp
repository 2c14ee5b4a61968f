#include "core/store/unfinished_server.h"

#include "tests/support/server_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

using Kind = StoreError::Kind;

/// Places on a server, and what stays in them of work that came to no end.
class UnfinishedServerTest : public ::testing::Test {
protected:
    void SetUp() override
    {
        if (test::serverOnTest().isEmpty()) {
            GTEST_SKIP() << "there is no server";
        }
        m_rolesBefore = roles();
    }
    QStringList roles() { return m_studio.rows(QStringLiteral("SELECT rolname FROM pg_roles ORDER BY 1")); }
    static Kind failureAt(const QString& url)
    {
        const auto opened = Database::open(url, OpenMode::MustExist);
        return opened ? Kind::Other : opened.error().kind;
    }

    test::StudioOnTest m_studio;
    QStringList m_rolesBefore;
};

TEST_F(UnfinishedServerTest, TheDatabaseThatItMadeGoes)
{
    const QString url = m_studio.file() + QStringLiteral("_not_there");
    {
        UnfinishedServer unfinished(url);
        ASSERT_TRUE(unfinished.make());
        EXPECT_NE(roles(), m_rolesBefore);
    }
    EXPECT_EQ(failureAt(url), Kind::NotThere);
    EXPECT_EQ(roles(), m_rolesBefore);
}

TEST_F(UnfinishedServerTest, AnEmptyDatabaseIsEmptyAgain)
{
    const test::DatabaseOnServer server(test::DatabaseOnServer::Holding::Nothing);
    {
        UnfinishedServer unfinished(server.url());
        ASSERT_TRUE(unfinished.make());
    }
    const auto opened = Database::open(server.url(), OpenMode::MustExist);
    ASSERT_FALSE(opened);
    EXPECT_TRUE(opened.error().message.contains(QStringLiteral("is empty"))) << opened.error().message.toStdString();
    EXPECT_EQ(roles(), m_rolesBefore);
}

TEST_F(UnfinishedServerTest, WhatWasThereStays)
{
    const test::DatabaseOnServer server(test::DatabaseOnServer::Holding::EmptyStudio);
    {
        UnfinishedServer unfinished(server.url());
        ASSERT_TRUE(unfinished.make());
    }
    EXPECT_TRUE(Database::open(server.url(), OpenMode::MustExist));
}

TEST_F(UnfinishedServerTest, WhatSomebodyPutThereInTheMeantimeStays)
{
    const test::DatabaseOnServer server(test::DatabaseOnServer::Holding::Nothing);
    {
        UnfinishedServer unfinished(server.url());
        ASSERT_TRUE(unfinished.make());
        test::runOnServer(server.url(), QStringLiteral("INSERT INTO chalkrung.coach (name) VALUES ('Somebody')"));
    }
    EXPECT_TRUE(Database::open(server.url(), OpenMode::MustExist));
}

TEST_F(UnfinishedServerTest, FinishedItStays)
{
    const test::DatabaseOnServer server(test::DatabaseOnServer::Holding::Nothing);
    {
        UnfinishedServer unfinished(server.url());
        ASSERT_TRUE(unfinished.make());
        unfinished.finish();
    }
    EXPECT_TRUE(Database::open(server.url(), OpenMode::MustExist));
}

}  // namespace chalk::store
