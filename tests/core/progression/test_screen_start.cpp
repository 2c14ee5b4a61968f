#include "core/progression/screen_start.h"

#include "tests/support/lift_on_test.h"
#include "tests/support/marked_screen.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::progression {

namespace {

using lifts::Pattern;
using screens::Mark;
using screens::PatternScreen;
using screens::PauseDepth;
using screens::PauseMark;
using screens::ScreenPain;
using test::markedScreen;

Policy usualPolicy()
{
    return Policy::defaultsFor(base::MassUnit::Kilogram);
}

PatternStart judged(const PatternScreen& screen)
{
    return startOf(screen, usualPolicy());
}

std::vector<std::string> keysInTheWay(const PatternStart& start)
{
    std::vector<std::string> keys;
    for (const screens::PointMark& point : start.pointsInTheWay) {
        keys.push_back(point.key);
    }
    return keys;
}

/// Any screen of a pattern at all, in range.
PatternScreen anyScreen()
{
    PatternScreen screen = markedScreen(*rc::gen::elementOf(std::vector<Pattern>(lifts::kPatterns.begin(), lifts::kPatterns.end())));
    for (screens::PointMark& point : screen.points) {
        point.mark = *rc::gen::weightedElement<Mark>({{8, Mark::Met}, {1, Mark::Partly}, {1, Mark::NotMet}, {1, Mark::NotJudged}});
    }
    for (screens::PauseTry& pause : screen.pauses) {
        pause.mark = *rc::gen::weightedElement<PauseMark>({{6, PauseMark::Held}, {1, PauseMark::Shaky}, {1, PauseMark::NotHeld}, {1, PauseMark::NotTried}});
        if (pause.mark != PauseMark::NotTried && *rc::gen::arbitrary<bool>()) {
            pause.heldMs = *rc::gen::inRange(800, 3000);
        }
    }
    if (*rc::gen::inRange(0, 4) == 0) {
        screen.reps = base::Reps(*rc::gen::inRange(3, 8));
    }
    if (*rc::gen::inRange(0, 4) == 0) {
        screen.pain = ScreenPain{"knee", *rc::gen::inRange(0, 11)};
    }
    return screen;
}

bool isAllMet(const PatternScreen& screen)
{
    return std::all_of(screen.points.begin(), screen.points.end(), [](const screens::PointMark& point) { return point.mark == Mark::Met; });
}

}  // namespace

TEST(ScreenStart, NothingMarkedIsNotScreened)
{
    PatternScreen screen;
    screen.points.push_back({"a", Mark::NotJudged});
    const PatternStart start = judged(screen);
    EXPECT_EQ(start.state, StartState::NotScreened);
    EXPECT_EQ(start.stage, Stage::Pattern);
    EXPECT_TRUE(start.rules.isEmpty());
}

TEST(ScreenStart, EverythingEarnedStartsAtBaseLoad)
{
    const PatternStart start = judged(markedScreen());
    EXPECT_EQ(start.state, StartState::Starts);
    EXPECT_EQ(start.stage, Stage::BaseLoad);
    EXPECT_EQ(test::namesOf(start.rules), "U-1 K-1");
    EXPECT_EQ(start.met, 6);
    EXPECT_FALSE(start.isProvisional);
}

TEST(ScreenStart, APointPartlyMetKeepsTheLiftInPattern)
{
    PatternScreen screen = markedScreen();
    screen.points[0].mark = Mark::Partly;
    screen.points[4].mark = Mark::NotMet;
    const PatternStart start = judged(screen);
    EXPECT_EQ(start.stage, Stage::Pattern);
    EXPECT_EQ(test::namesOf(start.rules), "U-2");
    EXPECT_EQ(keysInTheWay(start), (std::vector<std::string>{"a", "e"}));
    EXPECT_EQ(start.met, 4);
    EXPECT_EQ(start.partly, 1);
    EXPECT_EQ(start.notMet, 1);
    EXPECT_TRUE(start.pausesInTheWay.empty());
}

TEST(ScreenStart, AShakyPauseKeepsTheLiftInControl)
{
    PatternScreen screen = markedScreen();
    screen.pauseAt(PauseDepth::Bottom).mark = PauseMark::Shaky;
    const PatternStart start = judged(screen);
    EXPECT_EQ(start.stage, Stage::Control);
    EXPECT_EQ(test::namesOf(start.rules), "U-1 K-2");
    EXPECT_EQ(start.pausesInTheWay, std::vector{PauseDepth::Bottom});
    EXPECT_TRUE(start.isSteadinessInTheWay);
}

TEST(ScreenStart, AMeasuredPauseCountsByItsTime)
{
    PatternScreen screen = markedScreen();
    screen.pauseAt(PauseDepth::Middle).heldMs = 1000;
    EXPECT_EQ(judged(screen).stage, Stage::BaseLoad);
    screen.pauseAt(PauseDepth::Middle).heldMs = 999;
    const PatternStart start = judged(screen);
    EXPECT_EQ(start.stage, Stage::Control);
    EXPECT_EQ(start.pausesInTheWay, std::vector{PauseDepth::Middle});
    EXPECT_FALSE(start.isSteadinessInTheWay);
}

TEST(ScreenStart, FewerRepsThanAskedForKeepTheLiftInControl)
{
    PatternScreen screen = markedScreen();
    screen.reps = base::Reps(5);
    EXPECT_EQ(judged(screen).stage, Stage::BaseLoad);
    screen.reps = base::Reps(4);
    EXPECT_EQ(judged(screen).stage, Stage::Control);
    EXPECT_TRUE(judged(screen).areRepsInTheWay);
}

TEST(ScreenStart, WhatIsOpenIsNeverEarned)
{
    PatternScreen screen = markedScreen();
    screen.points[5].mark = Mark::NotJudged;
    PatternStart start = judged(screen);
    EXPECT_EQ(start.stage, Stage::Pattern);
    EXPECT_TRUE(start.isProvisional);
    EXPECT_TRUE(start.pointsInTheWay.empty()) << "not judged is not in the way";

    screen = markedScreen();
    screen.pauseAt(PauseDepth::Top).mark = PauseMark::NotTried;
    start = judged(screen);
    EXPECT_EQ(start.stage, Stage::Control);
    EXPECT_TRUE(start.isProvisional);
    EXPECT_TRUE(start.pausesInTheWay.empty());
}

TEST(ScreenStart, PainMeansNoStartingStage)
{
    PatternScreen screen = markedScreen();
    screen.pain = ScreenPain{"left knee", 1};
    EXPECT_EQ(judged(screen).state, StartState::OnHold);
    EXPECT_FALSE(judged(screen).isPainAtHoldLimit);
    EXPECT_EQ(test::namesOf(judged(screen).rules), "U-2");
    screen.pain->score = 4;
    EXPECT_EQ(judged(screen).state, StartState::OnHold);
    EXPECT_TRUE(judged(screen).isPainAtHoldLimit);
    EXPECT_EQ(test::namesOf(judged(screen).rules), "P-1");
    screen.pain->score.reset();
    EXPECT_TRUE(judged(screen).isPainAtHoldLimit) << "a pain without a number counts as the limit";
    screen.pain->score = 0;
    EXPECT_EQ(judged(screen).stage, Stage::BaseLoad);
}

TEST(ScreenStart, ALoadedPressNeedsThePushUp)
{
    EXPECT_TRUE(judged(markedScreen(Pattern::HorizontalPush)).unmetNeeds.empty());
    EXPECT_EQ(judged(markedScreen(Pattern::HorizontalPush, Mark::Partly)).unmetNeeds, std::vector{StartNeed::PushUpControl});
    PatternScreen screen = markedScreen(Pattern::HorizontalPush);
    screen.pauses[0].mark = PauseMark::NotHeld;
    EXPECT_TRUE(judged(screen).unmetNeeds.empty()) << "Control is enough";
    EXPECT_TRUE(judged(markedScreen(Pattern::Squat, Mark::Partly)).unmetNeeds.empty());
}

TEST(ScreenStart, OverheadWorkNeedsOverheadReach)
{
    PatternScreen screen = markedScreen(Pattern::VerticalPush);
    EXPECT_TRUE(judged(screen).unmetNeeds.empty());
    screen.points[2].mark = Mark::Partly;
    EXPECT_EQ(judged(screen).unmetNeeds, std::vector{StartNeed::OverheadReach});
}

TEST(StartChoices, AnotherStageNeedsAReasonThatIsKept)
{
    PatternScreen screen = markedScreen(Pattern::HorizontalPush);
    screen.points[0].mark = Mark::Partly;
    const PatternStart start = judged(screen);
    EXPECT_EQ(chosenStartOf(start, {Stage::Pattern, ""})->stage, Stage::Pattern);
    EXPECT_EQ(chosenStartOf(start, {Stage::BaseLoad, " "}).error(), ChoiceFault::ReasonMissing);
    const auto above = chosenStartOf(start, {Stage::BaseLoad, "Trained for years"});
    ASSERT_TRUE(above);
    EXPECT_TRUE(above->isAboveScreen);
    EXPECT_EQ(above->byRules, Stage::Pattern);
    EXPECT_EQ(above->reason, "Trained for years");
    EXPECT_EQ(above->against, std::vector{StartNeed::PushUpControl});
    EXPECT_TRUE(chosenStartOf(start, {Stage::Control, "Trained for years"})->against.empty()) << "no load, no need";
    EXPECT_EQ(chosenStartOf(start, {Stage::LoadBuild, "Trained for years"}).error(), ChoiceFault::NoStartStage);
}

TEST(StartChoices, BelowTheScreenNeedsAReasonToo)
{
    const PatternStart start = judged(markedScreen());
    EXPECT_EQ(chosenStartOf(start, {Stage::Control, ""}).error(), ChoiceFault::ReasonMissing);
    EXPECT_FALSE(chosenStartOf(start, {Stage::Control, "First week back"})->isAboveScreen);
}

TEST(StartChoices, AHoldIsNoMatterOfChoice)
{
    PatternScreen screen = markedScreen();
    screen.pain = ScreenPain{"hip", 6};
    EXPECT_EQ(chosenStartOf(judged(screen), {Stage::Pattern, "Wants to"}).error(), ChoiceFault::OnHold);
    screen.pain->score = 2;
    EXPECT_EQ(chosenStartOf(judged(screen), {Stage::BaseLoad, "Wants to"}).error(), ChoiceFault::OnHold);
    EXPECT_EQ(chosenStartOf(judged(screen), {Stage::Pattern, ""}).error(), ChoiceFault::ReasonMissing);
    EXPECT_TRUE(chosenStartOf(judged(screen), {Stage::Pattern, "An old bruise"}));
}

TEST(StartChoices, WhoWasNotScreenedNeedsAReason)
{
    const PatternStart start = judged(PatternScreen());
    EXPECT_EQ(chosenStartOf(start, {Stage::Pattern, ""}).error(), ChoiceFault::ReasonMissing);
    EXPECT_TRUE(chosenStartOf(start, {Stage::Control, "Screened by a colleague"})->isAboveScreen);
}

RC_GTEST_PROP(ScreenStartProperties, LoadIsNeverGivenUnearned, ())
{
    const PatternScreen screen = anyScreen();
    const PatternStart start = judged(screen);
    const bool isHeld = std::all_of(screen.pauses.begin(), screen.pauses.end(), [](const screens::PauseTry& pause) {
        return pause.mark == PauseMark::Held && pause.heldMs.value_or(1000) >= 1000;
    });
    const bool isEarned = isAllMet(screen) && isHeld && screen.reps.value_or(base::Reps(5)) >= base::Reps(5) && !screens::isPainful(screen);
    RC_ASSERT((start.state == StartState::Starts && start.stage == Stage::BaseLoad) == isEarned);
    RC_ASSERT(start.stage <= Stage::BaseLoad);
    RC_ASSERT(start.unmetNeeds.empty() || start.stage != Stage::BaseLoad);
}

/// The rehearsal that is written into the log leads a lift to the very stage that the screen promised.
RC_GTEST_PROP(ScreenStartProperties, TheLoggedRehearsalLeadsToTheSameStage, ())
{
    const PatternScreen screen = anyScreen();
    const PatternStart start = judged(screen);
    LiftMachine lift = LiftMachine::create(test::lowerLift()).value();
    lift.apply(base::Date(), rehearsalOf(screen, usualPolicy()));
    RC_ASSERT(start.state == StartState::NotScreened || lift.state().stage == start.stage);
    RC_ASSERT(lift.state().isOnHold == start.isPainAtHoldLimit);
}

}  // namespace chalk::progression
