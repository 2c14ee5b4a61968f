#include "ui/direction/months_case.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

namespace {

checkin::ReportLift benchThenAndNow()
{
    checkin::ReportLift lift;
    lift.name = "Bench press";
    lift.equipment = lifts::EquipmentKind::Barbell;
    lift.work = {{*base::Date::parse("2026-05-05"), base::Load::fromCenti(4000), 3, 8, base::Seconds(180)},
                 {*base::Date::parse("2026-11-20"), base::Load::fromCenti(5000), 4, 6, std::nullopt}};
    return lift;
}

screens::MovementScreen screenOf(std::initializer_list<screens::Mark> squat)
{
    screens::MovementScreen screen;
    for (const screens::Mark mark : squat) {
        screen.of(lifts::Pattern::Squat).points.push_back({"point", mark});
    }
    screen.isFinished = true;
    return screen;
}

}  // namespace

TEST(MonthsCase, ALiftIsToldThenAndNow)
{
    checkin::ProgressReport report;
    report.lifts = {benchThenAndNow(), {}};
    const auto rows = monthLiftRows(report);
    ASSERT_EQ(rows.size(), 1U) << "a lift without work has nothing to tell";
    EXPECT_EQ(rows[0], (QStringList{QStringLiteral("Bench press"), QStringLiteral("40 kg, 3 × 8, rest 3:00"), QStringLiteral("50 kg, 4 × 6"), QStringLiteral("+25 %")}));
}

TEST(MonthsCase, ScreensAreToldPatternByPattern)
{
    using screens::Mark;
    MonthsCase months;
    EXPECT_TRUE(monthScreenRows(months).empty());
    months.screenThen = screenOf({Mark::Met, Mark::NotMet, Mark::Partly});
    ASSERT_EQ(monthScreenRows(months).size(), 1U) << "only the squat was screened";
    EXPECT_EQ(monthScreenRows(months)[0][1], QStringLiteral("1 of 3 points met"));
    EXPECT_EQ(monthScreenRows(months)[0][2], QStringLiteral("not screened again"));
    months.screenNow = screenOf({Mark::Met, Mark::Met, Mark::Met});
    months.screenNow->of(lifts::Pattern::Squat).pain = screens::ScreenPain{"knee", 3};
    EXPECT_EQ(monthScreenRows(months)[0][2], QStringLiteral("3 of 3 points met, pain 3"));
}

TEST(MonthsCase, AttendanceCountsWhatCounts)
{
    checkin::ProgressReport report;
    EXPECT_EQ(monthAttendanceText(report), QStringLiteral("No session is on file."));
    report.weeks = {{*base::Date::parse("2026-11-02"), {true, false}}, {*base::Date::parse("2026-11-09"), {true}}};
    report.mostPain = 4;
    EXPECT_EQ(monthAttendanceText(report), QStringLiteral("Came to 2 of 3 sessions. The most pain that was named is 4 of 10."));
}

TEST(MonthsCase, IsReadFromTheFirstLoadOn)
{
    test::StudioOnTest studio;
    const auto catalogue = exchange::builtInCatalogue();
    const auto ada = test::clientNamed(studio.database(), "Ada Lund");
    const auto months = readMonths(studio.file(), catalogue, ada, test::smallStudioDay() - 35, test::smallStudioDay());
    ASSERT_TRUE(months) << months.error().message.toStdString();
    const auto rows = monthLiftRows(months->report);
    ASSERT_FALSE(rows.empty());
    const auto squat = std::ranges::find(rows, QStringLiteral("Back squat"), [](const QStringList& row) { return row[0]; });
    ASSERT_NE(squat, rows.end());
    EXPECT_TRUE((*squat)[1].startsWith(QStringLiteral("30 kg, 2 × 8"))) << (*squat)[1].toStdString();
    EXPECT_TRUE((*squat)[2].startsWith(QStringLiteral("45 kg, 2 × 7"))) << (*squat)[2].toStdString();
    EXPECT_EQ((*squat)[3], QStringLiteral("+50 %"));
    EXPECT_TRUE(monthAttendanceText(months->report).startsWith(QStringLiteral("Came to 2 of 3 sessions.")));
    EXPECT_FALSE(readMonths(studio.file(), catalogue, base::ClientId(999), test::smallStudioDay() - 35, test::smallStudioDay()));
}

}  // namespace chalk::ui::direction
