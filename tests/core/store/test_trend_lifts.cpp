#include "core/store/trend_lifts.h"

#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

TEST(TrendLifts, StandByClientAndPattern)
{
    test::StudioOnTest studio;
    const auto lifts = readTrendLifts(studio.database());
    ASSERT_EQ(lifts.size(), 3U);
    EXPECT_EQ(lifts[0].pattern, lifts::Pattern::Squat);
    EXPECT_EQ(lifts[1].pattern, lifts::Pattern::Hinge);
    EXPECT_EQ(lifts[2].pattern, lifts::Pattern::HorizontalPush);
    EXPECT_EQ(lifts[2].setup.kit.pieces, 2);
    EXPECT_EQ(lifts[0].client, test::clientNamed(studio.database(), "Ada Lund"));
    EXPECT_TRUE(readTrendLifts(studio.database(), test::clientNamed(studio.database(), "Bo Arden")).empty());
    EXPECT_EQ(readTrendLifts(studio.database(), lifts[0].client).size(), 3U);
    EXPECT_FALSE(studio.database().failure());
}

TEST(TrendLifts, AnEntryHasTheKitOfItsDay)
{
    exchange::StudioDocument document = test::smallStudio();
    document.clients[0].lifts[1].events.push_back(
        {{test::smallStudioDay() - 5, progression::Swap{test::fixedKit({20, 24}).equipment, {}, {}, {}, "goblet_squat", 2}}, {}});
    test::StudioOnTest studio(document);
    const TrendLift squat = readTrendLifts(studio.database()).front();
    ASSERT_EQ(squat.changes.size(), 1U);
    EXPECT_EQ(squat.kitAt(test::smallStudioDay() - 6, 1'000'000).pieces, 1);
    EXPECT_EQ(squat.kitAt(test::smallStudioDay() - 5, 0).pieces, 1) << "earlier that day";
    EXPECT_EQ(squat.kitAt(test::smallStudioDay() - 5, 1'000'000).pieces, 2);
    EXPECT_EQ(squat.kitAt(test::smallStudioDay(), 0).exerciseKey, "goblet_squat");
    EXPECT_EQ(squat.kitAt(test::smallStudioDay(), 0).measure, squat.setup.kit.measure) << "what a swap leaves open stays";
}

TEST(TrendLifts, ADamagedLiftIsAFailure)
{
    test::StudioOnTest studio;
    studio.rows(QStringLiteral("UPDATE lift SET kit = 'none' WHERE pattern = 'squat'"));
    EXPECT_TRUE(readTrendLifts(studio.database()).empty());
    ASSERT_TRUE(studio.database().failure());
    EXPECT_EQ(studio.database().failure()->kind, StoreError::Kind::Damaged);
}

}  // namespace chalk::store
