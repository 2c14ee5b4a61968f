#include "core/store/outbox.h"

#include "core/store/session_reader.h"
#include "tests/support/pending_writes.h"
#include "tests/support/small_studio.h"

#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

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

TEST(Outbox, EveryStudioHasAFileOfItsOwn)
{
    EXPECT_NE(Outbox::fileFor(QStringLiteral("postgresql://a/b")), Outbox::fileFor(QStringLiteral("postgresql://a/c")));
    EXPECT_EQ(Outbox::fileFor(QStringLiteral("x")), Outbox::fileFor(QStringLiteral("x")));
}

}  // namespace chalk::store
