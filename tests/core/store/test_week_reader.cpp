#include "core/store/week_reader.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/week_settings.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::store {

class WeekReaderTest : public ::testing::Test {
protected:
    static base::Date monday() { return test::smallStudioDay() - test::smallStudioDay().weekday(); }
    Result<week::WeekFacts> read(base::Date first) { return WeekReader(m_studio.database(), exchange::builtInCatalogue()).read(first, test::smallStudioDay(), 9 * 60); }

    test::StudioOnTest m_studio;
};

TEST_F(WeekReaderTest, ReadsEverybodyWithTheSessionsOfThisWeekAndTheLast)
{
    const auto facts = read(monday());
    ASSERT_TRUE(facts) << facts.error().message.toStdString();
    EXPECT_EQ(facts->nowMinute, test::smallStudioDay().weekday() * week::kDayMinutes + 9 * 60);
    EXPECT_FALSE(facts->coaches.empty());
    ASSERT_FALSE(facts->clients.empty());
    const bool hasSessions = std::any_of(facts->clients.begin(), facts->clients.end(), [](const auto& client) { return !client.sessions.empty(); });
    EXPECT_TRUE(hasSessions);
    for (const week::ClientOfWeek& client : facts->clients) {
        for (const week::BookedSession& booked : client.sessions) {
            EXPECT_GE(booked.session.date, monday() - 7);
            EXPECT_LT(booked.session.date, monday() + 7);
        }
    }
}

TEST_F(WeekReaderTest, TakesTheClosuresThatTouchTheWeek)
{
    WeekSettings settings(m_studio.database());
    ASSERT_TRUE(settings.addClosure({monday() - 3, monday(), 0, week::kDayMinutes, {}, {}, 0, "touches"}));
    ASSERT_TRUE(settings.addClosure({monday() - 9, monday() - 1, 0, week::kDayMinutes, {}, {}, 0, "before"}));
    ASSERT_TRUE(settings.addClosure({monday() + 7, monday() + 8, 0, week::kDayMinutes, {}, {}, 0, "after"}));
    const auto facts = read(monday());
    ASSERT_TRUE(facts);
    ASSERT_EQ(facts->closures.size(), 1U);
    EXPECT_EQ(facts->closures[0].why, "touches");
}

TEST_F(WeekReaderTest, AQuotaIsOfItsOwnWeekAlone)
{
    const base::ClientId ada = test::clientNamed(m_studio.database(), "Ada Lund");
    ASSERT_TRUE(WeekSettings(m_studio.database()).setQuota(ada, monday(), 1));
    const auto quotaOf = [&](base::Date week) {
        const week::WeekFacts facts = read(week).value();
        for (const week::ClientOfWeek& client : facts.clients) {
            if (client.client.id == ada) {
                return client.quota;
            }
        }
        return std::optional<int>(-1);
    };
    EXPECT_EQ(quotaOf(monday()), 1);
    EXPECT_EQ(quotaOf(monday() + 7), std::nullopt);
}

TEST_F(WeekReaderTest, AWeekAheadIsWhollyToCome)
{
    const auto facts = read(monday() + 7);
    ASSERT_TRUE(facts);
    EXPECT_LT(facts->nowMinute, 0);
    EXPECT_FALSE(week::caseOf(*facts).problem.sessions.empty());
}

}  // namespace chalk::store
