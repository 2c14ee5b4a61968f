#include "core/checkin/forecast.h"

#include "tests/support/lift_on_test.h"
#include "tests/support/lift_story.h"

#include <gtest/gtest.h>

#include <cmath>

namespace chalk::checkin {

namespace {

using progression::Stage;
using test::LiftStory;

const base::Date kForecastStart = *base::Date::parse("2026-09-07");

tl::expected<Forecast, ForecastLack> forecastFor(const LiftStory& story, base::Date day)
{
    const LiftRecord record{base::LiftId(1), lifts::Pattern::Squat, "Back squat", &story.fresh(), story.events()};
    return forecastOf(record, liftEvidenceOf(record, {day, 8, 8}), day);
}

/// Ten weeks of load build with two exposures each, all of them met.
LiftStory steadyStory()
{
    return std::move(LiftStory(kForecastStart).train(2, 5, 3).train(18, 0, 2));
}

ForecastLack lackFor(const LiftStory& story)
{
    const auto forecast = forecastFor(story, story.lastDay());
    return forecast ? ForecastLack{NoForecast::NoSingle, -1} : forecast.error();
}

}  // namespace

TEST(Forecast, GoesOnForTwelveWeeksFromTheNextMonday)
{
    const LiftStory story = steadyStory();
    const auto forecast = forecastFor(story, story.lastDay());
    ASSERT_TRUE(forecast);
    ASSERT_EQ(forecast->weeks.size(), 12U);
    for (int i = 0; i < 12; ++i) {
        EXPECT_EQ(forecast->weeks[static_cast<std::size_t>(i)].monday, story.lastDay() - story.lastDay().weekday() + 7 * (i + 1));
    }
}

TEST(Forecast, ThePaceIsTheClientsOwn)
{
    const LiftStory story = steadyStory();
    const auto forecast = forecastFor(story, story.lastDay());
    ASSERT_TRUE(forecast);
    // The first two, of 13 repetitions to failure, have no estimate: 18 in the 60 days since. Spans of four weeks hold eight; every target was met.
    EXPECT_NEAR(forecast->expected.exposuresPerWeek, 18 / (60.0 / 7), 1e-9);
    EXPECT_DOUBLE_EQ(forecast->slow.exposuresPerWeek, 2);
    EXPECT_DOUBLE_EQ(forecast->expected.madeShare, 1);
    EXPECT_LE(forecast->slow.weeklyPercent, forecast->expected.weeklyPercent);
    EXPECT_LE(forecast->expected.weeklyPercent, forecast->fast.weeklyPercent);
}

TEST(Forecast, TheRangeHoldsTheExpectedSingleAndStartsFromThePresentOne)
{
    const LiftStory story = steadyStory();
    const auto forecast = forecastFor(story, story.lastDay());
    ASSERT_TRUE(forecast);
    for (const ForecastWeek& week : forecast->weeks) {
        EXPECT_LE(week.slow.single, week.expected.single);
        EXPECT_LE(week.expected.single, week.fast.single);
    }
    // Compound growth: the Sunday of the twelfth week is so many days on.
    const ForecastWeek& last = forecast->weeks.back();
    const double weeks = (last.monday + 6 - story.lastDay()) / 7.0;
    EXPECT_NEAR(last.expected.single.kilograms(), forecast->single.kilograms() * std::pow(1 + forecast->expected.weeklyPercent / 100, weeks), 1e-6);
}

TEST(Forecast, LoadsAreThoseThatTheEquipmentGivesAndTheRulesAskFor)
{
    const LiftStory story = steadyStory();
    const auto forecast = forecastFor(story, story.lastDay());
    ASSERT_TRUE(forecast);
    for (const ForecastWeek& week : forecast->weeks) {
        for (const ForecastPoint& point : {week.slow, week.expected, week.fast}) {
            EXPECT_TRUE(story.machine().loads().canGive(point.load)) << point.load.centi();
            EXPECT_GE(point.stage, Stage::BaseLoad);
            EXPECT_GE(point.sets, base::Sets(2));
        }
    }
}

TEST(Forecast, IsTheSameEachTime)
{
    const LiftStory story = steadyStory();
    EXPECT_EQ(forecastFor(story, story.lastDay())->weeks, forecastFor(story, story.lastDay())->weeks);
}

TEST(Forecast, WhoMissesTargetsGetsNoFurtherThanWhoMeetsThem)
{
    // The same but for the last month, in which every other target is missed.
    LiftStory missing = std::move(LiftStory(kForecastStart).train(2, 5, 3).train(10, 0, 2));
    for (int i = 0; i < 4; ++i) {
        missing.train(1, 0, 2).train(1, -1, 0);
    }
    const auto worse = forecastFor(missing, missing.lastDay());
    const LiftStory story = steadyStory();
    const auto better = forecastFor(story, story.lastDay());
    ASSERT_TRUE(worse && better);
    EXPECT_LT(worse->expected.madeShare, better->expected.madeShare);
    EXPECT_LT(worse->slow.madeShare, worse->fast.madeShare);
    EXPECT_LT(worse->weeks.back().expected.single, better->weeks.back().expected.single);
}

TEST(Forecast, SaysWhatIsMissing)
{
    // Of five exposures two have no estimate.
    EXPECT_EQ(lackFor(std::move(LiftStory(kForecastStart).train(2, 5, 3).train(3, 3, 2))), (ForecastLack{NoForecast::FewExposures, 5}));
    EXPECT_EQ(lackFor(std::move(LiftStory(kForecastStart).train(4, 3, 2).painful(6))).why, NoForecast::OnHold);
    EXPECT_EQ(lackFor(std::move(LiftStory(kForecastStart, test::lowerLift()).take(progression::Rehearsal{}))).why, NoForecast::NotLoaded);
    const LiftStory story = steadyStory();
    EXPECT_EQ(forecastFor(story, story.lastDay() + 14).has_value(), true);
    EXPECT_EQ(forecastFor(story, story.lastDay() + 15).error().why, NoForecast::Away);
    progression::LiftSetup hold = LiftStory::loadedSetup();
    hold.kit.measure = lifts::Measure::Seconds;
    EXPECT_EQ(lackFor(std::move(LiftStory(kForecastStart, hold).train(10, 3, 2))).why, NoForecast::NoSingle);
    EXPECT_EQ(keyOf(NoForecast::FewExposures), "few_exposures");
}

TEST(Forecast, WeeksAreNeededAsWellAsExposures)
{
    // Nine exposures on end, a day apart.
    progression::LiftMachine machine = *progression::LiftMachine::create(LiftStory::loadedSetup());
    std::vector<progression::Event> events;
    for (int i = 0; i < 9; ++i) {
        events.push_back({kForecastStart + i, test::exposureOf({{40, 8, 2}, {40, 8, 2}})});
    }
    const LiftRecord record{base::LiftId(1), lifts::Pattern::Squat, "Back squat", &machine, events};
    const base::Date day = kForecastStart + 9;
    const auto forecast = forecastOf(record, liftEvidenceOf(record, {day, 8, 8}), day);
    ASSERT_FALSE(forecast);
    // Four weeks less ten days are 18, which at two a week are six exposures.
    EXPECT_EQ(forecast.error(), (ForecastLack{NoForecast::FewExposures, 6}));
}

}  // namespace chalk::checkin
