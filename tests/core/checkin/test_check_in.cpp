#include "core/checkin/check_in.h"

#include <gtest/gtest.h>

#include <set>

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

TEST(CheckIn, EveryReasonHasAKeyOfItsOwn)
{
    std::set<std::string_view> keys;
    for (std::size_t i = 0; i < kChoiceReasons.size(); ++i) {
        EXPECT_EQ(static_cast<std::size_t>(kChoiceReasons[i]), i);
        keys.insert(keyOf(kChoiceReasons[i]));
    }
    EXPECT_EQ(keys.size(), kChoiceReasons.size());
    EXPECT_EQ(keyOf(ChoiceReason::AfterLayoff), "after_layoff");
}

TEST(CheckIn, LooksBackOnWholeWeeks)
{
    // 2026-11-25 is a Wednesday of ISO week 48; twelve weeks end with its Sunday.
    const DayRange days = checkInDays(*base::Date::parse("2026-11-25"));
    EXPECT_EQ(days.from, *base::Date::parse("2026-09-07"));
    EXPECT_EQ(days.to, *base::Date::parse("2026-11-29"));
}

}  // namespace chalk::checkin
