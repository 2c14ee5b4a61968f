#include "core/store/outbox.h"

#include "core/store/session_reader.h"
#include "tests/support/pending_writes.h"
#include "tests/support/server_on_test.h"
#include "tests/support/small_studio.h"

#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

#include <chrono>
#include <thread>

namespace chalk::store {

class OutboxTest : public ::testing::Test {
protected:
    QString file() const { return m_studio.folder() + QStringLiteral("/data/waiting.jsonl"); }
    sessions::Session session() { return SessionReader(m_studio.database()).on(test::smallStudioDay())->front().session; }
    OutboxItem missed(const char* token) { return {QLatin1String(token), test::someMoment(), QStringLiteral("Missed"), base::CoachId(2), StateWrite{session().id, sessions::SessionState::Missed, {}}}; }
    QStringList acts(const char* token) { return m_studio.rows(QStringLiteral("SELECT coach_id FROM act WHERE token = '%1'").arg(QLatin1String(token))); }

    test::StudioOnTest m_studio;
};

TEST_F(OutboxTest, OutlivesTheProgramWithAllThatIsInIt)
{
    Outbox outbox(file());
    ASSERT_TRUE(outbox.load()) << "there is no file yet";
    int number = 0;
    for (const PendingWrite& write : test::everyPendingWrite()) {
        ASSERT_TRUE(outbox.keep({QString::number(number++), test::someMoment(), QStringLiteral("Squat for Ada"), base::CoachId(1), write}));
    }
    Outbox later(file());
    ASSERT_TRUE(later.load());
    EXPECT_EQ(later.items(), outbox.items());
    EXPECT_EQ(later.items().size(), 4U);
}

TEST_F(OutboxTest, ItsFileIsReadByItsOwnerOnly)
{
    Outbox outbox(file());
    ASSERT_TRUE(outbox.keep(missed("a")));
    const auto others = QFileDevice::ReadGroup | QFileDevice::ReadOther | QFileDevice::WriteGroup | QFileDevice::WriteOther;
    EXPECT_EQ(QFileInfo(file()).permissions() & others, 0);
}

TEST_F(OutboxTest, SendsInOrderAndForgetsWhatIsDone)
{
    Outbox outbox(file());
    ASSERT_TRUE(outbox.keep(missed("a")));
    ASSERT_TRUE(outbox.sendFirst(m_studio.database()));
    EXPECT_TRUE(outbox.isEmpty());
    EXPECT_EQ(session().state, sessions::SessionState::Missed);
    EXPECT_EQ(acts("a"), QStringList{QStringLiteral("2")}) << "it is the work of who did it";
    EXPECT_TRUE(m_studio.database().author().isNone());
    Outbox later(file());
    ASSERT_TRUE(later.load());
    EXPECT_TRUE(later.isEmpty());
}

TEST_F(OutboxTest, WhatWasDoneWithoutAnAnswerIsNotDoneAgain)
{
    Outbox outbox(file());
    const OutboxItem item = missed("a");
    ASSERT_TRUE(perform(m_studio.database(), item.write, test::someMoment, item.token)) << "the answer of this one was lost";
    ASSERT_TRUE(outbox.keep(item));
    ASSERT_TRUE(outbox.sendFirst(m_studio.database()));
    EXPECT_TRUE(outbox.isEmpty());
    EXPECT_EQ(acts("a").size(), 1);
}

TEST_F(OutboxTest, StaysWhereTheStudioRefuses)
{
    Outbox outbox(file());
    ASSERT_TRUE(outbox.keep({QStringLiteral("a"), test::someMoment(), QStringLiteral("Gone"), {}, StateWrite{base::SessionId(99999), sessions::SessionState::Missed, {}}}));
    const auto sent = outbox.sendFirst(m_studio.database());
    ASSERT_FALSE(sent);
    EXPECT_EQ(sent.error().kind, StoreError::Kind::Refused);
    EXPECT_EQ(outbox.items().size(), 1U);
    ASSERT_TRUE(outbox.dropFirst());
    EXPECT_TRUE(outbox.isEmpty());
}

TEST_F(OutboxTest, ALaterWriteOfTheSameThingTakesThePlaceOfAnEarlierOne)
{
    Outbox outbox(file());
    ASSERT_TRUE(outbox.keep(missed("a")));
    ASSERT_TRUE(outbox.keep(missed("b")));
    ASSERT_EQ(outbox.items().size(), 1U);
    EXPECT_EQ(outbox.items()[0].token, QStringLiteral("a")) << "it says the same: the first may have been done already";
    OutboxItem late = missed("c");
    std::get<StateWrite>(late.write).state = sessions::SessionState::CancelledLate;
    ASSERT_TRUE(outbox.keep(late));
    ASSERT_EQ(outbox.items().size(), 1U);
    EXPECT_EQ(outbox.items()[0], late);
}

TEST_F(OutboxTest, ALineThatCannotBeReadIsNamedAndStays)
{
    Outbox outbox(file());
    ASSERT_TRUE(outbox.keep(missed("a")));
    QFile torn(file());
    ASSERT_TRUE(torn.open(QIODevice::Append) && torn.write("{\"token\": \"b\", \"wri\n") > 0);
    torn.close();
    Outbox later(file());
    const auto loaded = later.load();
    ASSERT_FALSE(loaded);
    EXPECT_TRUE(loaded.error().message.endsWith(QLatin1String("line 2"))) << loaded.error().message.toStdString();
    EXPECT_EQ(later.items(), outbox.items()) << "the others are there";
    ASSERT_TRUE(later.sendFirst(m_studio.database()));
    ASSERT_TRUE(torn.open(QIODevice::ReadOnly));
    EXPECT_EQ(torn.readAll(), "{\"token\": \"b\", \"wri\n");
}

TEST_F(OutboxTest, AFolderThatCannotBeWrittenIsSaid)
{
    Outbox outbox(QStringLiteral("/proc/no such folder/waiting.jsonl"));
    EXPECT_FALSE(outbox.keep(missed("a")));
    EXPECT_TRUE(outbox.isEmpty()) << "what is not kept does not wait";
}

/// Somebody who ends the connection of a database at some moment while it writes.
class ConnectionKiller {
public:
    ConnectionKiller(const QString& url, const QString& pid, std::chrono::microseconds after)
        : m_thread([url, pid, after] {
              std::this_thread::sleep_for(after);
              test::runOnServer(url, QStringLiteral("SELECT pg_terminate_backend(%1)").arg(pid));
          })
    {
    }
    ~ConnectionKiller() { m_thread.join(); }
    ConnectionKiller(const ConnectionKiller&) = delete;
    ConnectionKiller& operator=(const ConnectionKiller&) = delete;

private:
    std::thread m_thread;
};

// The moments lie between before a write and after it: with what is measured of one, every step of it is met.
TEST_F(OutboxTest, EveryWriteIsDoneOnceWheneverItsConnectionIsEnded)
{
    if (!m_studio.database().isOnServer()) {
        GTEST_SKIP() << "this is about a server";
    }
    constexpr int kRounds = 60;
    Outbox outbox(file());
    int kept = 0;
    for (int round = 0; round < kRounds; ++round) {
        const QString token = QStringLiteral("round %1").arg(round);
        const auto state = round % 2 == 0 ? sessions::SessionState::Missed : sessions::SessionState::Planned;
        const OutboxItem item{token, test::someMoment(), QStringLiteral("Round"), {}, StateWrite{session().id, state, {}}};
        const QString pid = m_studio.rows(QStringLiteral("SELECT pg_backend_pid()")).at(0);
        {
            // A connection for the killer takes some milliseconds to open: the write waits for about as long.
            const ConnectionKiller killer(m_studio.file(), pid, std::chrono::microseconds(0));
            std::this_thread::sleep_for(std::chrono::microseconds(round * 500));
            const auto outcome = perform(m_studio.database(), item.write, test::someMoment, token);
            if (!outcome) {
                ASSERT_EQ(outcome.error().kind, StoreError::Kind::Unreachable) << outcome.error().message.toStdString();
                ASSERT_TRUE(outbox.keep(item));
                ++kept;
            }
        }
        ASSERT_TRUE(m_studio.database().reconnect());
        while (!outbox.isEmpty()) {
            const auto sent = outbox.sendFirst(m_studio.database());
            ASSERT_TRUE(sent) << sent.error().message.toStdString();
        }
        EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT id FROM act WHERE token = '%1'").arg(token)).size(), 1) << round;
        EXPECT_EQ(session().state, state) << round;
    }
    RecordProperty("kept", kept);
    EXPECT_GT(kept, 0) << "no connection was ended in time";
}

TEST(Outbox, EveryStudioHasAFileOfItsOwn)
{
    EXPECT_NE(Outbox::fileFor(QStringLiteral("postgresql://a/b")), Outbox::fileFor(QStringLiteral("postgresql://a/c")));
    EXPECT_EQ(Outbox::fileFor(QStringLiteral("x")), Outbox::fileFor(QStringLiteral("x")));
}

}  // namespace chalk::store
