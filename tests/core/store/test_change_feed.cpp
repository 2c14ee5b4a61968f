#include "core/store/change_feed.h"

#include "core/store/client_writer.h"
#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "tests/support/small_studio.h"

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

    test::StudioOnTest m_studio;
    std::unique_ptr<Database> m_second;
};

TEST_F(ChangeFeedTest, HearsWhatAnotherConnectionWrote)
{
    ChangeFeed feed(m_studio.database());
    EXPECT_FALSE(feed.look());
    miss(*m_second, QStringLiteral("of another window"));
    EXPECT_TRUE(feed.look());
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
    EXPECT_TRUE(feed.look()) << "the page reads again";
    EXPECT_TRUE(feed.news()->empty()) << "but it is one's own";
}

TEST_F(ChangeFeedTest, HearsOfWhatIsNoAct)
{
    ChangeFeed feed(m_studio.database());
    const base::ClientId ada = test::clientNamed(*m_second, "Ada Lund");
    ASSERT_TRUE(ClientWriter(*m_second).saveProfile(ada, ClientForms(*m_second).profile(ada).value(), test::smallStudioDay()));
    EXPECT_TRUE(feed.look());
    EXPECT_TRUE(feed.news()->empty());
}

TEST_F(ChangeFeedTest, AFileNeedsNoListeningAndAnswers)
{
    ChangeFeed feed(m_studio.database());
    EXPECT_TRUE(feed.listen([] {}));
    EXPECT_TRUE(feed.check());
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
