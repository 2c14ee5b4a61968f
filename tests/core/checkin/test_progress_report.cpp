#include "core/checkin/progress_report.h"

#include <gtest/gtest.h>

namespace chalk::checkin {

namespace {

using progression::Exposure;
using progression::SetRecord;
using progression::Stage;
using sessions::Session;
using sessions::SessionState;

base::Date day(const char* text)
{
    return *base::Date::parse(text);
}

base::Load reportLoad(int centi)
{
    return base::Load::fromCenti(centi);
}

WorkDone workOn(const char* date, int centi)
{
    return {day(date), reportLoad(centi), 3, 5, std::nullopt};
}

ReportEntry entryOn(const char* date, int centi, Stage stage, int pain = 0)
{
    return {day(date), workOn(date, centi), pain, stage, 1};
}

Session sessionOn(const char* date, SessionState state)
{
    Session session;
    session.date = day(date);
    session.state = state;
    return session;
}

ProgressReport reportOf(std::span<const ReportHistory> lifts, std::span<const Session> sessions = {})
{
    return progressReportOf({"Ketch Lane", "Joaquin Ferro", "Ines", day("2026-08-31"), day("2026-11-22"), sessions, lifts});
}

}  // namespace

TEST(ProgressReport, TheHeaviestWorkingSetsAreTheWorkOfADay)
{
    const Exposure exposure{1,
                            {{reportLoad(9000), 5, 2, -1, progression::Steadiness::Steady, true},
                             {reportLoad(8000), 6, 2, 120},
                             {reportLoad(8500), 5, 2, 150},
                             {reportLoad(8500), 4, 1, 140},
                             {reportLoad(8000), 8, 2, 200}}};
    const auto work = workDoneOf(day("2026-11-20"), exposure);
    ASSERT_TRUE(work);
    EXPECT_EQ(*work, (WorkDone{day("2026-11-20"), reportLoad(8500), 2, 4, base::Seconds(150)}));
    EXPECT_FALSE(workDoneOf(day("2026-11-20"), Exposure{0, {}}));
    EXPECT_FALSE(workDoneOf(day("2026-11-20"), Exposure{0, {{reportLoad(8500), 0}}})) << "a set without a rep";
}

TEST(ProgressReport, ThenIsWhatTheLastEntryBeforeLeft)
{
    ReportHistory lift;
    lift.name = "Back squat";
    lift.entries = {entryOn("2026-08-10", 5000, Stage::BaseLoad), entryOn("2026-08-28", 6000, Stage::LoadBuild, 7), entryOn("2026-10-02", 7000, Stage::LoadBuild, 2),
                    entryOn("2026-11-20", 7500, Stage::RepBuild, 1), entryOn("2026-11-23", 9900, Stage::SetBuild, 9)};
    const auto report = reportOf(std::vector{lift});
    ASSERT_EQ(report.lifts.size(), 1U);
    const ReportLift& found = report.lifts[0];
    EXPECT_EQ(found.stageThen, Stage::LoadBuild);
    EXPECT_EQ(found.stageNow, Stage::RepBuild) << "what comes after the last day does not count";
    EXPECT_EQ(found.work, (std::vector{workOn("2026-08-28", 6000), workOn("2026-10-02", 7000), workOn("2026-11-20", 7500)}));
    EXPECT_EQ(found.riseMilli(), 250);
    EXPECT_EQ(report.mostPain, 2) << "only of the time in between";
}

TEST(ProgressReport, ALiftThatBeganInBetweenStandsThenAtItsFirstEntry)
{
    ReportHistory lift;
    lift.entries = {entryOn("2026-10-02", 7000, Stage::BaseLoad)};
    ReportHistory none;
    ReportHistory later;
    later.entries = {entryOn("2026-11-30", 7000, Stage::BaseLoad)};
    const auto report = reportOf(std::vector{none, lift, later});
    ASSERT_EQ(report.lifts.size(), 1U);
    EXPECT_EQ(report.lifts[0].stageThen, Stage::BaseLoad);
    EXPECT_FALSE(report.lifts[0].riseMilli());
}

TEST(ProgressReport, LiftsStandByTheShareTheyRose)
{
    ReportHistory heavy;
    heavy.entries = {entryOn("2026-09-02", 10000, Stage::LoadBuild), entryOn("2026-11-02", 11000, Stage::LoadBuild)};
    ReportHistory light;
    light.entries = {entryOn("2026-09-02", 1000, Stage::LoadBuild), entryOn("2026-11-02", 1500, Stage::LoadBuild)};
    ReportHistory body;
    body.entries = {entryOn("2026-09-02", 0, Stage::LoadBuild), entryOn("2026-11-02", 500, Stage::LoadBuild)};
    EXPECT_EQ(reportOf(std::vector{heavy, body, light}).byRise(), (std::vector<std::size_t>{2, 0}));
}

TEST(ProgressReport, SessionsCountByWeekUnlessCalledOffInTime)
{
    const std::vector<Session> sessions{sessionOn("2026-11-20", SessionState::Recorded), sessionOn("2026-11-17", SessionState::Missed),
                                        sessionOn("2026-11-18", SessionState::CancelledInTime), sessionOn("2026-09-01", SessionState::Recorded),
                                        sessionOn("2026-09-03", SessionState::CancelledLate), sessionOn("2026-08-30", SessionState::Recorded),
                                        sessionOn("2026-11-21", SessionState::Planned)};
    const auto report = reportOf({}, sessions);
    EXPECT_EQ(report.weeks.size(), 12U);
    EXPECT_EQ(report.came(), 2);
    EXPECT_EQ(report.counted(), 4);
    EXPECT_EQ(report.weeks.front().came, (std::vector{true, false}));
    EXPECT_EQ(report.weeks.back().came, (std::vector{false, true}));
    EXPECT_FALSE(report.mostPain);
}

}  // namespace chalk::checkin
