#include "core/direction/tested_maximum.h"

#include <gtest/gtest.h>

namespace chalk::direction {

TEST(TestedMaximum, EveryEndHasAKeyThatReadsBack)
{
    for (const TestEnd end : {TestEnd::Found, TestEnd::Pain, TestEnd::TooMany, TestEnd::EquipmentEnds, TestEnd::Stopped}) {
        EXPECT_EQ(testEndOf(keyOf(end)), end);
    }
    EXPECT_EQ(keyOf(TestEnd::EquipmentEnds), "equipment_ends");
    EXPECT_FALSE(testEndOf("lost").has_value());
}

}  // namespace chalk::direction
