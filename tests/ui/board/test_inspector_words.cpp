#include "ui/board/inspector_words.h"

#include "core/progression/event.h"
#include "tests/ui/board/client_fixture.h"
#include "ui/board/board_words.h"
#include "ui/board/evidence_words.h"

#include <gtest/gtest.h>

namespace chalk::ui::board {

using progression::Rule;

namespace {

LiftCase squatAfter(int sessions, int painAtEnd = 0)
{
    return test::trainedLift(
        {lifts::Pattern::Squat, "Back squat", lifts::Region::Lower, test::fixtureBar(), 75, sessions, 1, lifts::Measure::Reps, painAtEnd}, 1);
}

/// Adds an entry to the log as the day's own.
void enter(LiftCase& lift, base::Date day, progression::EventBody body)
{
    LogEntry entry{base::EventId(99'000 + static_cast<std::int64_t>(lift.log.size())), day, std::move(body), {}, {}};
    entry.rules = lift.machine.apply(day, entry.body);
    entry.after = lift.machine.prescriptionOn(day);
    lift.decided = entry.rules;
    lift.log.push_back(std::move(entry));
    settle(lift, day);
}

}  // namespace

TEST(InspectorWords, WhySaysTheFiguresOfTheRecordThatDecided)
{
    const LiftCase lift = squatAfter(7);
    ASSERT_TRUE(lift.decided.has(Rule::L1));
    const LogEntry* entry = decidingEntryOf(lift);
    ASSERT_EQ(entry, &lift.log.back());
    const auto& sets = std::get<progression::Exposure>(entry->body).sets;
    EXPECT_TRUE(whyTextOf(lift).startsWith(QStringLiteral("Every set at %1 kg had %2 or more in it with 2 left, so the load goes up to")
                                               .arg(QString::number(sets.front().load.centi() / 100.0))
                                               .arg(sets.front().amount)))
        << whyTextOf(lift).toStdString();
    EXPECT_TRUE(whyRecordTextOf(lift).contains(QStringLiteral("%1 × %2 at").arg(sets.size()).arg(sets.front().amount)))
        << whyRecordTextOf(lift).toStdString();
    EXPECT_TRUE(whyRecordTextOf(lift).endsWith(QStringLiteral("2 left, steady")));
}

TEST(InspectorWords, APlanSaysItsWeekMovesTheLoadAndAsksForNoEvidence)
{
    LiftCase lift = squatAfter(7);
    const base::Date monday = test::fixtureDay() - test::fixtureDay().weekday();
    const progression::BlockWork work{base::Sets(4), base::Reps(4), base::Reps(4), base::Milli(800), base::Seconds(180), 3};
    enter(lift, test::fixtureDay(),
          progression::Block{{{monday, false, {work}}, {monday + 7, true, {work}}, {monday + 14, false, {work}}}, base::Load::fromCenti(12000), false, {}});
    ASSERT_TRUE(lift.next.block);
    EXPECT_TRUE(reserveHtmlOf(lift).startsWith(QStringLiteral("<b>Plan week 1 of 3.</b> Stop each set with <b>3 reps"))) << reserveHtmlOf(lift).toStdString();
    std::vector<QString> moving;
    for (const common::Dial& dial : dialsOf(lift).dials) {
        if (dial.isMoving) {
            moving.push_back(dial.value);
        }
    }
    EXPECT_EQ(moving, (std::vector<QString>{loadTextOf(lift, lift.next.load)}));
    EXPECT_EQ(evidenceTitleOf(lift), QStringLiteral("The plan leads"));
    EXPECT_TRUE(evidenceLinesOf(lift).empty());
    EXPECT_TRUE(shortfallTextOf(lift).startsWith(QStringLiteral("Results move the single")));
    EXPECT_EQ(columnOf(lift).foot, QStringLiteral("1/3"));
    EXPECT_FALSE(columnOf(lift).need);
    EXPECT_TRUE(spokenOf(lift).contains(QStringLiteral("plan week 1 of 3")));
    settle(lift, monday + 8);
    EXPECT_EQ(columnOf(lift).foot, QStringLiteral("lighter"));
    for (const common::Dial& dial : dialsOf(lift).dials) {
        EXPECT_FALSE(dial.isMoving) << "nothing moves in a lighter week";
    }
}

TEST(InspectorWords, PainIsNamedWithItsDay)
{
    const LiftCase lift = squatAfter(8, 5);
    EXPECT_TRUE(whyTextOf(lift).startsWith(QStringLiteral("Pain was 5 of 10 on "))) << whyTextOf(lift).toStdString();
    EXPECT_TRUE(whyRecordTextOf(lift).endsWith(QStringLiteral("pain 5")));
}

TEST(InspectorWords, WhatWasOnlyKeptIsNotTheReason)
{
    LiftCase lift = squatAfter(8, 5);
    const LogEntry painful = lift.log.back();
    const progression::RuleList decided = lift.decided;
    enter(lift, test::fixtureDay(), painful.body);
    ASSERT_TRUE(lift.log.back().rules.has(Rule::P3));
    lift.decided = decided;  // the store keeps the last decision that said anything
    ASSERT_NE(decidingEntryOf(lift), nullptr);
    EXPECT_EQ(decidingEntryOf(lift)->id, painful.id);
}

TEST(InspectorWords, ALongBreakNamesTheLastSession)
{
    LiftCase lift = squatAfter(8);
    settle(lift, test::fixtureDay() + 20);
    ASSERT_TRUE(lift.next.rules.has(Rule::G1));
    const base::Date last = lift.log.back().date;
    EXPECT_TRUE(whyTextOf(lift).contains(QStringLiteral("%1 days ago").arg(test::fixtureDay() + 20 - last))) << whyTextOf(lift).toStdString();
}

TEST(InspectorWords, TheCoachsOwnWordsAreTheReason)
{
    LiftCase lift = squatAfter(8);
    progression::CoachSet set;
    set.load = base::Load::fromCenti(6000);
    set.reason = "slept badly";
    enter(lift, test::fixtureDay(), set);
    EXPECT_EQ(whyTextOf(lift), QStringLiteral("The coach set these numbers."));
    EXPECT_EQ(whyRecordTextOf(lift), QStringLiteral("Tue 24 Nov: set to 60 kg, “slept badly”"));
}

TEST(InspectorWords, ALiftWithoutAnyRecordHasNone)
{
    const LiftCase fresh = squatAfter(0);
    EXPECT_EQ(decidingEntryOf(fresh), nullptr);
    EXPECT_TRUE(whyRecordTextOf(fresh).isEmpty());
    EXPECT_FALSE(whyTextOf(fresh).isEmpty());
}

}  // namespace chalk::ui::board
