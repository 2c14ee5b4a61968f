#include "ui/common/direction_words.h"

#include <gtest/gtest.h>

namespace chalk::ui::common {

using direction::Direction;
using direction::FitFacts;
using direction::FitNote;
using direction::NoTest;

TEST(DirectionWords, APlanHasATitleAndItsDays)
{
    const auto monday = base::Date::fromYmd(2026, 11, 30).value();
    const direction::BlockPlan plan =
        direction::planFor({Direction::Strength, direction::Wave::Linear, 12, 3, true, monday, {{base::LiftId(1), direction::LiftRole::Main, 2}}});
    EXPECT_EQ(planTitle(plan).toStdString(), "Strength, 12 weeks");
    EXPECT_EQ(planDaysText(plan).toStdString(), "30 November 2026 – 21 February 2027");
}

TEST(DirectionWords, NotesNameTheDaysThatADirectionWants)
{
    EXPECT_EQ(fitNoteText(FitNote::FitsTheWeek, Direction::Strength, 3).toStdString(), "Fits 3 days a week");
    EXPECT_EQ(fitNoteText(FitNote::FewerThanWanted, Direction::Physique, 3).toStdString(), "Wants 4 days");
    EXPECT_TRUE(isGoodNote(FitNote::FitsTheWeek));
    EXPECT_FALSE(isGoodNote(FitNote::CareWithHeavyLoads));
}

TEST(DirectionWords, TheSuggestionIsExplainedByItsFacts)
{
    FitFacts facts;
    facts.sessionsAWeek = 3;
    facts.loadedLifts = 8;
    facts.liftsPastFirstCycle = 6;
    EXPECT_EQ(suggestionText(fitsOf(facts), facts).toStdString(),
              "3 days a week are enough for it, 6 of 8 loaded lifts are past their first cycle, and no caution speaks against heavy loads.");
    facts.needsCareWithHeavyLoads = true;
    EXPECT_EQ(suggestionText(fitsOf(facts), facts).toStdString(),
              "A caution asks for care with heavy loads. This keeps strength up at lighter ones.");
    facts.hasLiftOnHold = true;
    EXPECT_EQ(suggestionText(fitsOf(facts), facts).toStdString(), "None is suggested while a lift is on hold. Settle that first.");
}

TEST(DirectionWords, ADepartureNamesTheFigureTheRangeAndItsSource)
{
    direction::SetScheme scheme{base::Sets(4), base::Reps(4), base::Milli(825), base::Seconds(60), 2};
    const auto found = departuresOf(scheme, direction::Aim::Strength);
    ASSERT_FALSE(found.empty());
    EXPECT_TRUE(departureText(found.back()).startsWith(QStringLiteral("Rest 1:00; published 2:00–5:00 (")));
    scheme.rest = base::Seconds(180);
    scheme.share = base::Milli(655);
    EXPECT_TRUE(departureText(departuresOf(scheme, direction::Aim::Strength).front()).startsWith(QStringLiteral("Load 65.5 %; published ")));
}

TEST(DirectionWords, AZoneStandsBesideThePrintedOne)
{
    const std::vector<direction::ZoneWork> session{{base::Milli(820), base::Sets(4), base::Reps(4)}};
    EXPECT_EQ(zoneTotalText(direction::zoneTotals(session).front()).toStdString(), "16 reps at 80–89 %; printed 10–20, best 15");
    const std::vector<direction::ZoneWork> light{{base::Milli(500), base::Sets(2), base::Reps(10)}};
    EXPECT_EQ(zoneTotalText(direction::zoneTotals(light).front()).toStdString(), "20 reps where the table prints none");
}

TEST(DirectionWords, EveryReasonAndEndIsASentence)
{
    for (int i = 0; i <= static_cast<int>(NoTest::TooEarly); ++i) {
        EXPECT_TRUE(noTestText(static_cast<NoTest>(i)).endsWith(QLatin1Char('.')));
    }
    for (int i = 0; i <= static_cast<int>(direction::TestEnd::Stopped); ++i) {
        EXPECT_TRUE(testEndText(static_cast<direction::TestEnd>(i)).endsWith(QLatin1Char('.')));
    }
    EXPECT_EQ(testCautions().size(), 4);
    EXPECT_FALSE(heavyWorkCautions().isEmpty());
}

}  // namespace chalk::ui::common
