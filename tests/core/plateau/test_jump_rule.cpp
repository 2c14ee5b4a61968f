#include "core/plateau/jump_rule.h"

#include <gtest/gtest.h>

namespace chalk::plateau {
namespace {

using JumpStep = JumpRule::Step;

JumpRule jumpRuleAfter(std::initializer_list<double> indices)
{
    JumpRule rule;
    for (const double index : indices) {
        rule.take(index);
    }
    return rule;
}

TEST(JumpRule, NeedsThreeBefore)
{
    EXPECT_EQ(jumpRuleAfter({4, 4}).step(9), JumpStep::Usual);
    EXPECT_EQ(jumpRuleAfter({4, 4, 4}).step(9), JumpStep::Jump);
}

TEST(JumpRule, MoreThanTheLimitEitherWay)
{
    EXPECT_EQ(jumpRuleAfter({0, 0, 0}).step(0.22), JumpStep::Usual);
    EXPECT_EQ(jumpRuleAfter({0, 0, 0}).step(-0.22), JumpStep::Usual);
    EXPECT_EQ(jumpRuleAfter({0, 0, 0}).step(0.2201), JumpStep::Jump);
    EXPECT_EQ(jumpRuleAfter({0, 0, 0}).step(-0.2201), JumpStep::Jump);
}

TEST(JumpRule, TheMedianOfTheLastSixIsUsual)
{
    EXPECT_EQ(jumpRuleAfter({9, 9, 9, 9, 4, 4, 4, 4}).step(4), JumpStep::Usual);
    EXPECT_EQ(jumpRuleAfter({9, 9, 9, 9, 4, 4, 4}).step(6.5), JumpStep::Usual);
    EXPECT_EQ(jumpRuleAfter({9, 9, 9, 9, 4, 4, 4}).step(9), JumpStep::Jump);
}

TEST(JumpRule, TheThirdTheSameWayInARowIsANewLevel)
{
    JumpRule rule = jumpRuleAfter({4, 4, 4});
    EXPECT_EQ(rule.step(5), JumpStep::Jump);
    EXPECT_EQ(rule.step(9), JumpStep::Jump);
    EXPECT_EQ(rule.step(5), JumpStep::NewLevel);
}

TEST(JumpRule, AnotherWayOrAUsualOneStartsTheCountAgain)
{
    JumpRule rule = jumpRuleAfter({4, 4, 4});
    EXPECT_EQ(rule.step(5), JumpStep::Jump);
    EXPECT_EQ(rule.step(5), JumpStep::Jump);
    EXPECT_EQ(rule.step(3), JumpStep::Jump);
    EXPECT_EQ(rule.step(3), JumpStep::Jump);
    EXPECT_EQ(rule.step(4), JumpStep::Usual);
    EXPECT_EQ(rule.step(3), JumpStep::Jump);
    EXPECT_EQ(rule.step(3), JumpStep::Jump);
    rule.passUnused();
    EXPECT_EQ(rule.step(3), JumpStep::Jump);
}

}  // namespace
}  // namespace chalk::plateau
