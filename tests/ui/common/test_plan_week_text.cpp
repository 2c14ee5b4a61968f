#include "ui/common/plan_week_text.h"

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(PlanWeekText, SaysTheWeekAndWhatIsSpecialAboutIt)
{
    EXPECT_EQ(planWeekText({5, 12, false, false}), QStringLiteral("Plan week 5 of 12"));
    EXPECT_EQ(planWeekText({4, 12, true, false}), QStringLiteral("Plan week 4 of 12, lighter"));
    EXPECT_EQ(planWeekText({12, 12, false, true}), QStringLiteral("Plan week 12 of 12, test"));
    EXPECT_EQ(planWeekInSentence({4, 12, true, false}), QStringLiteral("plan week 4 of 12, lighter"));
}

}  // namespace chalk::ui::common
