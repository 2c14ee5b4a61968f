#include "core/plateau/judgement.h"

#include <gtest/gtest.h>

namespace chalk::plateau {

TEST(Judgements, HaveKeys)
{
    EXPECT_EQ(keyOf(PlateauVerdict::Progressing), "progressing");
    EXPECT_EQ(keyOf(PlateauVerdict::NotEnoughData), "not_enough_data");
    EXPECT_EQ(keyOf(PlateauReason::None), "");
    EXPECT_EQ(keyOf(PlateauReason::LighterWeek), "deload");
    EXPECT_EQ(keyOf(PlateauReason::NewBest), "new_best");
    EXPECT_EQ(keyOf(PlateauStrength::Strong), "strong");
}

}  // namespace chalk::plateau
