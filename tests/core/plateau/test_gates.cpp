#include "core/plateau/gates.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

namespace chalk::plateau {
namespace {

constexpr int kLastDay = 66;  // of twenty plain exposures

PlateauReason gateAfter(const std::vector<LoggedExposure>& log, int days = 0, int planned = 8, int attended = 8)
{
    const auto rows = cleaned(log);
    return gateOf(rows, {rows.back().date + days, planned, attended});
}

std::vector<LoggedExposure> withGap(int exposuresAfter, int days)
{
    auto log = test::plainLog(20);
    const auto first = log.size() - static_cast<std::size_t>(exposuresAfter);
    const int shift = days - (log[first].date - log[first - 1].date);
    for (std::size_t i = first; i < log.size(); ++i) {
        log[i].date = log[i].date + shift;
    }
    return log;
}

TEST(Gates, NothingForbidsAPlainLog)
{
    EXPECT_EQ(test::plainLog(20).back().date, test::firstLoggedDay() + kLastDay);
    EXPECT_EQ(gateAfter(test::plainLog(20)), PlateauReason::None);
}

TEST(Gates, MoreThanTwoWeeksAgoIsAway)
{
    EXPECT_EQ(gateAfter(test::plainLog(20), 14), PlateauReason::None);
    EXPECT_EQ(gateAfter(test::plainLog(20), 15), PlateauReason::AwayNow);
}

TEST(Gates, ABreakWaitsForThreeExposures)
{
    EXPECT_EQ(gateAfter(withGap(1, 14)), PlateauReason::BackFromBreak);
    EXPECT_EQ(gateAfter(withGap(2, 14)), PlateauReason::BackFromBreak);
    EXPECT_EQ(gateAfter(withGap(3, 14)), PlateauReason::None);
    EXPECT_EQ(gateAfter(withGap(1, 13)), PlateauReason::None);
}

TEST(Gates, KnowsTheBreakAndWhatCameAfter)
{
    const auto rows = cleaned(withGap(2, 16));
    const auto found = recentBreakOf(rows);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->days, 16);
    EXPECT_EQ(found->exposures, 2);
    EXPECT_FALSE(recentBreakOf({}));
}

TEST(Gates, ALighterWeekIsNotJudgedIn)
{
    auto log = test::plainLog(20);
    log.back().isLighterWeek = true;
    EXPECT_EQ(gateAfter(log), PlateauReason::LighterWeek);
    log.back().isLighterWeek = false;
    log.back().targetLoad = log.back().load = test::loadOf(30);
    EXPECT_EQ(gateAfter(log), PlateauReason::LighterWeek);
    log.back() = test::plainExposure(kLastDay);
    log[18].isLighterWeek = true;
    EXPECT_EQ(gateAfter(log), PlateauReason::None);
}

TEST(Gates, TwoOfTheLastFiveWithPainAreTooMany)
{
    auto log = test::plainLog(20);
    log[19].hasPain = true;
    EXPECT_EQ(gateAfter(log), PlateauReason::None);
    log[14].hasPain = true;
    EXPECT_EQ(gateAfter(log), PlateauReason::None);
    log[15].hasPain = true;
    EXPECT_EQ(gateAfter(log), PlateauReason::Pain);
}

TEST(Gates, LessThanHalfOfThePlannedSessionsAreTooFew)
{
    EXPECT_EQ(gateAfter(test::plainLog(20), 0, 8, 4), PlateauReason::None);
    EXPECT_EQ(gateAfter(test::plainLog(20), 0, 9, 4), PlateauReason::Attendance);
    EXPECT_EQ(gateAfter(test::plainLog(20), 0, 0, 0), PlateauReason::None);
}

TEST(Gates, TheFirstReasonIsGiven)
{
    auto log = withGap(1, 20);
    log[19].isLighterWeek = log[19].hasPain = log[18].hasPain = true;
    EXPECT_EQ(gateAfter(log, 15, 8, 0), PlateauReason::AwayNow);
    EXPECT_EQ(gateAfter(log, 14, 8, 0), PlateauReason::BackFromBreak);
    log = test::plainLog(20);
    log[19].isLighterWeek = log[19].hasPain = log[18].hasPain = true;
    EXPECT_EQ(gateAfter(log, 0, 8, 0), PlateauReason::LighterWeek);
    log[19].isLighterWeek = false;
    EXPECT_EQ(gateAfter(log, 0, 8, 0), PlateauReason::Pain);
}

TEST(Gates, ALaterVariationIsNewForTenExposures)
{
    auto log = test::plainLog(20);
    EXPECT_EQ(shortageOf(cleaned(log)), PlateauReason::FewExposures);
    for (std::size_t i = 10; i < log.size(); ++i) {
        log[i].variation = "front squat";
    }
    const auto rows = cleaned(log);
    EXPECT_EQ(shortageOf(std::span(rows).subspan(10, 9)), PlateauReason::NewVariation);
    EXPECT_EQ(shortageOf(std::span(rows).subspan(10, 10)), PlateauReason::FewExposures);
}

}  // namespace
}  // namespace chalk::plateau
