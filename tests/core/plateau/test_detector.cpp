#include "core/plateau/detector.h"

#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

#include <map>

namespace chalk::plateau {
namespace {

using test::TableRow;

/// A real number of the reference: the same within 1e-9, or missing on both sides.
template <class Number>
void expectReal(const TableRow& wanted, const std::string& column, const std::optional<Number>& number, const std::string& place)
{
    const std::string& cell = wanted.at(column);
    ASSERT_EQ(number.has_value(), !cell.empty() && cell != "nan") << place << ' ' << column;
    if (number) {
        EXPECT_NEAR(static_cast<double>(*number), std::stod(cell), 1e-9) << place << ' ' << column;
    }
}

template <class Part, class Number>
std::optional<Number> memberOf(const std::optional<Part>& part, Number Part::*member)
{
    return part ? std::optional<Number>((*part).*member) : std::nullopt;
}

void expectTrace(const TableRow& wanted, const Judgement& judgement, const std::string& place)
{
    EXPECT_EQ(keyOf(judgement.verdict), wanted.at("verdict")) << place;
    EXPECT_EQ(keyOf(judgement.reason), wanted.at("reason")) << place;
    EXPECT_EQ(judgement.isWatched, wanted.at("watch") == "1") << place;
    EXPECT_EQ(judgement.strength ? keyOf(*judgement.strength) : "", wanted.at("strength")) << place;
    expectReal(wanted, "n", memberOf(judgement.trend, &TrendReading::exposures), place);
    expectReal(wanted, "slope", memberOf(judgement.trend, &TrendReading::slope), place);
    expectReal(wanted, "se", memberOf(judgement.trend, &TrendReading::error), place);
    expectReal(wanted, "swr", memberOf(judgement.trend, &TrendReading::smallestGain), place);
    expectReal(wanted, "zA", memberOf(judgement.trend, &TrendReading::z), place);
    expectReal(wanted, "misses", memberOf(judgement.lever, &LeverReading::misses), place);
    expectReal(wanted, "base", memberOf(judgement.lever, &LeverReading::usualShare), place);
    expectReal(wanted, "zB", memberOf(judgement.lever, &LeverReading::z), place);
    expectReal(wanted, "Z", judgement.z, place);
    expectReal(wanted, "p_low", memberOf(judgement.confidence, &Confidence::isSlow), place);
    expectReal(wanted, "p_stop", memberOf(judgement.confidence, &Confidence::isStopped), place);
    const auto since = judgement.best ? std::optional(judgement.best->daysSinceLever.value_or(999)) : std::nullopt;
    expectReal(wanted, "days_since_lever_best", since, place);
    expectReal(wanted, "days_since_index_best", judgement.best ? judgement.best->daysSinceIndex : std::nullopt, place);
}

TEST(Detector, JudgesAsTheReferenceDoes)
{
    std::map<test::LiftName, std::vector<CleanExposure>> lifts;
    for (const auto& [lift, log] : test::simulatedLogs()) {
        lifts[lift] = cleaned(log);
    }
    const auto checks = test::readTable("plateau/checkins.csv");
    const auto trace = test::readTable("plateau/trace.csv");
    ASSERT_EQ(checks.size(), trace.size());
    for (std::size_t i = 0; i < checks.size(); ++i) {
        const std::string place = checks[i].at("client") + " " + checks[i].at("lift") + " " + checks[i].at("check_date");
        ASSERT_EQ(checks[i].at("check_date"), trace[i].at("check_date")) << place;
        ASSERT_EQ(test::liftIn(checks[i]), test::liftIn(trace[i])) << place;
        const CheckDay day{*base::Date::parse(checks[i].at("check_date")), test::numberIn(checks[i], "planned_28d"),
                           test::numberIn(checks[i], "attended_28d")};
        expectTrace(trace[i], judge(lifts[test::liftIn(checks[i])], day), place);
    }
}

TEST(Detector, SaysNothingBeforeTheFirstExposure)
{
    const auto rows = cleaned(test::plainLog(4));
    EXPECT_EQ(judge({}, {}).reason, PlateauReason::NoExposures);
    EXPECT_EQ(judge(rows, {test::firstLoggedDay() - 1, 8, 8}).reason, PlateauReason::NoExposures);
    EXPECT_EQ(judge(rows, {test::firstLoggedDay(), 8, 8}).reason, PlateauReason::FewExposures);
}

TEST(Detector, ExposuresOfTheDayCountAndLaterOnesDoNot)
{
    const auto rows = cleaned(test::plainLog(20));
    EXPECT_EQ(segmentOn(rows, test::firstLoggedDay() + 7).size(), 3U);
    EXPECT_EQ(segmentOn(rows, test::firstLoggedDay() + 6).size(), 2U);
    EXPECT_TRUE(segmentOn(rows, test::firstLoggedDay() - 1).empty());
}

TEST(Detector, OnlyTheLastVariationIsJudged)
{
    auto log = test::plainLog(20);
    log[18].variation = log[19].variation = "front squat";
    const auto rows = cleaned(log);
    EXPECT_EQ(segmentOn(rows, log[19].date).size(), 2U);
    EXPECT_EQ(segmentOn(rows, log[17].date).size(), 18U);
    EXPECT_EQ(judge(rows, {log[19].date, 8, 8}).reason, PlateauReason::NewVariation);
}

/// Twenty exposures of which the last four miss: the index goes down a little and the targets are missed.
std::vector<LoggedExposure> missingLog()
{
    auto log = test::plainLog(20);
    for (std::size_t i = 16; i < log.size(); ++i) {
        test::setReps(log[i], {7, 7, 6});
    }
    return log;
}

TEST(Detector, MissesBesideAGoodRecordAreAStall)
{
    const auto log = missingLog();
    const auto judgement = judge(cleaned(log), {log.back().date, 8, 8});
    EXPECT_NE(judgement.verdict, PlateauVerdict::Progressing);
    EXPECT_EQ(judgement.lever->misses, 4);
    EXPECT_EQ(judgement.lever->z, 3);
    EXPECT_GE(*judgement.z, 2.5);
    EXPECT_EQ(judgement.strength, PlateauStrength::Strong);
    EXPECT_EQ(judgement.reason, PlateauReason::None);
}

TEST(Detector, ANewBestOutweighsTheWitnesses)
{
    auto log = missingLog();
    log[17] = test::plainExposure(log[17].date - test::firstLoggedDay());
    log[17].targetLoad = log[17].load = base::Load::fromCenti(4100);
    const auto rows = cleaned(log);
    EXPECT_EQ(judge(rows, {log[17].date + 10, 8, 8}).reason, PlateauReason::NewBest);
    EXPECT_EQ(judge(rows, {log[17].date + 10, 8, 8}).verdict, PlateauVerdict::Progressing);
    EXPECT_EQ(judge(rows, {log[17].date + 11, 8, 8}).reason, PlateauReason::None);
}

TEST(Detector, AnotherDayInTheSameStateSaysTheSame)
{
    const auto log = missingLog();
    const auto whole = judge(cleaned(log), {log[15].date, 8, 8});
    const auto cut = judge(cleaned(std::span(log).first(16)), {log[15].date, 8, 8});
    EXPECT_EQ(whole.verdict, cut.verdict);
    EXPECT_EQ(whole.z, cut.z);
}

}  // namespace
}  // namespace chalk::plateau
