#include "ui/common/write_desk.h"

#include "core/store/audit.h"
#include "core/store/session_reader.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/connection_words.h"
#include "ui/common/studio_watch.h"

#include <gtest/gtest.h>

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

}  // namespace chalk::ui::common
