#include "core/store/trend_session_rows.h"

#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

TEST(TrendSessionRows, SessionsThatTookPlaceHaveALoadWhereItWasAsked)
{
    test::StudioOnTest studio;
    studio.rows(QStringLiteral("INSERT INTO session_report (session_id, rpe_tenths, minutes) SELECT id, 65, 60 FROM session WHERE code = 'S1'"));
    const base::Date day = test::smallStudioDay();
    const base::ClientId ada = test::clientNamed(studio.database(), "Ada Lund");
    const auto all = readTrendSessions(studio.database(), {day - 30, day});
    ASSERT_EQ(all.size(), 1U);
    const TrendSessions& own = all.at(ada);
    ASSERT_EQ(own.sessions.size(), 4U);
    EXPECT_EQ(own.sessions[1].state, sessions::SessionState::Missed);
    EXPECT_EQ(own.efforts, (std::vector<checkin::SessionEffort>{{day - 21, 390}, {day - 7, std::nullopt}})) << "6.5 × 60 minutes; the other was not asked";
    EXPECT_EQ(readTrendSessions(studio.database(), {day - 20, day - 7}, ada).at(ada).sessions.size(), 2U);
    EXPECT_TRUE(readTrendSessions(studio.database(), {day - 30, day}, test::clientNamed(studio.database(), "Bo Arden")).empty());
    EXPECT_FALSE(studio.database().failure());
}

TEST(TrendSessionRows, AMovementScreenCarriesNoLoad)
{
    exchange::StudioDocument document = test::smallStudio();
    document.clients[0].sessions[0].kind = sessions::SessionKind::MovementScreen;
    test::StudioOnTest studio(document);
    const base::Date day = test::smallStudioDay();
    const TrendSessions own = readTrendSessions(studio.database(), {day - 30, day}).begin()->second;
    EXPECT_EQ(own.sessions.size(), 4U);
    EXPECT_EQ(own.efforts.size(), 1U);
}

}  // namespace chalk::store
