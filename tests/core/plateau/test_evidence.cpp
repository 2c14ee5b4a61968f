#include "core/plateau/evidence.h"

#include "core/plateau/detector.h"
#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

#include <cmath>

namespace chalk::plateau {
namespace {

PlateauEvidence evidenceOf(const std::vector<LoggedExposure>& log, int days = 0)
{
    const auto rows = cleaned(log);
    const CheckDay check{log.back().date + days, 8, 7};
    return evidenceFor(judge(rows, check), rows, check);
}

std::vector<LoggedExposure> stalledLog()
{
    auto log = test::plainLog(20);
    for (std::size_t i = 16; i < log.size(); ++i) {
        test::setReps(log[i], {7, 7, 6});
    }
    return log;
}

TEST(Evidence, SaysWhatIsMissedAndWhatIsUsual)
{
    const auto evidence = evidenceOf(stalledLog());
    ASSERT_TRUE(evidence.missed);
    EXPECT_EQ(evidence.missed->misses, 4);
    EXPECT_EQ(evidence.missed->of, 4);
    EXPECT_DOUBLE_EQ(evidence.missed->usualShare, 0.05);
}

TEST(Evidence, SaysHowStrengthChangesWithItsRange)
{
    const auto log = stalledLog();
    const auto trend = judge(cleaned(log), {log.back().date, 8, 7}).trend;
    const auto change = evidenceOf(log).change;
    ASSERT_TRUE(change && trend);
    EXPECT_LT(change->percent, 0);
    EXPECT_NEAR(change->percent, 100 * (std::exp(trend->slope) - 1), 1e-9);
    EXPECT_NEAR(change->low, 100 * (std::exp(trend->slope - 1.645 * trend->error) - 1), 1e-9);
    EXPECT_NEAR(change->high, 100 * (std::exp(trend->slope + 1.645 * trend->error) - 1), 1e-9);
}

TEST(Evidence, ShowsTheLongTrendBesideIt)
{
    const auto log = stalledLog();
    const auto evidence = evidenceOf(log);
    ASSERT_TRUE(evidence.longChange);
    EXPECT_GT(evidence.longChange->percent, evidence.change->percent);
    EXPECT_FALSE(evidenceOf(test::plainLog(4)).longChange);
}

TEST(Evidence, SaysHowLongAgoTheLeverWasBest)
{
    const auto evidence = evidenceOf(stalledLog());
    EXPECT_EQ(evidence.best.daysSinceLever, 66);
    EXPECT_EQ(evidence.best.leverRow, 0U);
    EXPECT_EQ(evidence.stage, progression::Stage::LoadBuild);
}

TEST(Evidence, SaysWhatElseIsRuledOut)
{
    auto log = stalledLog();
    log[18].hasPain = true;
    log[12].isLighterWeek = true;
    log[2].isLighterWeek = true;
    const auto causes = evidenceOf(log).otherCauses;
    ASSERT_TRUE(causes);
    EXPECT_EQ(causes->attendedSessions, 7);
    EXPECT_EQ(causes->plannedSessions, 8);
    EXPECT_EQ(causes->painful, 1);
    EXPECT_EQ(causes->lighter, 1);
    EXPECT_EQ(causes->longestGapDays, 4);
    EXPECT_EQ(causes->ofVariation, 20);
}

TEST(Evidence, CountsWhatIsMissingForAJudgement)
{
    auto evidence = evidenceOf(test::plainLog(5));
    ASSERT_TRUE(evidence.shortage);
    EXPECT_EQ(evidence.shortage->valid, 5);
    EXPECT_EQ(evidence.shortage->used, 5);
    EXPECT_EQ(evidence.shortage->toCome, 3);
    EXPECT_FALSE(evidence.otherCauses);
    auto log = test::plainLog(8);
    for (std::size_t i = 0; i < 4; ++i) {
        log[i].load = test::loadOf(400);
    }
    evidence = evidenceOf(log);
    EXPECT_EQ(evidence.shortage->valid, 8);
    EXPECT_EQ(evidence.shortage->toCome, 2);
}

TEST(Evidence, SaysHowManyDaysTheTrendIsShortOf)
{
    auto log = test::plainLog(8);
    for (std::size_t i = 0; i < log.size(); ++i) {
        log[i].date = test::firstLoggedDay() + static_cast<int>(i);
    }
    const auto evidence = evidenceOf(log);
    EXPECT_EQ(evidence.shortage->toCome, 0);
    EXPECT_EQ(evidence.shortage->daysToCome, 7);
}

TEST(Evidence, SaysThatNothingIsThereYet)
{
    const auto evidence = evidenceFor(judge({}, {}), {}, {});
    ASSERT_TRUE(evidence.shortage);
    EXPECT_EQ(evidence.shortage->toCome, 8);
    EXPECT_FALSE(evidence.stage);
}

TEST(Evidence, SaysWhatAReturnWaitsFor)
{
    auto log = test::plainLog(20);
    log.back().date = log.back().date + 13;
    const auto evidence = evidenceOf(log);
    ASSERT_TRUE(evidence.pause);
    EXPECT_EQ(evidence.pause->days, 16);
    EXPECT_EQ(evidence.toComeAfterPause, 2);
    EXPECT_FALSE(evidenceOf(stalledLog()).pause);
}

TEST(Evidence, NamesTheRowsThatDidNotCount)
{
    auto log = stalledLog();
    log[3].load = test::loadOf(400);
    log[9].hasPain = true;
    const auto leftOut = evidenceOf(log).leftOut;
    ASSERT_EQ(leftOut.size(), 2U);
    EXPECT_EQ(leftOut[0].row, 3U);
    EXPECT_EQ(leftOut[0].date, log[3].date);
    EXPECT_EQ(leftOut[0].marks, std::vector{EntryMark::CheckLoad});
    EXPECT_EQ(leftOut[1].marks, std::vector{EntryMark::Pain});
}

}  // namespace
}  // namespace chalk::plateau
