#include "ui/direction/missed_weeks_preview.h"

#include "tests/support/lift_on_test.h"
#include "tests/ui/direction/plan_on_test.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

namespace {

using chalk::direction::BlockPlan;
using chalk::direction::DoneSet;
using chalk::direction::MissedWeeks;

BlockPlan twelveWeeks()
{
    return planFor(wishesOnTest());
}

DoneSet doneOn(int day)
{
    return {firstMonday() + day, test::kilos(80), base::Reps(4)};
}

}  // namespace

TEST(MissedWeeksPreview, WeeksThatAreOverWithoutWorkAreTakenForMissed)
{
    const std::vector<std::vector<DoneSet>> done{{doneOn(1), doneOn(15)}, {}, {doneOn(27)}};
    const auto reasons = missedReasons(twelveWeeks(), done, {}, firstMonday() + 36);
    const std::vector wanted{MissedReason::None, MissedReason::NothingDone, MissedReason::None, MissedReason::None, MissedReason::NothingDone};
    EXPECT_EQ(std::vector(reasons.begin(), reasons.begin() + 5), wanted);
    EXPECT_EQ(reasons[5], MissedReason::None) << "it still runs";
    EXPECT_EQ(missedReasons(twelveWeeks(), done, {}, firstMonday() + 34)[4], MissedReason::None) << "its Sunday";
    EXPECT_EQ(missedReasons(twelveWeeks(), done, {}, firstMonday() + 35)[4], MissedReason::NothingDone);
}

TEST(MissedWeeksPreview, WeeksToComeAreMissedWhereMondayToFridayIsAway)
{
    const base::Date fifth = firstMonday() + 28;
    const std::vector closed{AwayDays{fifth - 4, fifth + 5, true}};  // Thursday 24 December to Saturday 2 January
    const auto reasons = missedReasons(twelveWeeks(), {}, closed, firstMonday());
    EXPECT_EQ(reasons[3], MissedReason::None) << "Monday to Wednesday are open";
    EXPECT_EQ(reasons[4], MissedReason::StudioClosed);
    EXPECT_EQ(reasons[5], MissedReason::None);
    const std::vector both{AwayDays{fifth, fifth + 2, true}, AwayDays{fifth + 3, fifth + 4, false}};
    EXPECT_EQ(missedReasons(twelveWeeks(), {}, both, firstMonday())[4], MissedReason::ClientAway) << "together they cover it";
    EXPECT_EQ(missedReasons(twelveWeeks(), {}, std::span(both).first(1), firstMonday())[4], MissedReason::None);
    const std::vector<std::vector<DoneSet>> done{{doneOn(30)}};
    EXPECT_EQ(missedReasons(twelveWeeks(), done, both, firstMonday() + 40)[4], MissedReason::None) << "it was trained all the same";
}

TEST(MissedWeeksPreview, AShiftEndsLaterAndLeavesNothingOut)
{
    const std::vector mondays{firstMonday() + 7, firstMonday() + 14};
    const MissedPreview preview = missedPreview(twelveWeeks(), mondays, MissedWeeks::Shift);
    EXPECT_EQ(preview.plan, withMissedWeeks(twelveWeeks(), mondays, MissedWeeks::Shift));
    EXPECT_TRUE(preview.leftOut.empty());
    EXPECT_EQ(preview.weeksLater, 2);
    EXPECT_EQ(missedText(preview, twelveWeeks()), QStringLiteral("Ends on Sun 7 Mar, 2 weeks later. Nothing is left out."));
}

TEST(MissedWeeksPreview, ASqueezeSaysWhatIsLeftOut)
{
    const std::vector mondays{firstMonday() + 7};
    const MissedPreview preview = missedPreview(twelveWeeks(), mondays, MissedWeeks::Squeeze);
    EXPECT_EQ(preview.leftOut, std::vector<std::size_t>{3}) << "a lighter week first";
    EXPECT_EQ(preview.weeksLater, 0);
    EXPECT_EQ(missedText(preview, twelveWeeks()), QStringLiteral("Ends on Sun 21 Feb, as planned. Left out: week 4 (lighter)."));
}

TEST(MissedWeeksPreview, RowsHoldTheThreePlansBesideEachOther)
{
    const std::vector mondays{firstMonday() + 7};
    const auto rows = missedRows(twelveWeeks(), mondays);
    ASSERT_EQ(rows.size(), 13U);
    EXPECT_EQ(rows[0].shifted, QStringLiteral("1  Base"));
    EXPECT_EQ(rows[1].before, QStringLiteral("2  Base"));
    EXPECT_EQ(rows[1].shifted, QStringLiteral("missed"));
    EXPECT_EQ(rows[2].shifted, QStringLiteral("2  Base"));
    EXPECT_EQ(rows[4].shifted, QStringLiteral("4  Base, lighter"));
    EXPECT_EQ(rows[4].squeezed, QStringLiteral("5  Build")) << "the fourth is left out";
    EXPECT_EQ(rows[12].before, QString());
    EXPECT_EQ(rows[12].shifted, QStringLiteral("12  Test"));
    EXPECT_EQ(rows[12].squeezed, QString());
}

}  // namespace chalk::ui::direction
