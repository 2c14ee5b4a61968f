#include "core/plateau/light_rule.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

namespace chalk::plateau {
namespace {

LoggedExposure targeting(int centi)
{
    auto exposure = test::plainExposure();
    exposure.targetLoad = base::Load::fromCenti(centi);
    return exposure;
}

LightRule lightRuleAfter(std::initializer_list<int> centis)
{
    LightRule rule;
    for (const int centi : centis) {
        rule.take(targeting(centi));
    }
    return rule;
}

TEST(LightRule, NothingIsLightBesideNothing)
{
    LightRule rule;
    EXPECT_FALSE(rule.isLight(targeting(100)));
}

TEST(LightRule, OneUsualLoadIsEnough)
{
    EXPECT_TRUE(lightRuleAfter({10000}).isLight(targeting(8199)));
    EXPECT_FALSE(lightRuleAfter({10000}).isLight(targeting(8200)));
}

TEST(LightRule, TheMedianOfTheLastThreeIsUsual)
{
    EXPECT_FALSE(lightRuleAfter({10000, 5000, 5000, 10000}).isLight(targeting(4500)));
    EXPECT_TRUE(lightRuleAfter({5000, 10000, 5000, 10000}).isLight(targeting(4500)));
    EXPECT_TRUE(lightRuleAfter({10000, 5000}).isLight(targeting(6100)));
    EXPECT_FALSE(lightRuleAfter({10000, 5000}).isLight(targeting(6200)));
}

TEST(LightRule, TheThirdInARowIsTheNewLevel)
{
    LightRule rule = lightRuleAfter({10000, 10000, 10000});
    EXPECT_TRUE(rule.isLight(targeting(6000)));
    EXPECT_TRUE(rule.isLight(targeting(7000)));
    EXPECT_FALSE(rule.isLight(targeting(6000)));
    rule.take(targeting(6000));
    EXPECT_FALSE(rule.isLight(targeting(6000)));
}

TEST(LightRule, AUsualOneOrAPlannedLighterOneBreaksTheRun)
{
    LightRule rule = lightRuleAfter({10000});
    EXPECT_TRUE(rule.isLight(targeting(6000)));
    EXPECT_TRUE(rule.isLight(targeting(6000)));
    EXPECT_FALSE(rule.isLight(targeting(10000)));
    EXPECT_TRUE(rule.isLight(targeting(6000)));
    EXPECT_TRUE(rule.isLight(targeting(6000)));
    rule.passLighterWeek();
    EXPECT_TRUE(rule.isLight(targeting(6000)));
}

}  // namespace
}  // namespace chalk::plateau
