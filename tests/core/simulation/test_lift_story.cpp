#include "core/simulation/lift_story.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::simulation {

namespace {

const base::Date kFirstDay = *base::Date::parse("2026-03-02");

/// Thirty sessions, three days apart, of a lift that starts with a load.
LiftStory storyOnTest()
{
    LiftStory story{lifts::Pattern::Squat, "back_squat", "bar", test::lowerLift(), {}};
    story.setup.startStage = progression::Stage::BaseLoad;
    for (int i = 0; i < 30; ++i) {
        story.sessions.push_back({kFirstDay + 3 * i, 540, "S" + std::to_string(i)});
    }
    return story;
}

const studio::DocumentEvent& entryOn(const studio::DocumentLift& lift, base::Date day)
{
    return *std::find_if(lift.events.begin(), lift.events.end(), [day](const auto& entry) { return entry.event.date == day; });
}

/// The rules that fired on a day.
progression::RuleList rulesOn(const studio::DocumentLift& lift, base::Date day)
{
    auto machine = progression::LiftMachine::create(lift.setup).value();
    progression::RuleList rules;
    for (const progression::Event& event : studio::countingEvents(lift)) {
        const auto fired = machine.apply(event.date, event.body);
        rules = event.date == day ? fired : rules;
    }
    return rules;
}

}  // namespace

TEST(LiftStory, TheSameSeedPlaysTheSameStory)
{
    const LiftStory story = storyOnTest();
    EXPECT_EQ(play(story, Talent(), 7), play(story, Talent(), 7));
    EXPECT_NE(play(story, Talent(), 7), play(story, Talent(), 8));
    EXPECT_EQ(play(story, Talent(), 7).events.size(), 30U);
}

TEST(LiftStory, TurnsHappenOnTheirDay)
{
    const base::Date day = kFirstDay + 30;
    for (const auto& [turn, rule] : {std::pair(Turn::OnlyWarmsUp, progression::Rule::V1), std::pair(Turn::IsScreened, progression::Rule::U3)}) {
        LiftStory story = storyOnTest();
        story.turns[day] = turn;
        EXPECT_TRUE(rulesOn(play(story, Talent(), 7), day).has(rule)) << progression::nameOf(rule);
    }
    LiftStory story = storyOnTest();
    story.turns[day] = Turn::LosesASet;
    story.turns[day + 3] = Turn::LosesASet;
    const auto lift = play(story, Talent(), 7);
    EXPECT_TRUE(rulesOn(lift, day).has(progression::Rule::C1));
    EXPECT_TRUE(rulesOn(lift, day + 3).has(progression::Rule::C2));
}

TEST(LiftStory, PainPutsALiftOnHoldAndATryIsOnlyKept)
{
    LiftStory story = storyOnTest();
    story.pains[kFirstDay + 30] = 5;
    story.turns[kFirstDay + 36] = Turn::TriesOnHold;
    const auto lift = play(story, Talent(), 7);
    EXPECT_TRUE(rulesOn(lift, kFirstDay + 30).has(progression::Rule::P1));
    EXPECT_TRUE(rulesOn(lift, kFirstDay + 36).has(progression::Rule::P3));
    EXPECT_EQ(lift.events.size(), 12U) << "eleven sessions up to the hold, and the try";
}

TEST(LiftStory, SlipsAreCorrectedAndDoublesTakenBack)
{
    LiftStory story = storyOnTest();
    story.slips = {kFirstDay + 30};
    story.doubles = {kFirstDay + 33};
    const auto lift = play(story, Talent(), 7);
    const auto plain = play(storyOnTest(), Talent(), 7);
    EXPECT_EQ(studio::countingEvents(lift), studio::countingEvents(plain)) << "what counts is the same";
    EXPECT_EQ(entryOn(lift, kFirstDay + 30).former.size(), 1U);
    EXPECT_EQ(lift.events.size(), plain.events.size() + 1);
    EXPECT_EQ(std::count_if(lift.events.begin(), lift.events.end(), [](const auto& entry) { return entry.isTakenBack; }), 1);
}

}  // namespace chalk::simulation
