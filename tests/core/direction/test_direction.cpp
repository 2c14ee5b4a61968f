#include "core/direction/direction.h"

#include <gtest/gtest.h>

namespace chalk::test {

TEST(Direction, KeysGoThereAndBack)
{
    for (const direction::Direction d : direction::kDirections) {
        EXPECT_EQ(direction::directionOf(keyOf(d)), d);
    }
    EXPECT_FALSE(direction::directionOf("cycle").has_value());
}

TEST(Direction, StrengthIsHeavyAndMovementVaried)
{
    using direction::Direction;
    EXPECT_GT(demandsOf(Direction::Strength).load, demandsOf(Direction::Physique).load);
    EXPECT_GT(demandsOf(Direction::Movement).variety, demandsOf(Direction::Strength).variety);
    EXPECT_GT(demandsOf(Direction::Physique).goodSessions, demandsOf(Direction::Strength).goodSessions);
}

}  // namespace chalk::test
