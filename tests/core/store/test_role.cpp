#include "core/store/role.h"

#include <gtest/gtest.h>

namespace chalk::store {

TEST(RoleTest, KeysAreReadBack)
{
    for (const Role role : {Role::Owner, Role::Coach, Role::FrontDesk}) {
        EXPECT_EQ(roleOf(keyOf(role)), role);
    }
    EXPECT_EQ(roleOf("boss"), std::nullopt);
}

TEST(RoleTest, TheFrontDeskBooksAndSeesNothingOfHealth)
{
    EXPECT_TRUE(may(Role::FrontDesk, Right::Book));
    for (const Right right : {Right::SeeHealth, Right::WriteHealth, Right::Record, Right::ChangeStudio, Right::EraseClient, Right::SeeLogins}) {
        EXPECT_FALSE(may(Role::FrontDesk, right));
        EXPECT_TRUE(may(Role::Owner, right));
    }
}

TEST(RoleTest, ACoachLeavesTheStudioToItsOwner)
{
    for (const Right right : {Right::SeeHealth, Right::WriteHealth, Right::Record, Right::Book}) {
        EXPECT_TRUE(may(Role::Coach, right));
    }
    for (const Right right : {Right::ChangeStudio, Right::EraseClient, Right::SeeLogins}) {
        EXPECT_FALSE(may(Role::Coach, right));
    }
}

}  // namespace chalk::store
