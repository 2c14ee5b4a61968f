#include "core/store/session_states.h"

#include <gtest/gtest.h>

namespace chalk::store {

TEST(SessionStates, AreAListForAStatement)
{
    EXPECT_EQ(statesWhere(sessions::isOpen), QStringLiteral("('planned', 'printed')"));
    EXPECT_EQ(statesWhere(sessions::isCalledOff), QStringLiteral("('cancelled_in_time', 'cancelled_late')"));
}

}  // namespace chalk::store
