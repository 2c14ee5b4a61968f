#include "core/sessions/skip_reason.h"

#include <gtest/gtest.h>

namespace chalk::sessions {

TEST(SkipReason, IsKeptByItsKey)
{
    for (const SkipReason reason : kSkipReasons) {
        EXPECT_EQ(skipReasonOf(keyOf(reason)), reason);
    }
    EXPECT_EQ(keyOf(SkipReason::EquipmentTaken), "equipment_taken");
}

TEST(SkipReason, AnythingElseIsSomebodysOwnWords)
{
    for (const char* words : {"", "no time", "No_time", "tired after the night shift"}) {
        EXPECT_FALSE(skipReasonOf(words)) << words;
    }
}

}  // namespace chalk::sessions
