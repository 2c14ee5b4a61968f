#include "core/exchange/trends_csv.h"

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

const base::Date kCsvMonday = *base::Date::fromYmd(2026, 12, 28);

base::Mass csvMass(int kilograms)
{
    return base::Mass::of(base::Load::fromCenti(kilograms * 100), base::MassUnit::Kilogram);
}

checkin::TrendWeek csvWeek()
{
    checkin::TrendWeek week;
    week.monday = kCsvMonday;
    week.work[0].volume = csvMass(3022);
    week.attendance = {2, 1, 0, 0};
    return week;
}

}  // namespace

// RFC 4180, 2: rules 1 (CRLF), 3 (a header), 4 (as many fields in each record), 6 and 7 (quotes). ISO 8601: 28 December 2026 begins week 53.
TEST(TrendsCsv, OneNumberARecord)
{
    checkin::Trends trends;
    trends.ratio = checkin::LoadRatio{kCsvMonday, 2, 1.6};
    trends.weeks = {csvWeek()};
    trends.lifts.resize(1);
    trends.lifts[0].name = "Squat, \"low\" bar";
    trends.lifts[0].singles = {{kCsvMonday + 1, csvMass(90), csvMass(95), csvMass(101)}};
    EXPECT_EQ(trendsCsvOf(trends, "Lind, Maya", base::MassUnit::Kilogram),
              QByteArray("client,week,day,figure,of,value,low,high,unit\r\n"
                         "\"Lind, Maya\",2026-W53,2026-12-28,load_volume,squat,3022,,,kg*reps\r\n"
                         "\"Lind, Maya\",2026-W53,2026-12-28,came,,2,,,sessions\r\n"
                         "\"Lind, Maya\",2026-W53,2026-12-28,counted,,3,,,sessions\r\n"
                         "\"Lind, Maya\",2026-W53,2026-12-29,estimated_single,\"Squat, \"\"low\"\" bar\",95,90,101,kg\r\n"
                         "\"Lind, Maya\",2026-W53,2026-12-28,load_ratio,,2,,,\r\n"
                         "\"Lind, Maya\",2026-W53,2026-12-28,load_ratio_coupled,,1.6,,,\r\n"));
}

TEST(TrendsCsv, EverybodyAndThenEachClient)
{
    checkin::StudioTrends trends;
    trends.days = {kCsvMonday, kCsvMonday + 6};
    trends.weeks = {csvWeek()};
    trends.clients = {{base::ClientId(1), "Tove", {}, csvMass(3022), {2, 1, 0, 0}, 1.25}};
    EXPECT_EQ(trendsCsvOf(trends), QByteArray("client,week,day,figure,of,value,low,high,unit\r\n"
                                              ",2026-W53,2026-12-28,load_volume,squat,3022,,,kg*reps\r\n"
                                              ",2026-W53,2026-12-28,came,,2,,,sessions\r\n"
                                              ",2026-W53,2026-12-28,counted,,3,,,sessions\r\n"
                                              "Tove,2026-W53,2026-12-28,load_volume,,3022,,,kg*reps\r\n"
                                              "Tove,2026-W53,2026-12-28,came,,2,,,sessions\r\n"
                                              "Tove,2026-W53,2026-12-28,counted,,3,,,sessions\r\n"
                                              "Tove,2026-W52,2026-12-21,monotony,,1.25,,,\r\n"));
}

}  // namespace chalk::exchange
