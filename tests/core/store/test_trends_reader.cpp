#include "core/store/trends_reader.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/statement.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

const lifts::Catalogue& trendsCatalogue()
{
    static const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    return catalogue;
}

/// The load volume of each week as the roster's cache has it, by Monday.
std::map<base::Date, base::Mass> cachedVolumes(Database& database)
{
    std::map<base::Date, base::Mass> volumes;
    Statement rows(database, QStringLiteral("SELECT monday, sum(load_volume) FROM client_week GROUP BY monday"));
    rows.run();
    while (rows.next()) {
        volumes[rows.date(0)] = base::Mass::fromRaw(rows.integer(1));
    }
    return volumes;
}

void expectCachedVolumes(const std::vector<checkin::TrendWeek>& weeks, Database& database)
{
    const auto cached = cachedVolumes(database);
    for (const checkin::TrendWeek& week : weeks) {
        const auto at = cached.find(week.monday);
        EXPECT_EQ(week.together().volume, at == cached.end() ? base::Mass() : at->second) << week.monday.toString();
    }
    EXPECT_EQ(cached.size(), 5U);
}

}  // namespace

TEST(TrendsReader, OneClientsWeeks)
{
    test::StudioOnTest studio;
    studio.rows(QStringLiteral("INSERT INTO session_report (session_id, rpe_tenths, minutes) SELECT id, 65, 60 FROM session WHERE code = 'S2'"));
    const auto read = TrendsReader(studio.database(), trendsCatalogue()).read(test::clientNamed(studio.database(), "Ada Lund"), test::smallStudioDay(), 12);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->name, "Ada Lund");
    EXPECT_EQ(read->unit, base::MassUnit::Kilogram);
    ASSERT_EQ(read->trends.weeks.size(), 12U);
    expectCachedVolumes(read->trends.weeks, studio.database());
    EXPECT_EQ(read->trends.weeks[10].attendance, (analysis::Attendance{1, 0, 0, 0}));
    EXPECT_EQ(read->trends.weeks[10].load.load, 390);
    EXPECT_EQ(read->trends.weeks[8].load.unrated, 1);
    ASSERT_EQ(read->trends.lifts.size(), 3U);
    EXPECT_EQ(read->trends.lifts[0].singles.size(), 3U) << "of 8 and 5 in reserve there is no estimate";
    EXPECT_FALSE(read->trends.singlesGap);
    EXPECT_FALSE(read->trends.volumeGap);
    EXPECT_TRUE(read->trends.monotonyGap);
}

TEST(TrendsReader, ANewClientHasGaps)
{
    test::StudioOnTest studio;
    const auto read = TrendsReader(studio.database(), trendsCatalogue()).read(test::clientNamed(studio.database(), "Bo Arden"), test::smallStudioDay(), 4);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->unit, base::MassUnit::Pound);
    EXPECT_TRUE(read->trends.volumeGap && read->trends.singlesGap && read->trends.targetsGap && read->trends.monotonyGap);
    EXPECT_EQ(read->trends.ratio.error(), checkin::NoRatio::TooEarly);
}

TEST(TrendsReader, NobodyIsAFailure)
{
    test::StudioOnTest studio;
    const auto read = TrendsReader(studio.database(), trendsCatalogue()).read(base::ClientId(99), test::smallStudioDay(), 12);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, StoreError::Kind::Refused);
}

TEST(TrendsReader, EverybodyByName)
{
    test::StudioOnTest studio;
    const auto read = TrendsReader(studio.database(), trendsCatalogue()).readAll(test::smallStudioDay(), 12);
    ASSERT_TRUE(read);
    ASSERT_EQ(read->clients.size(), 2U);
    EXPECT_EQ(read->clients[0].name, "Ada Lund");
    EXPECT_EQ(read->clients[0].attendance, (analysis::Attendance{2, 1, 0, 0}));
    EXPECT_EQ(read->clients[0].load.kind, checkin::LoadTrend::Kind::New) << "her first load is of October";
    EXPECT_EQ(read->clients[1].load.kind, checkin::LoadTrend::Kind::None);
    expectCachedVolumes(read->weeks, studio.database());
}

}  // namespace chalk::store
