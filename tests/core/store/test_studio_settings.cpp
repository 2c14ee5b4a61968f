#include "core/store/studio_settings.h"

#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

TEST(StudioSettingsTest, AStudioThatSetNothingHasTheStatedDefault)
{
    test::StudioOnTest studio;
    studio.rows(QStringLiteral("UPDATE studio SET settings = '{}'"));
    EXPECT_EQ(StudioSettings(studio.database()).restingLimits().value(), clients::RestingLimits());
}

TEST(StudioSettingsTest, LimitsAreKeptAndLeaveOtherSettingsAlone)
{
    test::StudioOnTest studio;
    studio.rows(QStringLiteral("UPDATE studio SET settings = '{\"other\":7}'"));
    const clients::RestingLimits limits{110, 160, 95};
    ASSERT_TRUE(StudioSettings(studio.database()).setRestingLimits(limits));
    studio.close();
    studio.open();
    EXPECT_EQ(StudioSettings(studio.database()).restingLimits().value(), limits);
    EXPECT_EQ(studio.rows(QStringLiteral("SELECT settings FROM studio")).join(QString()).count(QStringLiteral("\"other\":7")), 1);
}

TEST(StudioSettingsTest, LimitsThatCannotBeAreRefusedByName)
{
    test::StudioOnTest studio;
    StudioSettings settings(studio.database());
    const clients::RestingLimits before = settings.restingLimits().value();
    const std::pair<clients::RestingLimits, const char*> faulty[] = {
        {{39, 180, 100}, "heart_rate"}, {{201, 180, 100}, "heart_rate"}, {{100, 89, 60}, "systolic"}, {{100, 251, 100}, "systolic"},
        {{100, 180, 49}, "diastolic"},  {{100, 240, 151}, "diastolic"},  {{100, 120, 120}, "diastolic"}};
    for (const auto& [limits, field] : faulty) {
        const auto refused = settings.setRestingLimits(limits);
        ASSERT_FALSE(refused) << field;
        EXPECT_EQ(refused.error().kind, StoreError::Kind::Refused);
        EXPECT_TRUE(refused.error().message.contains(QLatin1String(field))) << refused.error().message.toStdString();
        EXPECT_EQ(settings.restingLimits().value(), before);
    }
    EXPECT_TRUE(settings.setRestingLimits({40, 90, 50}));
    EXPECT_TRUE(settings.setRestingLimits({200, 250, 150}));
}

TEST(StudioSettingsTest, DamagedLimitsAreAFaultAndNotTheDefault)
{
    for (const char* written : {"{\"resting_limits\":{\"heart_rate\":\"fast\",\"systolic\":180,\"diastolic\":100}}", "{\"resting_limits\":{\"heart_rate\":100}}",
                                "{\"resting_limits\":{\"heart_rate\":100,\"systolic\":100,\"diastolic\":120}}"}) {
        test::StudioOnTest studio;
        studio.rows(QStringLiteral("UPDATE studio SET settings = '%1'").arg(QLatin1String(written)));
        const auto limits = StudioSettings(studio.database()).restingLimits();
        ASSERT_FALSE(limits) << written;
        EXPECT_EQ(limits.error().kind, StoreError::Kind::Damaged);
    }
}

}  // namespace chalk::store
