#include "core/checkin/trends.h"

#include <gtest/gtest.h>

namespace chalk::checkin {

namespace {

using lifts::Pattern;
using progression::Stage;
using sessions::SessionState;

const base::Date kTrendDay = *base::Date::fromYmd(2026, 11, 25);     // a Wednesday
const base::Date kTrendMonday = *base::Date::fromYmd(2026, 11, 23);

analysis::DatedWork trendWork(int offset, Pattern pattern, int kilogramReps)
{
    analysis::DatedWork done;
    done.date = kTrendMonday + offset;
    done.pattern = pattern;
    done.work.volume = base::Mass::of(base::Load::fromCenti(kilogramReps * 100), base::MassUnit::Kilogram);
    done.work.reps = 15;
    done.work.sets = 3;
    return done;
}

sessions::Session trendSession(int offset, SessionState state)
{
    sessions::Session session;
    session.date = kTrendMonday + offset;
    session.state = state;
    return session;
}

/// A lift that was told `stage` so many days before the Monday.
TrendedLift recordIn(Stage stage, int singles = 0, int daysBefore = 14)
{
    TrendedLift record;
    LiftDay day;
    day.date = kTrendMonday - daysBefore;
    day.after.stage = stage;
    day.after.kind = progression::isLoaded(stage) ? progression::PrescriptionKind::Work : progression::PrescriptionKind::Rehearse;
    if (singles > 0) {
        day.single = analysis::BestSingle{};
    }
    record.days.assign(static_cast<std::size_t>(std::max(1, singles)), day);
    return record;
}

double kilogramsIn(const TrendWeek& week, Pattern pattern)
{
    return week.work[static_cast<std::size_t>(pattern)].volume.kilograms();
}

Trends trendsOfLifts(const std::vector<TrendedLift>& lifts)
{
    TrendsRequest request;
    request.day = kTrendDay;
    request.lifts = lifts;
    return trendsOf(request);
}

}  // namespace

TEST(Trends, AreOfWholeWeeks)
{
    EXPECT_EQ(trendDays(kTrendDay, 12), (DayRange{*base::Date::fromYmd(2026, 9, 7), *base::Date::fromYmd(2026, 11, 29)}));
    EXPECT_EQ(trendDays(kTrendMonday, 4), (DayRange{*base::Date::fromYmd(2026, 11, 2), *base::Date::fromYmd(2026, 11, 29)}));
    EXPECT_EQ(trendDays(kTrendMonday - 1, 4).to, kTrendMonday - 1);
}

// Σ sets × reps × load, Haff G.G. 2010, Professional Strength and Conditioning 19:31-40: here sums of what such exposures give.
TEST(Trends, VolumeStandsByPatternAndWeek)
{
    const std::vector<analysis::DatedWork> work{trendWork(-22, Pattern::Squat, 9000), trendWork(-21, Pattern::Squat, 1200), trendWork(-15, Pattern::Squat, 300),
                                                trendWork(-15, Pattern::CarryBrace, 40), trendWork(0, Pattern::Hinge, 1575), trendWork(7, Pattern::Hinge, 9000)};
    TrendsRequest request;
    request.day = kTrendDay;
    request.weeks = 4;
    request.work = work;
    const Trends trends = trendsOf(request);
    ASSERT_EQ(trends.weeks.size(), 4U);
    EXPECT_EQ(trends.weeks[0].monday, kTrendMonday - 21);
    EXPECT_DOUBLE_EQ(kilogramsIn(trends.weeks[0], Pattern::Squat), 1500);
    EXPECT_DOUBLE_EQ(kilogramsIn(trends.weeks[0], Pattern::CarryBrace), 40);
    EXPECT_DOUBLE_EQ(trends.weeks[0].together().volume.kilograms(), 1540);
    EXPECT_DOUBLE_EQ(trends.weeks[1].together().volume.kilograms(), 0);
    EXPECT_DOUBLE_EQ(kilogramsIn(trends.weeks[3], Pattern::Hinge), 1575);
    EXPECT_TRUE(trends.weeks[2].isOver);
    EXPECT_FALSE(trends.weeks[3].isOver);
    EXPECT_FALSE(trends.volumeGap) << "two weeks with load";
}

TEST(Trends, ALighterWeekStandsWhereItLiesMostly)
{
    TrendedLift squat = recordIn(Stage::LoadBuild);
    squat.days.push_back(squat.days.front());
    squat.days.back().date = kTrendMonday - 4;  // a Thursday: from there four days are of that week, three of the next
    squat.days.back().isLighter = true;
    TrendedLift hinge = squat;
    hinge.days.back().date = kTrendMonday - 3;
    const Trends trends = trendsOfLifts({squat, hinge});
    EXPECT_EQ(trends.weeks[10].lighterLifts, 1);
    EXPECT_EQ(trends.weeks[11].lighterLifts, 1);
    EXPECT_EQ(trends.weeks[9].lighterLifts, 0);
}

TEST(Trends, AttendanceStandsByWeek)
{
    const std::vector<sessions::Session> sessions{trendSession(-7, SessionState::Recorded), trendSession(-5, SessionState::Missed),
                                                  trendSession(-3, SessionState::CancelledInTime), trendSession(0, SessionState::Recorded),
                                                  trendSession(4, SessionState::Planned), trendSession(-200, SessionState::Recorded)};
    TrendsRequest request;
    request.day = kTrendDay;
    request.sessions = sessions;
    const Trends trends = trendsOf(request);
    EXPECT_EQ(trends.weeks[10].attendance, (analysis::Attendance{1, 1, 0, 1}));
    EXPECT_EQ(trends.weeks[11].attendance, (analysis::Attendance{1, 0, 0, 0}));
}

TEST(Trends, SayWhatTheBarsWaitFor)
{
    EXPECT_EQ(trendsOfLifts({}).volumeGap, (FigureGap{0, 2}));
    const std::vector<analysis::DatedWork> work{trendWork(0, Pattern::Squat, 900), trendWork(2, Pattern::Squat, 900)};
    TrendsRequest request;
    request.day = kTrendDay;
    request.work = work;
    EXPECT_EQ(trendsOf(request).volumeGap, (FigureGap{1, 2}));
}

TEST(Trends, SayWhatTheLinesWaitFor)
{
    const Trends trends = trendsOfLifts({recordIn(Stage::Control), recordIn(Stage::BaseLoad, 1), recordIn(Stage::BaseLoad, 2)});
    EXPECT_EQ(trends.singlesGap, (FigureGap{2, 3, std::nullopt, 2})) << "the lift that is nearest to a line";
    EXPECT_EQ(trends.targetsGap, (FigureGap{0, 1, std::nullopt, 0}));
    EXPECT_TRUE(trends.isLearning);
    EXPECT_FALSE(trendsOfLifts({recordIn(Stage::BaseLoad, 3)}).singlesGap);
    EXPECT_FALSE(trendsOfLifts({recordIn(Stage::BaseLoad), recordIn(Stage::LoadBuild)}).targetsGap);
    EXPECT_FALSE(trendsOfLifts({recordIn(Stage::LoadBuild)}).isLearning);
    EXPECT_FALSE(trendsOfLifts({}).isLearning) << "nothing was screened";
    EXPECT_FALSE(trendsOfLifts({}).singlesGap->lift);
}

TEST(Trends, SayWhenMonotonyStarts)
{
    const auto gapOf = [](const std::vector<SessionEffort>& efforts) {
        TrendsRequest request;
        request.day = kTrendDay;
        request.efforts = efforts;
        return trendsOf(request).monotonyGap;
    };
    EXPECT_EQ(gapOf({}), (FigureGap{0, 2, kTrendMonday + 14})) << "this week and the next";
    EXPECT_EQ(gapOf({{kTrendMonday, std::nullopt}}), (FigureGap{0, 2, kTrendMonday + 21})) << "this week is lost";
    EXPECT_EQ(gapOf({{kTrendMonday - 7, 300}}), (FigureGap{1, 2, kTrendMonday + 7}));
    EXPECT_FALSE(gapOf({{kTrendMonday - 7, 300}, {kTrendMonday - 14, 300}}));
}

TEST(Trends, HaveAMonotonyAndARatio)
{
    std::vector<SessionEffort> efforts;
    for (int week = 1; week <= 4; ++week) {
        efforts.push_back({kTrendMonday - 7 * week, 300});
        efforts.push_back({kTrendMonday - 7 * week + 3, week == 1 ? 300 : 0});
    }
    TrendsRequest request;
    request.day = kTrendDay;
    request.efforts = efforts;
    const Trends trends = trendsOf(request);
    EXPECT_EQ(trends.weeks[10].load, weekLoadOf(efforts, kTrendMonday - 7, kTrendDay));
    EXPECT_TRUE(trends.weeks[10].load.monotony);
    EXPECT_EQ(trends.weeks[11].load.why, NoMonotony::NotOver);
    ASSERT_TRUE(trends.ratio);
    EXPECT_NEAR(trends.ratio->uncoupled, 2, 1e-12) << "600 over 300";
    EXPECT_NEAR(trends.ratio->coupled, 600.0 / 375, 1e-12) << "600 over the mean of 300, 300, 300 and 600";
}

TEST(StudioTrends, SumEverybodyAndKeepThemApart)
{
    ClientWork tove{base::ClientId(1), "Tove", {trendWork(-21, Pattern::Squat, 1000), trendWork(-14, Pattern::Squat, 1000), trendWork(-7, Pattern::Hinge, 800)}, {}, {}, kTrendMonday - 300};
    tove.sessions = {trendSession(-7, SessionState::Recorded), trendSession(-6, SessionState::Missed)};
    tove.efforts = {{kTrendMonday - 7, 300}, {kTrendMonday - 6, std::nullopt}};
    ClientWork ferro{base::ClientId(2), "Ferro", {trendWork(-7, Pattern::Squat, 500)}, {}, {}, kTrendMonday - 7};
    for (int day = 0; day < 7; ++day) {
        ferro.efforts.push_back({kTrendMonday - 7 + day, day == 6 ? 100 : 300});
    }
    const StudioTrends trends = studioTrendsOf(std::vector{tove, ferro}, kTrendDay, 4);
    ASSERT_EQ(trends.weeks.size(), 4U);
    EXPECT_DOUBLE_EQ(trends.weeks[2].together().volume.kilograms(), 1300);
    EXPECT_EQ(trends.weeks[2].attendance, (analysis::Attendance{1, 1, 0, 0}));
    EXPECT_EQ(trends.weeks[2].load.load, 2200);
    EXPECT_EQ(trends.weeks[2].load.unrated, 1);
    EXPECT_FALSE(trends.weeks[2].load.monotony) << "of everybody together there is none";
    ASSERT_EQ(trends.clients.size(), 2U);
    EXPECT_EQ(trends.clients[0].load, (LoadTrend{LoadTrend::Kind::Change, -20, true})) << "800 against 1000; the first of three weeks is left out";
    EXPECT_DOUBLE_EQ(trends.clients[0].volume.kilograms(), 2800);
    EXPECT_FALSE(trends.clients[0].isTooMuchAlike());
    EXPECT_EQ(trends.clients[1].load.kind, LoadTrend::Kind::New);
    // By hand: mean 1900 / 7 = 271.43; deviation √((6 × 300² + 100²) / 7 - 271.43²) = 69.99; 3.88.
    EXPECT_NEAR(trends.clients[1].monotony.value(), 3.878, 5e-4);
    EXPECT_TRUE(trends.clients[1].isTooMuchAlike());
    EXPECT_FALSE(trends.volumeGap);
    EXPECT_TRUE(studioTrendsOf({}, kTrendDay, 4).volumeGap);
}

}  // namespace chalk::checkin
