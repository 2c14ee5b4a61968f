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

TEST(CheckIn, LooksBackOnWholeWeeks)
{
    // 2026-11-25 is a Wednesday of ISO week 48; twelve weeks end with its Sunday.
    const DayRange days = checkInDays(*base::Date::parse("2026-11-25"));
    EXPECT_EQ(days.from, *base::Date::parse("2026-09-07"));
    EXPECT_EQ(days.to, *base::Date::parse("2026-11-29"));
}

}  // namespace chalk::checkin
