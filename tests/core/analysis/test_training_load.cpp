#include "core/analysis/training_load.h"

#include "core/sessions/session_report.h"
#include "tests/support/table_file.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numeric>

namespace chalk::test {

namespace {

using analysis::acuteToChronic;
using analysis::Coupling;
using analysis::DayLoad;
using analysis::Deviation;
using analysis::monotonyOf;
using analysis::NoLoadFigure;
using analysis::strainOf;

constexpr base::Date kSunday = base::Date::fromDays(20'000);

std::vector<DayLoad> printedWeek()
{
    std::vector<DayLoad> sessions;
    for (const TableRow& row : readTable("reference/session_loads.csv")) {
        sessions.push_back({kSunday + numberIn(row, "day"), numberIn(row, "load")});
    }
    return sessions;
}

std::vector<double> loadsOf(const std::vector<DayLoad>& sessions)
{
    std::vector<double> loads;
    for (const DayLoad& session : sessions) {
        loads.push_back(session.load);
    }
    return loads;
}

double rounded(double value, double digits)
{
    return std::round(value * digits) / digits;
}

}  // namespace

// Foster C. et al. 2001, table 5: printed sum 3400, monotony 1.26, strain 4284 = 3400 × 1.26.
TEST(TrainingLoad, MonotonyIsThePrintedOneByDefault)
{
    const std::vector<double> loads = loadsOf(printedWeek());
    const double monotony = monotonyOf(loads).value();
    EXPECT_EQ(std::accumulate(loads.begin(), loads.end(), 0.0), 3400);
    EXPECT_EQ(rounded(monotony, 100), 1.26);
    EXPECT_NEAR(monotony, 1.2646, 5e-5);
    EXPECT_EQ(3400 * rounded(monotony, 100), 4284);
    EXPECT_NEAR(strainOf(loads).value(), 4299.7, 0.05) << "from the monotony as it is";
    EXPECT_NEAR(monotonyOf(loads, Deviation::Sample).value(), 1.1923, 5e-5);
}

TEST(TrainingLoad, DaysAddTheirSessions)
{
    const auto days = analysis::dailyLoads(printedWeek(), kSunday, 7);
    EXPECT_EQ(days, (std::vector<double>{940, 50, 1120, 180, 390, 50, 670}));
    EXPECT_NEAR(monotonyOf(days).value(), 1.2116, 5e-5);
    EXPECT_NEAR(monotonyOf(days, Deviation::Sample).value(), 1.1217, 5e-5);
    EXPECT_EQ(analysis::dailyLoads(printedWeek(), kSunday + 5, 3), (std::vector<double>{50, 670, 0}));
    EXPECT_TRUE(analysis::dailyLoads(printedWeek(), kSunday, -1).empty());
}

// The same table by its own rule, effort × minutes; three of its printed loads are not that.
TEST(TrainingLoad, EffortTimesMinutes)
{
    std::vector<DayLoad> sessions;
    int asPrinted = 0;
    for (const TableRow& row : readTable("reference/session_loads.csv")) {
        sessions::SessionReport report;
        report.effortTenths = 10 * numberIn(row, "effort");
        report.minutes = numberIn(row, "minutes");
        sessions.push_back({kSunday + numberIn(row, "day"), sessions::sessionLoad(report).value()});
        asPrinted += sessions.back().load == numberIn(row, "load") ? 1 : 0;
    }
    EXPECT_EQ(asPrinted, 6);
    const auto days = analysis::dailyLoads(sessions, kSunday, 7);
    EXPECT_EQ(std::accumulate(days.begin(), days.end(), 0.0), 3780);
    EXPECT_NEAR(monotonyOf(days).value(), 1.3069, 5e-5);
    EXPECT_NEAR(monotonyOf(days, Deviation::Sample).value(), 1.2100, 5e-5);
    EXPECT_NEAR(monotonyOf(loadsOf(sessions)).value(), 1.3730, 5e-5);
    EXPECT_NEAR(monotonyOf(loadsOf(sessions), Deviation::Sample).value(), 1.2945, 5e-5);
}

// By hand: mean 200; squares 260000, so the deviations are √(260000 / 7) = 192.72 and √(260000 / 6) = 208.17.
TEST(TrainingLoad, DaysOffCount)
{
    const std::vector<double> days{300, 0, 400, 0, 500, 200, 0};
    EXPECT_NEAR(monotonyOf(days).value(), 200 / std::sqrt(260'000.0 / 7), 1e-12);
    EXPECT_NEAR(strainOf(days).value(), 1452.8487, 5e-5);
    EXPECT_NEAR(strainOf(days, Deviation::Sample).value(), 1345.0765, 5e-5);
}

TEST(TrainingLoad, SaysWhyThereIsNoMonotony)
{
    const std::vector<double> same(7, 0.1 + 0.2);
    EXPECT_EQ(monotonyOf(same).error(), NoLoadFigure::AllTheSame);
    EXPECT_EQ(strainOf(same).error(), NoLoadFigure::AllTheSame);
    EXPECT_EQ(monotonyOf(std::vector<double>(7, 0.0)).error(), NoLoadFigure::NoLoad);
    EXPECT_EQ(monotonyOf(std::vector<double>{5}).error(), NoLoadFigure::TooFew);
}

// By hand: 21 days of 100, then 7 of 200: 200 / 125 and 200 / 100.
TEST(TrainingLoad, AcuteToChronic)
{
    std::vector<double> days(28, 100.0);
    EXPECT_EQ(acuteToChronic(days, Coupling::Coupled), 1);
    EXPECT_EQ(acuteToChronic(days, Coupling::Uncoupled), 1);
    std::fill(days.end() - 7, days.end(), 200.0);
    EXPECT_NEAR(acuteToChronic(days, Coupling::Coupled).value(), 1.6, 1e-15);
    EXPECT_NEAR(acuteToChronic(days, Coupling::Uncoupled).value(), 2.0, 1e-15);
    days.insert(days.begin(), 5000);
    EXPECT_NEAR(acuteToChronic(days, Coupling::Coupled).value(), 1.6, 1e-15) << "only the last 28 days count";
}

TEST(TrainingLoad, SaysWhyThereIsNoRatio)
{
    std::vector<double> days(28, 0.0);
    EXPECT_EQ(acuteToChronic(days, Coupling::Coupled).error(), NoLoadFigure::NoLoad);
    days.back() = 300;
    EXPECT_NEAR(acuteToChronic(days, Coupling::Coupled).value(), 4, 1e-15) << "the most that it can be";
    EXPECT_EQ(acuteToChronic(days, Coupling::Uncoupled).error(), NoLoadFigure::NoLoad);
    days.pop_back();
    EXPECT_EQ(acuteToChronic(days, Coupling::Coupled).error(), NoLoadFigure::TooFew);
}

RC_GTEST_PROP(TrainingLoadProperties, FiguresDoNotDependOnTheUnitOfLoad, ())
{
    const auto whole = *rc::gen::container<std::vector<int>>(28, rc::gen::inRange(0, 900));
    std::vector<double> loads(whole.begin(), whole.end());
    const auto monotony = monotonyOf(loads);
    const auto uncoupled = acuteToChronic(loads, Coupling::Uncoupled);
    const auto coupled = acuteToChronic(loads, Coupling::Coupled);
    RC_PRE(monotony && uncoupled && coupled);
    RC_ASSERT(*coupled <= 4 + 1e-12);
    RC_ASSERT(std::abs(1 / *coupled - (0.25 + 0.75 / *uncoupled)) < 1e-9 || *uncoupled == 0);
    RC_ASSERT(*monotony > monotonyOf(loads, Deviation::Sample).value());
    for (double& load : loads) {
        load *= 8;
    }
    RC_ASSERT(std::abs(monotonyOf(loads).value() - *monotony) < 1e-9);
    RC_ASSERT(std::abs(acuteToChronic(loads, Coupling::Uncoupled).value() - *uncoupled) < 1e-9);
}

}  // namespace chalk::test
