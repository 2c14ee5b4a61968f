#include "core/store/server_ping.h"

#include "tests/support/server_on_test.h"
#include "tests/support/small_studio.h"

#include <QDeadlineTimer>
#include <QElapsedTimer>
#include <QThread>

#include <gtest/gtest.h>

#include <csignal>

namespace chalk::store {

namespace {

constexpr qint64 kSoon = 20'000;

/// The answer, where it comes in time.
std::optional<PingAnswer> answerIn(const QFuture<PingAnswer>& future, qint64 milliseconds = kSoon)
{
    for (const QDeadlineTimer end(milliseconds); !future.isFinished() && !end.hasExpired();) {
        QThread::msleep(5);
    }
    return future.isFinished() ? std::optional(future.result()) : std::nullopt;
}

}  // namespace

TEST(ServerPing, NobodyAnswersWhereNobodyIs)
{
    ServerPing ping(QStringLiteral("postgresql://ines@127.0.0.1:1/none"));
    EXPECT_EQ(answerIn(ping.ask({})), PingAnswer::Silent);
    EXPECT_EQ(answerIn(ping.ask({})), PingAnswer::Silent) << "and so the next time";
}

class ServerPingTest : public ::testing::Test {
protected:
    void SetUp() override
    {
        if (test::serverOnTest().isEmpty()) {
            GTEST_SKIP() << "there is no server";
        }
    }

    test::StudioOnTest m_studio;
};

TEST_F(ServerPingTest, KnowsAConnectionUntilItIsCut)
{
    ServerPing ping(m_studio.database().access());
    const QString session = ServerPing::sessionOf(m_studio.database());
    ASSERT_FALSE(session.isEmpty());
    EXPECT_EQ(answerIn(ping.ask(session)), PingAnswer::Well);
    test::runOnServer(m_studio.file(), QStringLiteral("SELECT pg_terminate_backend(%1, 5000)").arg(session.section(QLatin1Char(' '), 0, 0)));
    EXPECT_EQ(answerIn(ping.ask(session)), PingAnswer::CutOff);
    ASSERT_TRUE(m_studio.database().reconnect());
    const QString again = ServerPing::sessionOf(m_studio.database());
    EXPECT_NE(again, session);
    EXPECT_EQ(answerIn(ping.ask(again)), PingAnswer::Well);
}

TEST_F(ServerPingTest, AServerThatHangsHoldsNobodyUp)
{
    auto ping = std::make_unique<ServerPing>(m_studio.database().access());
    const QString session = ServerPing::sessionOf(m_studio.database());
    ASSERT_EQ(answerIn(ping->ask(session)), PingAnswer::Well);
    const QString other = m_studio.rows(QStringLiteral("SELECT pid FROM pg_stat_activity WHERE datname = current_database() AND application_name = 'chalkrung' AND pid <> pg_backend_pid()")).at(0);
    ASSERT_EQ(::kill(other.toInt(), SIGSTOP), 0);
    const auto waiting = ping->ask(session);
    EXPECT_EQ(answerIn(waiting, 300), std::nullopt);
    QElapsedTimer time;
    time.start();
    ping.reset();
    EXPECT_LT(time.elapsed(), 1'000) << "nobody waits for its thread";
    ASSERT_EQ(::kill(other.toInt(), SIGCONT), 0);
    EXPECT_EQ(answerIn(waiting), PingAnswer::Well) << "what was asked is answered in the end";
}

}  // namespace chalk::store
