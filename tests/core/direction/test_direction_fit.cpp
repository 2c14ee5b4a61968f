#include "core/direction/direction_fit.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::test {

namespace {

using direction::Direction;
using direction::FitFacts;
using direction::FitNote;

FitFacts readyClient()
{
    return {3, 8, 6, 2, false, false};
}

std::optional<Direction> suggestedFor(const FitFacts& facts)
{
    std::optional<Direction> suggested;
    for (const auto& fit : fitsOf(facts)) {
        if (fit.isSuggested) {
            EXPECT_FALSE(suggested.has_value()) << "one at most";
            suggested = fit.direction;
        }
    }
    return suggested;
}

bool says(const direction::DirectionFit& fit, FitNote note)
{
    return std::find(fit.notes.begin(), fit.notes.end(), note) != fit.notes.end();
}

}  // namespace

TEST(DirectionFit, ThreeSteadyDaysAndLiftsGoneRoundAreForStrength)
{
    EXPECT_EQ(suggestedFor(readyClient()), Direction::Strength);
    const auto fits = fitsOf(readyClient());
    EXPECT_TRUE(says(fits[0], FitNote::FitsTheWeek));
    EXPECT_TRUE(says(fits[1], FitNote::FewerThanWanted)) << "physique does well with four";
    EXPECT_TRUE(says(fits[2], FitNote::FitsTheWeek));
}

TEST(DirectionFit, ACautionAboutHeavyLoadsSpeaksAgainstStrengthAlone)
{
    FitFacts facts = readyClient();
    facts.needsCareWithHeavyLoads = true;
    EXPECT_EQ(suggestedFor(facts), Direction::Movement);
    EXPECT_TRUE(says(fitsOf(facts)[0], FitNote::CareWithHeavyLoads));
    EXPECT_FALSE(says(fitsOf(facts)[1], FitNote::CareWithHeavyLoads));
    facts.sessionsAWeek = 4;
    EXPECT_EQ(suggestedFor(facts), Direction::Physique);
}

TEST(DirectionFit, FewSessionsLeaveMovement)
{
    FitFacts facts = readyClient();
    facts.sessionsAWeek = 2;
    EXPECT_EQ(suggestedFor(facts), Direction::Movement);
    facts.sessionsAWeek = 1;
    EXPECT_FALSE(suggestedFor(facts).has_value());
    EXPECT_TRUE(says(fitsOf(facts)[0], FitNote::TooFewSessions));
}

TEST(DirectionFit, NothingIsSuggestedWhileTheFirstCycleHasMoreToGiveOrALiftIsOnHold)
{
    FitFacts facts = readyClient();
    facts.liftsPastFirstCycle = 3;
    EXPECT_FALSE(suggestedFor(facts).has_value());
    EXPECT_TRUE(says(fitsOf(facts)[0], FitNote::FewLiftsGoneRound));
    facts.liftsPastFirstCycle = 4;
    EXPECT_EQ(suggestedFor(facts), Direction::Strength) << "half is enough";
    facts.hasLiftOnHold = true;
    EXPECT_FALSE(suggestedFor(facts).has_value());
    EXPECT_FALSE(suggestedFor({3, 0, 0, 0, false, false}).has_value()) << "nobody without loaded lifts";
}

}  // namespace chalk::test
