#include "core/plateau/entry_rules.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

namespace chalk::plateau {

TEST(EntryRules, ALoadFarFromItsTargetIsDoubtful)
{
    auto exposure = test::plainExposure();
    exposure.targetLoad = base::Load::fromCenti(4000);
    const auto isDoubtful = [&exposure](int centi) {
        exposure.load = base::Load::fromCenti(centi);
        return isLoadDoubtful(exposure);
    };
    EXPECT_FALSE(isDoubtful(4000));
    EXPECT_FALSE(isDoubtful(2800));
    EXPECT_TRUE(isDoubtful(2799));
    EXPECT_FALSE(isDoubtful(5600));
    EXPECT_TRUE(isDoubtful(5601));
    EXPECT_TRUE(isDoubtful(0));
}

TEST(EntryRules, RepsThatCannotBeAreDoubtful)
{
    auto exposure = test::plainExposure();
    const auto areDoubtful = [&exposure](int reps) {
        test::setReps(exposure, {reps, 8, 8});
        return areRepsDoubtful(exposure);
    };
    EXPECT_TRUE(areDoubtful(0));
    EXPECT_FALSE(areDoubtful(1));
    EXPECT_FALSE(areDoubtful(14));
    EXPECT_TRUE(areDoubtful(15));
    exposure.targetReps = base::Reps(28);
    EXPECT_FALSE(areDoubtful(30));
    EXPECT_TRUE(areDoubtful(31));
}

TEST(EntryRules, OnlyARecordedReserveIsDoubtful)
{
    auto exposure = test::plainExposure();
    exposure.reserve = std::nullopt;
    EXPECT_FALSE(isReserveDoubtful(exposure));
    exposure.reserve = 7;
    EXPECT_FALSE(isReserveDoubtful(exposure));
    exposure.reserve = 8;
    EXPECT_TRUE(isReserveDoubtful(exposure));
}

}  // namespace chalk::plateau
