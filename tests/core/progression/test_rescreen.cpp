#include "core/progression/rescreen.h"

#include "tests/support/lift_on_test.h"
#include "tests/support/marked_screen.h"

#include <gtest/gtest.h>

namespace chalk::progression {

namespace {

using lifts::Pattern;
using screens::Mark;
using screens::PauseDepth;
using screens::PauseMark;

const base::Date kFirst = *base::Date::fromYmd(2026, 3, 2);
constexpr auto kSquatAt = static_cast<std::size_t>(Pattern::Squat);

PatternChange squatBetween(const screens::PatternScreen& before, const screens::PatternScreen& after)
{
    auto first = test::markedMovementScreen(kFirst);
    auto second = test::markedMovementScreen(kFirst + 56);
    first.of(Pattern::Squat) = before;
    second.of(Pattern::Squat) = after;
    return comparisonOf(first, second, Policy::defaultsFor(base::MassUnit::Kilogram))[kSquatAt];
}

std::optional<RescreenReason> reasonOn(int daysAfter, const std::vector<RescreenLift>& lifts = {})
{
    const auto due = rescreenDueOn(kFirst + daysAfter, kFirst, lifts);
    return due ? std::optional(due->reason) : std::nullopt;
}

}  // namespace

TEST(ScreenComparison, PointsAndStage)
{
    auto before = test::markedScreen();
    before.points[0].mark = Mark::NotMet;
    before.points[1].mark = Mark::Partly;
    before.points[3].mark = Mark::NotJudged;
    auto after = test::markedScreen();
    after.points[0].mark = Mark::Partly;
    after.points[2].mark = Mark::Partly;
    const PatternChange change = squatBetween(before, after);
    EXPECT_EQ(change.points[0], (PointChange{"a", Mark::NotMet, Mark::Partly, Change::Better}));
    EXPECT_EQ(change.points[1].change, Change::Better);
    EXPECT_EQ(change.points[2].change, Change::Worse);
    EXPECT_EQ(change.points[3].change, Change::NotComparable);
    EXPECT_EQ(change.points[4].change, Change::Same);
    EXPECT_EQ(change.stage, Change::Same);
    EXPECT_EQ(squatBetween(before, test::markedScreen()).stage, Change::Better);
    EXPECT_EQ(squatBetween(before, test::markedScreen()).after.stage, Stage::BaseLoad);
    EXPECT_EQ(squatBetween(test::markedScreen(), before).stage, Change::Worse);
}

TEST(ScreenComparison, PausesByMarkThenByTime)
{
    auto before = test::markedScreen();
    before.pauseAt(PauseDepth::Top) = {PauseMark::Shaky, 2000};
    before.pauseAt(PauseDepth::Middle) = {PauseMark::Held, 1500};
    before.pauseAt(PauseDepth::Bottom) = {PauseMark::Held, 1500};
    auto after = test::markedScreen();
    after.pauseAt(PauseDepth::Top) = {PauseMark::Held, 1000};
    after.pauseAt(PauseDepth::Middle) = {PauseMark::Held, 1499};
    const PatternChange change = squatBetween(before, after);
    EXPECT_EQ(change.pauses[0].change, Change::Better) << "held is better than shaky, however long";
    EXPECT_EQ(change.pauses[1].change, Change::Worse);
    EXPECT_EQ(change.pauses[2].change, Change::Same) << "no time to compare";
}

TEST(ScreenComparison, PainIsWorseThanAnyStage)
{
    auto painful = test::markedScreen();
    painful.pain = screens::ScreenPain{"knee", 5};
    const PatternChange change = squatBetween(test::markedScreen(lifts::Pattern::Squat, Mark::NotMet), painful);
    EXPECT_EQ(change.stage, Change::Worse);
    EXPECT_EQ(change.pain, Change::Worse);
    EXPECT_EQ(squatBetween(painful, test::markedScreen()).pain, Change::Better);
}

TEST(ScreenComparison, WhatOneLeftOutIsNotCompared)
{
    const PatternChange change = squatBetween(screens::PatternScreen(), test::markedScreen());
    EXPECT_EQ(change.stage, Change::NotComparable);
    EXPECT_EQ(change.pain, Change::NotComparable);
    EXPECT_EQ(change.points.front().change, Change::NotComparable);
}

TEST(ScreenComparison, PointsOfAnOlderCatalogueAreKept)
{
    auto before = test::markedScreen();
    before.points.front().key = "old";
    const PatternChange change = squatBetween(before, test::markedScreen());
    ASSERT_EQ(change.points.size(), 7U);
    EXPECT_EQ(change.points.back(), (PointChange{"old", Mark::Met, Mark::NotJudged, Change::NotComparable}));
}

TEST(Rescreens, DueAfterEightWeeks)
{
    EXPECT_EQ(reasonOn(55), std::nullopt);
    EXPECT_EQ(reasonOn(56), RescreenReason::EightWeeks);
    EXPECT_EQ(rescreenDueOn(kFirst + 60, kFirst, {})->since, kFirst + 56);
    EXPECT_EQ(rescreenDueOn(kFirst, std::nullopt, {})->reason, RescreenReason::NeverScreened);
}

TEST(Rescreens, DueAfterALayoffThatTheMachineFlags)
{
    test::LiftOnTest lift;
    lift.rehearse();
    lift.work(2, 20, 8, 5);
    lift.pass(56);
    const auto before = lift.due().flags;
    EXPECT_TRUE(before.has(Flag::Rescreen));
    const std::vector<RescreenLift> lifts{{Pattern::Squat, before.has(Flag::Rescreen), {}}, {Pattern::Hinge, false, {}}};
    const auto due = rescreenDueOn(kFirst + 1, kFirst, lifts);
    ASSERT_TRUE(due);
    EXPECT_EQ(due->reason, RescreenReason::Layoff);
    EXPECT_EQ(due->patterns, std::vector{Pattern::Squat});
}

TEST(Rescreens, DueAfterAHoldUntilTheNextScreen)
{
    const std::vector<RescreenLift> lifts{{Pattern::Squat, false, kFirst + 9}, {Pattern::Hinge, false, kFirst + 4}, {Pattern::SingleLeg, false, kFirst}};
    EXPECT_EQ(reasonOn(3, lifts), std::nullopt);
    EXPECT_EQ(reasonOn(4, lifts), RescreenReason::Hold);
    const auto due = rescreenDueOn(kFirst + 10, kFirst, lifts);
    EXPECT_EQ(due->since, kFirst + 4);
    EXPECT_EQ(due->patterns, (std::vector{Pattern::Squat, Pattern::Hinge}));
    EXPECT_FALSE(rescreenDueOn(kFirst + 10, kFirst + 10, lifts));
}

TEST(Rescreens, TheLastReleaseIsThatOfARealHold)
{
    LiftMachine machine = LiftMachine::create(test::lowerLift()).value();
    Rehearsal painful = test::goodRehearsal();
    painful.pain = 6;
    const std::vector<Event> events{{kFirst, painful}, {kFirst + 2, Release{"seen"}}, {kFirst + 5, Release{"nothing to release"}}};
    const auto decisions = replay(machine, events).value();
    EXPECT_EQ(lastReleaseOf(decisions), kFirst + 2);
    EXPECT_EQ(lastReleaseOf({}), std::nullopt);
}

}  // namespace chalk::progression
