#include "core/base/date.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::base {

TEST(Date, ReadsOnlyRealDaysInOneForm)
{
    EXPECT_EQ(Date::parse("2026-03-02")->toString(), "2026-03-02");
    EXPECT_TRUE(Date::parse("2028-02-29"));
    for (const char* text : {"2026-02-29", "2026-13-01", "2026-00-10", "2026-01-00", "0000-01-01", "2026-3-2", "26-03-02",
                             "2026/03/02", " 2026-03-02", "2026-03-02T00:00", "", "2026-03-0x", "-026-03-02"}) {
        EXPECT_FALSE(Date::parse(text)) << text;
    }
}

TEST(Date, KnowsIsoWeeks)
{
    // ISO 8601 week dates, among them the years of 53 weeks; computed with Python's datetime and read in calendars.
    const struct {
        const char* day;
        const char* week;
        int weekday;
    } rows[] = {{"1977-01-01", "1976-W53", 5}, {"1978-01-01", "1977-W52", 6}, {"1978-01-02", "1978-W01", 0},
                {"2012-12-31", "2013-W01", 0}, {"2016-01-02", "2015-W53", 5}, {"2024-12-30", "2025-W01", 0},
                {"2026-12-31", "2026-W53", 3}, {"2027-01-03", "2026-W53", 6}, {"2006-12-31", "2006-W52", 6}};
    for (const auto& row : rows) {
        const Date date = *Date::parse(row.day);
        EXPECT_EQ(toString(date.isoWeek()), row.week) << row.day;
        EXPECT_EQ(date.weekday(), row.weekday) << row.day;
    }
    EXPECT_FALSE(parseIsoWeek("2025-W53"));
    EXPECT_FALSE(parseIsoWeek("2025-W00"));
    EXPECT_FALSE(parseIsoWeek("2025W01"));
    EXPECT_TRUE(parseIsoWeek("2026-W53"));
}

TEST(Date, CountsYearsLived)
{
    const Date birth = *Date::parse("1980-02-29");
    EXPECT_EQ(ageOn(birth, *Date::parse("2026-02-28")), 45);
    EXPECT_EQ(ageOn(birth, *Date::parse("2026-03-01")), 46);
    EXPECT_EQ(ageOn(birth, *Date::parse("2028-02-29")), 48);
}

RC_GTEST_PROP(Date, TextAndWeekLeadBackToTheDay, ())
{
    const Date date = Date::fromDays(*rc::gen::inRange(-700'000, 2'900'000));
    RC_ASSERT(Date::parse(date.toString()) == date);
    const Date monday = *Date::mondayOf(date.isoWeek());
    RC_ASSERT(monday + date.weekday() == date);
}

}  // namespace chalk::base
