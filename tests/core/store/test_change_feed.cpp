#include "core/store/change_feed.h"

#include "core/store/client_writer.h"
#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "tests/support/server_on_test.h"
#include "tests/support/small_studio.h"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QSqlDriver>
#include <QVariant>

#include <gtest/gtest.h>

namespace chalk::store {

/// A window on a file, and another connection to it. Both are of one run of the program: so an act of another run is written by its token.
class ChangeFeedTest : public ::testing::Test {
protected:
    void SetUp() override { m_second = Database::open(m_studio.file(), OpenMode::MustExist).value(); }
    void miss(Database& database, const QString& token)
    {
        const auto session = SessionReader(database).on(test::smallStudioDay())->front().session;
        const auto state = session.state == sessions::SessionState::Missed ? sessions::SessionState::Planned : sessions::SessionState::Missed;
        database.setNextToken(token);
        ASSERT_TRUE(RecordWriter(database, test::someMoment, base::CoachId(1)).setSessionState(session.id, state));
    }

    bool isFile() { return !m_studio.database().isOnServer(); }

    test::StudioOnTest m_studio;
    std::unique_ptr<Database> m_second;
};

TEST_F(ChangeFeedTest, HearsWhatAnotherConnectionWrote)
{
    ChangeFeed feed(m_studio.database());
    EXPECT_FALSE(feed.look());
    miss(*m_second, QStringLiteral("of another window"));
    EXPECT_EQ(feed.look(), isFile()) << "a server tells by itself";
    EXPECT_FALSE(feed.look()) << "once";
    const auto news = feed.news().value();
    ASSERT_EQ(news.size(), 1U);
    EXPECT_EQ(news[0].kind, ActKind::Session);
    EXPECT_EQ(news[0].coachName, m_studio.rows(QStringLiteral("SELECT name FROM coach WHERE id = 1")).at(0).toStdString());
    EXPECT_TRUE(feed.news()->empty());
}

TEST_F(ChangeFeedTest, DoesNotHearItself)
{
    ChangeFeed feed(m_studio.database());
    miss(m_studio.database(), {});
    EXPECT_FALSE(feed.look());
    EXPECT_TRUE(feed.news()->empty());
}

TEST_F(ChangeFeedTest, TellsNoActOfThisRunAsNews)
{
    ChangeFeed feed(m_studio.database());
    miss(*m_second, {});
    EXPECT_EQ(feed.look(), isFile()) << "the page reads again";
    EXPECT_TRUE(feed.news()->empty()) << "but it is one's own";
}

TEST_F(ChangeFeedTest, HearsOfWhatIsNoAct)
{
    ChangeFeed feed(m_studio.database());
    const base::ClientId ada = test::clientNamed(*m_second, "Ada Lund");
    ASSERT_TRUE(ClientWriter(*m_second).saveProfile(ada, ClientForms(*m_second).profile(ada).value(), test::smallStudioDay()));
    EXPECT_EQ(feed.look(), isFile());
    EXPECT_TRUE(feed.news()->empty());
}

TEST_F(ChangeFeedTest, AServerTellsOfOthersAndAgainAfterTheConnectionWasLost)
{
    if (isFile()) {
        GTEST_SKIP() << "this is about a server";
    }
    ChangeFeed feed(m_studio.database());
    int heard = 0;
    const auto listen = [&] { return feed.listen([&heard] { ++heard; }); };
    const auto waitFor = [&heard](int count) {
        const QDeadlineTimer end(5'000);
        while (heard < count && !end.hasExpired()) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
        }
        return heard;
    };
    ASSERT_TRUE(listen());
    test::runOnServer(m_studio.file(), QStringLiteral("SELECT pg_notify('chalkrung', '%1 1')").arg(runToken()));
    test::runOnServer(m_studio.file(), QStringLiteral("SELECT pg_notify('chalkrung', 'somebody 1')"));
    EXPECT_EQ(waitFor(1), 1) << "only of others";
    const QString pid = m_studio.rows(QStringLiteral("SELECT pg_backend_pid()")).at(0);
    test::runOnServer(m_studio.file(), QStringLiteral("SELECT pg_terminate_backend(%1)").arg(pid));
    const auto lost = feed.news();
    ASSERT_FALSE(lost);
    EXPECT_EQ(lost.error().kind, StoreError::Kind::Unreachable);
    ASSERT_TRUE(m_studio.database().reconnect());
    ASSERT_TRUE(feed.news());
    ASSERT_TRUE(listen());
    test::runOnServer(m_studio.file(), QStringLiteral("SELECT pg_notify('chalkrung', 'somebody 2')"));
    EXPECT_EQ(waitFor(2), 2);
}

TEST_F(ChangeFeedTest, WhatIsWrittenIsAnnounced)
{
    if (isFile()) {
        GTEST_SKIP() << "this is about a server";
    }
    QSqlDriver* driver = m_studio.database().connection().driver();
    ASSERT_TRUE(driver->subscribeToNotification(QStringLiteral("chalkrung")));
    QString told;
    QObject::connect(driver, &QSqlDriver::notification, driver, [&told](const QString&, QSqlDriver::NotificationSource, const QVariant& news) { told = news.toString(); });
    m_second->setAuthor(base::CoachId(1));
    miss(*m_second, {});
    const QDeadlineTimer end(5'000);
    while (told.isEmpty() && !end.hasExpired()) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
    }
    EXPECT_EQ(told, QStringLiteral("%1 1").arg(runToken()));
}

TEST_F(ChangeFeedTest, ItCanBeListenedToAndAnswers)
{
    ChangeFeed feed(m_studio.database());
    EXPECT_TRUE(feed.listen([] {}));
    EXPECT_TRUE(feed.news());
}

TEST_F(ChangeFeedTest, TheLaterNewsComeLast)
{
    ChangeFeed feed(m_studio.database());
    miss(*m_second, QStringLiteral("first of another"));
    miss(*m_second, QStringLiteral("second of another"));
    const auto news = feed.news().value();
    ASSERT_EQ(news.size(), 2U);
    EXPECT_LT(news[0].id, news[1].id);
}

}  // namespace chalk::store
