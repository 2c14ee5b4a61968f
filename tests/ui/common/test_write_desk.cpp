#include "ui/common/write_desk.h"

#include "core/store/audit.h"
#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "core/store/session_writer.h"
#include "tests/support/cut_connection.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/server_switch.h"
#include "tests/support/small_studio.h"
#include "ui/common/connection_words.h"
#include "ui/common/studio_watch.h"

#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <thread>
#include <utility>

namespace chalk::ui::common {

class WriteDeskTest : public ::testing::Test {
protected:
    QString file() const { return m_studio.folder() + QStringLiteral("/waiting.jsonl"); }
    sessions::Session session() { return store::SessionReader(m_studio.database()).on(test::smallStudioDay())->front().session; }
    store::StateWrite missed() { return {session().id, sessions::SessionState::Missed, sessions::SessionState::Planned}; }
    void writeByAnother(sessions::SessionState state) { ASSERT_TRUE(store::RecordWriter(m_studio.database(), test::someMoment).setSessionState(session().id, state)); }
    void leaveWaiting()
    {
        store::Outbox outbox(file());
        ASSERT_TRUE(outbox.keep({QStringLiteral("earlier"), test::someMoment(), QStringLiteral("Missed: Ada"), {}, missed()}));
    }

    test::StudioOnTest m_studio;
    tests::ScriptedDialogs m_dialogs;
};

TEST_F(WriteDeskTest, WritesAtOnce)
{
    WriteDesk desk(m_studio.database(), m_dialogs, test::someMoment, file());
    EXPECT_TRUE(desk.write(store::StateWrite{session().id, sessions::SessionState::Missed, session().state}, QStringLiteral("Missed: Ada")));
    EXPECT_EQ(session().state, sessions::SessionState::Missed);
    EXPECT_TRUE(desk.waiting().empty());
}

TEST_F(WriteDeskTest, AsksWhereSomebodyElseWasFasterAndWritesWhatIsDecided)
{
    WriteDesk desk(m_studio.database(), m_dialogs, test::someMoment, file());
    writeByAnother(sessions::SessionState::CancelledLate);
    EXPECT_FALSE(desk.write(missed(), QStringLiteral("Missed: Ada"))) << "theirs is kept where nothing else is said";
    EXPECT_EQ(session().state, sessions::SessionState::CancelledLate);
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    EXPECT_EQ(m_dialogs.asked[0].versions, (std::vector<VersionRow>{{QStringLiteral("State"), QStringLiteral("Missed"), QStringLiteral("Called off late")}}));
    m_dialogs.answers = {1};
    EXPECT_TRUE(desk.write(missed(), QStringLiteral("Missed: Ada")));
    EXPECT_EQ(session().state, sessions::SessionState::Missed);
}

TEST_F(WriteDeskTest, WhatTheProgramItselfWritesBesideTheWindowIsNoNews)
{
    if (m_studio.database().isOnServer()) {
        GTEST_SKIP() << "a server does not tell of one's own run";
    }
    WriteDesk desk(m_studio.database(), m_dialogs, test::someMoment, file());
    StudioWatch watch(m_studio.database(), desk);
    QStringList news;
    QObject::connect(&watch, &StudioWatch::changed, &watch, [&news](const QString& words) { news.append(words); });
    const auto note = [](const store::Access& access) {
        const auto beside = store::Database::open(access, store::OpenMode::MustExist).value();
        ASSERT_TRUE(store::noteInAudit(*beside, store::AuditWhat::StudioExported, {}));
    };
    note(m_studio.database().access());
    watch.look();
    EXPECT_EQ(news, QStringList{QString()}) << "what is on show is read again, and nobody is told of";
    note(m_studio.file());
    watch.look();
    EXPECT_EQ(news.last(), QStringLiteral("Changed elsewhere")) << "another program";
    ASSERT_TRUE(store::noteInAudit(m_studio.database(), store::AuditWhat::StudioExported, {}));
    watch.look();
    EXPECT_EQ(news.size(), 2) << "the window's own connection";
}

TEST_F(WriteDeskTest, SendsWhatAnEarlierRunLeftOnce)
{
    writeByAnother(sessions::SessionState::Planned);
    leaveWaiting();
    WriteDesk desk(m_studio.database(), m_dialogs, test::someMoment, file());
    ASSERT_EQ(desk.waiting().size(), 1U);
    int sent = 0;
    QObject::connect(&desk, &WriteDesk::sent, &desk, [&sent](int count) { sent += count; });
    desk.sendWaiting();
    desk.sendWaiting();
    EXPECT_EQ(sent, 1);
    EXPECT_TRUE(desk.waiting().empty());
    EXPECT_EQ(session().state, sessions::SessionState::Missed);
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT id FROM act WHERE token = 'earlier'")).size(), 1);
}

TEST_F(WriteDeskTest, AConflictThatArisesWhenSendingIsDecided)
{
    leaveWaiting();
    writeByAnother(sessions::SessionState::CancelledLate);
    WriteDesk desk(m_studio.database(), m_dialogs, test::someMoment, file());
    m_dialogs.answers = {1};
    desk.sendWaiting();
    EXPECT_TRUE(desk.waiting().empty());
    EXPECT_EQ(session().state, sessions::SessionState::Missed);
    EXPECT_EQ(m_dialogs.asked.size(), 1U);
}

TEST_F(WriteDeskTest, WhatTheStudioDoesNotTakeStaysUntilItIsThrownAway)
{
    {
        store::Outbox outbox(file());
        ASSERT_TRUE(outbox.keep({QStringLiteral("t"), test::someMoment(), QStringLiteral("Gone"), {}, store::StateWrite{base::SessionId(9999), sessions::SessionState::Missed, {}}}));
    }
    WriteDesk desk(m_studio.database(), m_dialogs, test::someMoment, file());
    desk.sendWaiting();
    EXPECT_EQ(desk.waiting().size(), 1U);
    m_dialogs.answers = {1};
    desk.sendWaiting();
    EXPECT_TRUE(desk.waiting().empty());
}

TEST(ConnectionWords, SayWhatIsKept)
{
    const store::OutboxItem item{QStringLiteral("t"), {}, QStringLiteral("Squat for Ada"), {}, store::ReportWrite()};
    EXPECT_EQ(stillWaiting({}), std::nullopt);
    EXPECT_TRUE(stillWaiting({item})->text.contains(QStringLiteral("Squat for Ada")));
    EXPECT_EQ(lostConnection(14 * 60 + 2, {}).lead, QStringLiteral("No connection since 14:02."));
    EXPECT_TRUE(lostConnection(0, {item, item, item, item, item}).text.contains(QStringLiteral("and 2 more")));
}

TEST(NewsWords, SayWhoAndWhat)
{
    store::ActRecord act;
    act.coachName = "Ines";
    act.clientName = "Joaquin Ferro";
    act.patterns = {lifts::Pattern::Squat};
    EXPECT_EQ(newsWords({act}), QStringLiteral("Changed by Ines: Joaquin’s squat"));
    EXPECT_EQ(newsWords({act, act}), QStringLiteral("Changed by Ines: Joaquin’s squat, and 1 more"));
    EXPECT_EQ(newsWords({}), QStringLiteral("Changed elsewhere"));
    act.coachName.clear();
    act.patterns.clear();
    act.sessions = 1;
    EXPECT_EQ(newsWords({act}), QStringLiteral("Changed elsewhere: Joaquin’s session"));
}

namespace {

constexpr int kInTheEnd = 20'000;
constexpr int kShortPatience = 500;
constexpr auto kLongHang = std::chrono::seconds(4);
constexpr std::size_t kManySessions = 40;
constexpr qint64 kMostAwayMs = 2'000;  ///< also on a machine that has much to do

}  // namespace

/// A window's connection with who looks after it.
class StudioWatchTest : public ::testing::Test {
protected:
    sessions::Session session(store::Database& database) { return store::SessionReader(database).on(test::smallStudioDay())->front().session; }
    bool isSeen(const QSignalSpy& spy) { return QTest::qWaitFor([&spy] { return spy.count() > 0; }, kInTheEnd); }

    test::StudioOnTest m_studio;
    tests::ScriptedDialogs m_dialogs;
    WriteDesk m_writes{m_studio.database(), m_dialogs, test::someMoment, m_studio.folder() + QStringLiteral("/waiting.jsonl")};
    StudioWatch m_watch{m_studio.database(), m_writes, nullptr, kShortPatience};
    QSignalSpy m_lost{&m_watch, &StudioWatch::lost};
    QSignalSpy m_found{&m_watch, &StudioWatch::found};
};

TEST_F(StudioWatchTest, TellsWhatAnotherWindowWroteToTheFile)
{
    if (m_studio.database().isOnServer()) {
        GTEST_SKIP() << "this is about a file";
    }
    QSignalSpy changed(&m_watch, &StudioWatch::changed);
    m_watch.look();
    EXPECT_EQ(changed.count(), 0);
    const auto other = store::Database::open(m_studio.file(), store::OpenMode::MustExist).value();
    other->setNextToken(QStringLiteral("of another window"));
    ASSERT_TRUE(store::RecordWriter(*other, test::someMoment, base::CoachId(2)).setSessionState(session(*other).id, sessions::SessionState::Missed));
    m_watch.look();
    ASSERT_EQ(changed.count(), 1);
    EXPECT_TRUE(changed.front().front().toString().startsWith(QStringLiteral("Changed by Tobias"))) << changed.front().front().toString().toStdString();
    EXPECT_EQ(m_lost.count(), 0);
}

/// The same on a server, whose processes for this studio are stopped and cut off.
class StudioWatchOnServer : public StudioWatchTest {
protected:
    void SetUp() override
    {
        if (test::serverOnTest().isEmpty()) {
            GTEST_SKIP() << "there is no server";
        }
        m_watch.start();
        m_watch.look();
        ASSERT_TRUE(QTest::qWaitFor([this] { return processes().size() == 2; }, kInTheEnd)) << "the window's connection, and the one that asks";
    }
    QStringList processes() { return m_studio.rows(QStringLiteral("SELECT pid FROM pg_stat_activity WHERE datname = current_database() AND application_name = 'chalkrung'")); }
    static void tellAll(const QStringList& processes, int signal)
    {
        for (const QString& process : processes) {
            ASSERT_EQ(::kill(process.toInt(), signal), 0);
        }
    }
    /// Sessions of Bo, a week apart.
    std::vector<base::SessionId> book(std::size_t count)
    {
        std::vector<base::SessionId> booked;
        store::SessionWriter writer(m_studio.database(), test::someMoment);
        sessions::Session session;
        session.client = base::ClientId(2);
        session.coach = base::CoachId(1);
        session.startMinute = 600;
        session.place = "Rack 1";
        for (std::size_t i = 1; i <= count; ++i) {
            session.date = test::smallStudioDay() + 7 * static_cast<int>(i);
            if (!writer.book(session)) {
                throw std::runtime_error("no session was booked");
            }
        }
        const std::vector<store::NamedSession> theirs = store::SessionReader(m_studio.database()).of(session.client).value();
        for (const store::NamedSession& one : theirs) {
            if (one.session.date > test::smallStudioDay()) {
                booked.push_back(one.session.id);
            }
        }
        return booked;
    }
    store::StateWrite missed() { return {session(m_studio.database()).id, sessions::SessionState::Missed, sessions::SessionState::Planned}; }

    const tests::CutConnection m_cut;
};

TEST_F(StudioWatchOnServer, AServerThatHangsDoesNotHoldUpTheWindow)
{
    const QStringList all = processes();
    const store::StateWrite write = missed();
    qint64 longest = 0;
    QElapsedTimer sinceTick;
    QTimer ticks;
    QObject::connect(&ticks, &QTimer::timeout, [&] { longest = std::max(longest, sinceTick.restart()); });
    tellAll(all, SIGSTOP);
    std::thread waking([&all] {
        std::this_thread::sleep_for(kLongHang);
        tellAll(all, SIGCONT);
    });
    sinceTick.start();
    ticks.start(10);
    m_watch.look();
    EXPECT_TRUE(isSeen(m_lost));
    const auto kept = m_writes.write(write, QStringLiteral("Missed: Ada"));
    ASSERT_FALSE(kept);
    EXPECT_EQ(kept.error().kind, store::StoreError::Kind::Unreachable);
    EXPECT_EQ(m_writes.waiting().size(), 1U);
    EXPECT_TRUE(isSeen(m_found));
    waking.join();
    EXPECT_LT(longest, kMostAwayMs);
    EXPECT_TRUE(m_writes.waiting().empty()) << "it was sent";
    EXPECT_EQ(session(m_studio.database()).state, sessions::SessionState::Missed);
}

TEST_F(StudioWatchOnServer, AConnectionThatWasCutIsMadeAgain)
{
    test::runOnServer(m_studio.file(), QStringLiteral("SELECT pg_terminate_backend(%1, 5000)").arg(m_studio.rows(QStringLiteral("SELECT pg_backend_pid()")).front()));
    m_watch.look();
    EXPECT_TRUE(isSeen(m_found));
    EXPECT_EQ(m_lost.count(), 1);
    EXPECT_EQ(session(m_studio.database()).state, sessions::SessionState::Planned) << "it reads again";
}

TEST_F(StudioWatchOnServer, AWriteWithoutAnAnswerTellsItAtOnce)
{
    const store::StateWrite write = missed();
    test::runOnServer(m_studio.file(), QStringLiteral("SELECT pg_terminate_backend(%1, 5000)").arg(m_studio.rows(QStringLiteral("SELECT pg_backend_pid()")).front()));
    EXPECT_FALSE(m_writes.write(write, QStringLiteral("Missed: Ada")));
    EXPECT_TRUE(m_watch.isLost());
    EXPECT_TRUE(isSeen(m_found));
    EXPECT_TRUE(m_writes.waiting().empty());
    EXPECT_EQ(session(m_studio.database()).state, sessions::SessionState::Missed);
}

TEST_F(StudioWatchOnServer, AcrossAStopOfTheWholeServerEachWriteGoesInOnce)
{
    // A crash takes nothing that was committed: the servers of tests do not wait for that by themselves.
    test::runOnServer(m_studio.file(), QStringLiteral("ALTER DATABASE %1 SET synchronous_commit = on").arg(m_studio.file().section(QLatin1Char('/'), -1)));
    ASSERT_TRUE(m_studio.database().reconnect());
    const std::vector<base::SessionId> sessions = book(kManySessions);
    std::thread stopping;
    std::size_t done = 0;
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        if (i == kManySessions / 4) {
            stopping = std::thread(test::stopServer);
        }
        QTest::qWait(10);
        done += m_writes.write(store::StateWrite{sessions[i], sessions::SessionState::Missed, sessions::SessionState::Planned}, QStringLiteral("Missed: Bo")) ? 1U : 0U;
    }
    stopping.join();
    EXPECT_GE(done, kManySessions / 4);
    EXPECT_EQ(done + m_writes.waiting().size(), sessions.size());
    ASSERT_FALSE(m_writes.waiting().empty()) << "the server was gone before the end";
    EXPECT_TRUE(m_watch.isLost());
    m_found.clear();
    test::startServer();
    EXPECT_TRUE(isSeen(m_found));
    EXPECT_TRUE(QTest::qWaitFor([this] { return m_writes.waiting().empty(); }, kInTheEnd));
    EXPECT_TRUE(m_dialogs.asked.empty()) << "there was nothing to decide";
    for (const base::SessionId session : sessions) {
        EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT count(*) FROM session_change WHERE session_id = %1 AND state_after = 'missed'").arg(session.value())), QStringList(QStringLiteral("1")));
    }
}

}  // namespace chalk::ui::common
