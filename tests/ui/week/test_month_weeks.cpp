#include "ui/week/month_weeks.h"

#include "tests/ui/week/week_fixture.h"

namespace chalk::ui::week {

namespace {

using test::clock;

const base::Date kFirstMonday = *base::Date::fromYmd(2026, 11, 23);

MonthWeeks twoWeeks(const std::vector<chalk::week::Closure>& closures)
{
    std::vector<int> counts(14, 0);
    counts[1] = 5;
    counts[7] = 3;
    return monthWeeksOf(kFirstMonday, counts, chalk::week::StudioWeek::usualOpeningHours(), closures);
}

}  // namespace

TEST(MonthWeeks, CountsStandOnTheirDaysAndMonthsAreNamedWhereTheyBegin)
{
    const MonthWeeks month = twoWeeks({});
    ASSERT_EQ(month.weeks.size(), 2U);
    EXPECT_EQ(month.weeks[0].days[1].sessions, 5);
    EXPECT_EQ(month.weeks[1].days[0].sessions, 3);
    EXPECT_EQ(month.mostSessions(), 5);
    EXPECT_EQ(month.weeks[0].label, QStringLiteral("23 Nov"));
    EXPECT_EQ(month.weeks[1].label, QStringLiteral("30"));
    EXPECT_FALSE(month.weeks[0].days[6].isShown) << "closed on Sundays";
    EXPECT_TRUE(month.notes.empty());
}

TEST(MonthWeeks, AWholeDayIsClosedAndAPartMakesItShort)
{
    const MonthWeeks month = twoWeeks({{kFirstMonday + 3, kFirstMonday + 4, 0, chalk::week::kDayMinutes, {}, {}, 0, ""},
                                       {kFirstMonday + 12, kFirstMonday + 12, clock(12), chalk::week::kDayMinutes, {}, {}, 0, "Harbour lights"},
                                       {kFirstMonday + 1, kFirstMonday + 1, 0, chalk::week::kDayMinutes, base::CoachId(1), {}, 0, "Course"}});
    EXPECT_TRUE(month.weeks[0].days[3].isClosed);
    EXPECT_FALSE(month.weeks[0].days[1].isClosed) << "a coach alone";
    EXPECT_TRUE(month.weeks[1].days[5].isShort);
    ASSERT_EQ(month.notes.size(), 2U);
    EXPECT_EQ(month.notes[0].text, QStringLiteral("26 Nov – 27 Nov: studio closed"));
    EXPECT_TRUE(month.notes[0].isWhole);
    EXPECT_EQ(month.notes[1].text, QStringLiteral("Sat 5 Dec: closes 12:00, Harbour lights"));
    EXPECT_FALSE(month.notes[1].isWhole);
}

}  // namespace chalk::ui::week
