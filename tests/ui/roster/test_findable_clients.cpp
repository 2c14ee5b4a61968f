#include "ui/roster/findable_clients.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::ui::roster {

class FindableClientsTest : public ::testing::Test {
protected:
    std::vector<shell::FindableClient> read(base::Date day)
    {
        const auto entries = store::RosterReader(m_studio.database()).read(day);
        const auto sessions = store::SessionReader(m_studio.database()).on(day);
        return findableClientsOf(entries.value(), sessions.value(), m_catalogue, day);
    }
    static shell::FindableClient named(const std::vector<shell::FindableClient>& clients, const QString& name)
    {
        const auto found = std::find_if(clients.begin(), clients.end(), [&name](const shell::FindableClient& one) { return one.name.startsWith(name); });
        return found == clients.end() ? shell::FindableClient() : *found;
    }

    test::StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
};

TEST_F(FindableClientsTest, SaysEveryLiftByItsNameAndStage)
{
    const auto ada = named(read(test::smallStudioDay()), QStringLiteral("Ada"));
    ASSERT_EQ(ada.lifts.size(), 3U);
    for (const shell::FindableLift& lift : ada.lifts) {
        EXPECT_FALSE(lift.name.isEmpty());
        EXPECT_FALSE(lift.name.contains(QLatin1Char('_'))) << lift.name.toStdString();
        EXPECT_FALSE(lift.stand.isEmpty());
    }
    EXPECT_TRUE(std::any_of(ada.lifts.begin(), ada.lifts.end(), [](const shell::FindableLift& lift) { return lift.stand == QStringLiteral("on hold"); }));
    EXPECT_FALSE(ada.isBlocked);
}

TEST_F(FindableClientsTest, AClientWithoutClearanceIsLocked)
{
    const auto bo = named(read(test::smallStudioDay()), QStringLiteral("Bo"));
    EXPECT_FALSE(bo.id.isNone());
    EXPECT_TRUE(bo.isBlocked);
    EXPECT_TRUE(bo.lifts.empty());
}

TEST_F(FindableClientsTest, OnlyASessionOfTheDayThatWasNotCalledOffCounts)
{
    const base::Date day = test::smallStudioDay();
    const auto entries = store::RosterReader(m_studio.database()).read(day).value();
    ASSERT_FALSE(entries.empty());
    store::NamedSession session;
    session.session.id = base::SessionId(5);
    session.session.client = entries.front().client.id;
    session.session.startMinute = 9 * 60;
    session.session.state = sessions::SessionState::CancelledLate;
    const auto of = [&](std::span<const store::NamedSession> sessions) { return findableClientsOf(entries, sessions, m_catalogue, day).front(); };
    EXPECT_TRUE(of({}).sessionToday.isNone());
    EXPECT_TRUE(of({&session, 1}).sessionToday.isNone());
    session.session.state = sessions::SessionState::Recorded;
    EXPECT_EQ(of({&session, 1}).sessionToday, base::SessionId(5));
    EXPECT_EQ(of({&session, 1}).todayAt, QStringLiteral("09:00"));
}

}  // namespace chalk::ui::roster
