#include "core/checkin/lift_trend.h"

#include <gtest/gtest.h>

namespace chalk::checkin {

namespace {

using progression::PrescriptionKind;
using progression::Stage;

const base::Date kTrendFrom = *base::Date::fromYmd(2026, 11, 2);  // a Monday
const DayRange kTrendRange{kTrendFrom, kTrendFrom + 27};

progression::Prescription workTarget(Stage stage, int sets, int low, int high, int rest)
{
    progression::Prescription target;
    target.kind = PrescriptionKind::Work;
    target.stage = stage;
    target.sets = base::Sets(sets);
    target.repsLow = base::Reps(low);
    target.repsHigh = base::Reps(high);
    target.rest = base::Seconds(rest);
    return target;
}

LiftDay dayOf(int offset, const progression::Prescription& after, std::optional<int> kilograms = {})
{
    LiftDay day{kTrendFrom + offset, {}, after, false, false};
    if (kilograms) {
        const auto mass = base::Mass::of(base::Load::fromCenti(*kilograms * 100), base::MassUnit::Kilogram);
        day.single = analysis::BestSingle{{mass, mass, mass, 7}, mass, base::Reps(1), true};
    }
    return day;
}

LiftTrend trendOfDays(std::vector<LiftDay> days)
{
    TrendedLift record;
    record.exerciseKey = "back_squat";
    record.days = std::move(days);
    return liftTrendOf(record, kTrendRange);
}

const progression::Prescription kSame = workTarget(Stage::LoadBuild, 3, 5, 8, 150);

}  // namespace

TEST(LiftTrend, TheBestSingleOfEachWeek)
{
    const LiftTrend trend = trendOfDays({dayOf(-1, kSame, 200), dayOf(0, kSame, 90), dayOf(3, kSame, 95), dayOf(6, kSame, 92), dayOf(7, kSame, 80)});
    ASSERT_EQ(trend.singles.size(), 2U) << "those from before the weeks are left out";
    EXPECT_EQ(trend.singles[0].date, kTrendFrom + 3);
    EXPECT_DOUBLE_EQ(trend.singles[0].median.kilograms(), 95);
    EXPECT_DOUBLE_EQ(trend.singles[1].median.kilograms(), 80) << "a later week may be lower";
    EXPECT_EQ(trend.estimates, 4);
    EXPECT_TRUE(trend.hasLine());
}

TEST(LiftTrend, ASwapBeginsAnew)
{
    LiftDay swap = dayOf(8, kSame);
    swap.isSwap = true;
    const LiftTrend trend = trendOfDays({dayOf(0, kSame, 90), dayOf(7, kSame, 92), swap, dayOf(9, kSame, 60)});
    ASSERT_EQ(trend.singles.size(), 1U);
    EXPECT_DOUBLE_EQ(trend.singles[0].median.kilograms(), 60);
    EXPECT_FALSE(trend.hasLine());
}

TEST(LiftTrend, TargetsAreSteps)
{
    const auto seven = workTarget(Stage::RepBuild, 3, 7, 7, 150);
    const LiftTrend trend = trendOfDays({dayOf(-10, kSame), dayOf(-5, seven), dayOf(2, seven), dayOf(5, workTarget(Stage::RestCut, 4, 8, 8, 135))});
    ASSERT_EQ(trend.targets.size(), 2U);
    EXPECT_EQ(trend.targets[0], (TargetStep{kTrendFrom, base::Sets(3), base::Reps(7), base::Reps(7), base::Seconds(150)})) << "what stood on the first day";
    EXPECT_EQ(trend.targets[1].from, kTrendFrom + 5);
    EXPECT_EQ(trend.targets[1].rest, base::Seconds(135));
    EXPECT_EQ(trend.stage, Stage::RestCut);
}

TEST(LiftTrend, TwoDecisionsOfADayAreOneStep)
{
    const auto eight = workTarget(Stage::RepBuild, 3, 8, 8, 150);
    const LiftTrend trend = trendOfDays({dayOf(1, kSame), dayOf(4, workTarget(Stage::RepBuild, 3, 7, 7, 150)), dayOf(4, eight)});
    ASSERT_EQ(trend.targets.size(), 2U);
    EXPECT_EQ(trend.targets[1].repsLow, base::Reps(8));
}

TEST(LiftTrend, WhatIsNoWorkIsNoStep)
{
    progression::Prescription hold;
    hold.kind = PrescriptionKind::Hold;
    hold.stage = Stage::LoadBuild;
    const LiftTrend trend = trendOfDays({dayOf(0, kSame), dayOf(3, hold), dayOf(6, kSame)});
    EXPECT_EQ(trend.targets.size(), 1U);
}

TEST(LiftTrend, KnowsSinceWhenThereIsALoad)
{
    progression::Prescription rehearse;
    const LiftTrend trend = trendOfDays({dayOf(-30, rehearse), dayOf(-20, workTarget(Stage::BaseLoad, 2, 8, 10, 120)), dayOf(2, kSame), dayOf(40, rehearse, 100)});
    EXPECT_EQ(trend.loadedSince, kTrendFrom - 20);
    EXPECT_EQ(trend.buildSince, kTrendFrom + 2);
    EXPECT_EQ(trend.stage, Stage::LoadBuild) << "what comes after the weeks is left out";
    EXPECT_FALSE(trendOfDays({dayOf(0, rehearse)}).loadedSince);
}

}  // namespace chalk::checkin
