#include "core/direction/strength_block.h"

#include "core/lifts/repetition_chart.h"
#include "core/direction/plan_curves.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

using base::Milli;
using base::Reps;
using base::Sets;
using direction::LiftRole;
using direction::Wave;

direction::BlockPlan strengthPlan(Wave wave, int weeks, int exposures = 3)
{
    return direction::planFor({direction::Direction::Strength, wave, weeks, 3, true, base::Date::fromYmd(2026, 11, 30).value(),
                               {{base::LiftId(1), LiftRole::Main, exposures}, {base::LiftId(2), LiftRole::Assistance, 2}}});
}

}  // namespace

// A published trial of twelve weeks, three sets each (Rhea 2002, numbers from memory): linear 8, 6 and 4RM by blocks of four weeks, undulating
// 8, 6 and 4RM on the days of each week. As shares of the single by the printed chart 80, 85 and 90 per cent.
TEST(StrengthBlock, TheTrialsRepetitionMaximaAreItsOwn)
{
    const std::array<int, 3> maxima{8, 6, 4};
    const std::array<int, 3> shares{800, 850, 900};
    for (int week = 0; week < 12; ++week) {
        for (int day = 0; day < 3; ++day) {
            EXPECT_EQ(direction::trialRepMaximum(Wave::Linear, week, day).value(), maxima[static_cast<std::size_t>(week / 4)]);
            const Reps reps = direction::trialRepMaximum(Wave::Undulating, week, day);
            EXPECT_EQ(reps.value(), maxima[static_cast<std::size_t>(day)]);
            EXPECT_EQ(lifts::chartShare(reps), Milli(shares[static_cast<std::size_t>(day)]));
        }
    }
}

// Our shares go the same way as the trial's: 80, 85 and 90 per cent in its three parts, or on its three days.
TEST(StrengthBlock, ItsPartsBeginAtTheSharesOfTheTrial)
{
    const auto linear = strengthPlan(Wave::Linear, 12);
    EXPECT_EQ(linear.weeks[0].work[0][0].scheme.share, Milli(800));
    EXPECT_EQ(linear.weeks[4].work[0][0].scheme.share, Milli(850));
    EXPECT_EQ(linear.weeks[8].work[0][0].scheme.share, Milli(900));
    const auto undulating = strengthPlan(Wave::Undulating, 12);
    EXPECT_EQ(undulating.weeks[0].work[0][0].scheme.share, Milli(800));
    EXPECT_EQ(undulating.weeks[0].work[0][1].scheme.share, Milli(850));
    EXPECT_EQ(undulating.weeks[0].work[0][2].scheme.share, Milli(900));
}

TEST(StrengthBlock, EveryPlanLiesInThePublishedRangesAndTotals)
{
    for (const Wave wave : {Wave::Linear, Wave::Undulating}) {
        for (int weeks = direction::kLeastWeeks; weeks <= direction::kMostWeeks; ++weeks) {
            const auto plan = strengthPlan(wave, weeks);
            EXPECT_TRUE(departuresOf(plan).empty()) << keyOf(wave) << ' ' << weeks;
            for (const auto& week : plan.weeks) {
                if (week.kind != direction::WeekKind::Work) {
                    continue;
                }
                const auto total = direction::totalsOf(week.work[0][0]).front();
                EXPECT_TRUE(total.zone && total.isTotalInside && total.areSetsInside) << keyOf(wave) << ' ' << weeks << ' ' << week.monday.toString();
            }
        }
    }
}

TEST(StrengthBlock, TheThreeDaysAreHeavyLightAndMedium)
{
    const auto week = strengthPlan(Wave::Linear, 12).weeks[4].work[0];
    EXPECT_EQ(week[1].scheme.share, Milli(680)) << "80 per cent of 85";
    EXPECT_EQ(week[2].scheme.share, Milli(765)) << "90 per cent of 85";
}

TEST(StrengthBlock, TheLastExposureOfTheLastWeekIsTheTest)
{
    const auto plan = strengthPlan(Wave::Linear, 12, 2);
    const auto& last = plan.weeks.back();
    EXPECT_EQ(last.kind, direction::WeekKind::Test);
    EXPECT_FALSE(last.work[0][0].isTest);
    EXPECT_TRUE(last.work[0][1].isTest);
    EXPECT_LT(last.work[0][0].scheme.share, Milli(800)) << "light before it";
    EXPECT_FALSE(last.work[1][1].isTest) << "assistance is not tested";
}

TEST(StrengthBlock, AssistanceIsNotHeavierThanEightRepetitionsAllow)
{
    for (const auto& week : strengthPlan(Wave::Linear, 16).weeks) {
        for (const auto& work : week.work[1]) {
            EXPECT_LE(work.scheme.share, *lifts::chartShare(Reps(8)));
        }
    }
}

}  // namespace chalk::test
