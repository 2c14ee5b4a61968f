#include "core/screens/pattern_screen.h"

#include <gtest/gtest.h>

namespace chalk::screens {

namespace {

/// Six points with one mark, nothing else.
PatternScreen screenWith(Mark mark)
{
    PatternScreen screen;
    for (const char* key : {"a", "b", "c", "d", "e", "f"}) {
        screen.points.push_back({key, mark});
    }
    return screen;
}

std::string faultFieldAfter(void (*spoil)(PatternScreen&))
{
    PatternScreen screen = screenWith(Mark::Met);
    spoil(screen);
    const auto fault = faultOf(screen);
    return fault ? fault->field : "none";
}

}  // namespace

TEST(PatternScreens, WhatIsOpenIsWhatStillDecides)
{
    PatternScreen screen = screenWith(Mark::NotJudged);
    EXPECT_FALSE(isStarted(screen));
    EXPECT_EQ(openMarksOf(screen).points.size(), 6U);
    EXPECT_TRUE(openMarksOf(screen).pauses.empty()) << "pauses decide nothing before the points are met";

    screen = screenWith(Mark::Met);
    screen.pauseAt(PauseDepth::Middle).mark = PauseMark::NotHeld;
    EXPECT_TRUE(isStarted(screen));
    EXPECT_EQ(openMarksOf(screen).pauses, (std::vector{PauseDepth::Top, PauseDepth::Bottom}));

    screen.points[3].mark = Mark::Partly;
    EXPECT_TRUE(openMarksOf(screen).isNothing());
}

TEST(PatternScreens, PainEndsAPattern)
{
    PatternScreen screen = screenWith(Mark::NotJudged);
    screen.pain = ScreenPain{"left knee", std::nullopt};
    EXPECT_TRUE(isPainful(screen));
    EXPECT_TRUE(openMarksOf(screen).points.empty());
    EXPECT_TRUE(openMarksOf(screen).isPainScoreOpen);
    screen.pain->score = 2;
    EXPECT_TRUE(openMarksOf(screen).isNothing());
    screen.pain->score = 0;
    EXPECT_FALSE(isPainful(screen));
    EXPECT_EQ(openMarksOf(screen).points.size(), 6U);
}

TEST(PatternScreens, ANoteAloneIsNoStart)
{
    PatternScreen screen = screenWith(Mark::NotJudged);
    screen.note = "Wants shoes off";
    EXPECT_FALSE(isStarted(screen));
    screen.reps = base::Reps(3);
    EXPECT_TRUE(isStarted(screen));
}

TEST(PatternScreens, AShakyPauseMakesTheMovementShaky)
{
    PatternScreen screen = screenWith(Mark::Met);
    EXPECT_EQ(steadinessOf(screen), MovementSteadiness::Steady);
    screen.pauseAt(PauseDepth::Bottom).mark = PauseMark::Shaky;
    EXPECT_EQ(steadinessOf(screen), MovementSteadiness::Shaky);
    screen.steadiness = MovementSteadiness::Steady;
    EXPECT_EQ(steadinessOf(screen), MovementSteadiness::Shaky);
    screen.steadiness = MovementSteadiness::Lost;
    EXPECT_EQ(steadinessOf(screen), MovementSteadiness::Lost);
}

TEST(PatternScreens, AScreenNamesItsOpenPatterns)
{
    MovementScreen screen;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        screen.of(pattern) = screenWith(Mark::NotMet);
        screen.of(pattern).pattern = pattern;
    }
    EXPECT_TRUE(openPatternsOf(screen).empty());
    screen.of(lifts::Pattern::Hinge).points[5].mark = Mark::NotJudged;
    EXPECT_EQ(openPatternsOf(screen), std::vector{lifts::Pattern::Hinge});
}

TEST(PatternScreens, FaultsNameTheField)
{
    EXPECT_EQ(faultFieldAfter([](PatternScreen&) {}), "none");
    EXPECT_EQ(faultFieldAfter([](PatternScreen& s) { s.points[2].key = "b"; }), "points[1].key");
    EXPECT_EQ(faultFieldAfter([](PatternScreen& s) { s.points[2].key.clear(); }), "points[2].key");
    EXPECT_EQ(faultFieldAfter([](PatternScreen& s) { s.pauses[0] = {PauseMark::Held, -1}; }), "pauses.top");
    EXPECT_EQ(faultFieldAfter([](PatternScreen& s) { s.pauses[1] = {PauseMark::Held, kMostPauseMs + 1}; }), "pauses.middle");
    EXPECT_EQ(faultFieldAfter([](PatternScreen& s) { s.pauses[2] = {PauseMark::NotTried, 900}; }), "pauses.bottom");
    EXPECT_EQ(faultFieldAfter([](PatternScreen& s) { s.reps = base::Reps(kMostScreenReps + 1); }), "reps");
    EXPECT_EQ(faultFieldAfter([](PatternScreen& s) { s.pain = ScreenPain{"hip", 11}; }), "pain.score");
    EXPECT_EQ(faultFieldAfter([](PatternScreen& s) { s.pain = ScreenPain{"hip", 10}; }), "none");
}

TEST(PatternScreens, KeysReadBack)
{
    for (const Mark mark : {Mark::NotJudged, Mark::Met, Mark::Partly, Mark::NotMet}) {
        EXPECT_EQ(markOf(keyOf(mark)), mark);
    }
    for (const PauseMark mark : {PauseMark::NotTried, PauseMark::Held, PauseMark::Shaky, PauseMark::NotHeld}) {
        EXPECT_EQ(pauseMarkOf(keyOf(mark)), mark);
    }
    EXPECT_EQ(movementSteadinessOf("lost"), MovementSteadiness::Lost);
    EXPECT_FALSE(markOf("perhaps"));
}

}  // namespace chalk::screens
