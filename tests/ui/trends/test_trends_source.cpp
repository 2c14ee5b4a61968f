#include "ui/trends/trends_source.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::ui::trends {

TEST(TrendsSource, ReadsAStudio)
{
    test::StudioOnTest studio;
    StudioTrendsSource source(studio.file(), exchange::builtInCatalogue());
    const auto everybody = source.read({{}, test::smallStudioDay(), 12});
    ASSERT_TRUE(everybody);
    ASSERT_NE(everybody->studio(), nullptr);
    EXPECT_EQ(everybody->clients.size(), 2U);
    EXPECT_EQ(everybody->clients[0].second, QStringLiteral("Ada Lund"));
    EXPECT_TRUE(everybody->hasVolume());
    EXPECT_EQ(everybody->weeks().size(), 12U);
    const auto bo = source.read({test::clientNamed(studio.database(), "Bo Arden"), test::smallStudioDay(), 4});
    ASSERT_TRUE(bo);
    ASSERT_NE(bo->client(), nullptr);
    EXPECT_EQ(bo->unit(), base::MassUnit::Pound);
    EXPECT_FALSE(bo->hasVolume());
}

TEST(TrendsSource, SaysWhatIsWrong)
{
    test::StudioOnTest studio;
    EXPECT_FALSE(StudioTrendsSource(studio.file(), exchange::builtInCatalogue()).read({base::ClientId(99), test::smallStudioDay(), 12}));
    EXPECT_FALSE(StudioTrendsSource(QString(studio.folder() + QStringLiteral("/none.chalkrung")), exchange::builtInCatalogue()).read({{}, test::smallStudioDay(), 12}));
}

}  // namespace chalk::ui::trends
