#include "core/checkin/check_in.h"

#include <gtest/gtest.h>

namespace chalk::checkin {

TEST(CheckIn, KeysLeadBackToTheirKinds)
{
    for (const FindingKind kind : kFindingKinds) {
        EXPECT_EQ(findingKindOf(keyOf(kind)), kind);
    }
    for (const ChoiceKind kind : kChoiceKinds) {
        EXPECT_EQ(choiceKindOf(keyOf(kind)), kind);
    }
    EXPECT_EQ(keyOf(FindingKind::OnCourse), "on_course");
    EXPECT_EQ(keyOf(ChoiceKind::LighterWeek), "lighter_week");
    EXPECT_FALSE(findingKindOf("fine"));
    EXPECT_FALSE(choiceKindOf(""));
}

}  // namespace chalk::checkin
