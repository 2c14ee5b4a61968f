#include "core/checkin/choices.h"

#include "core/checkin/lift_evidence.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/lift_story.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::checkin {

namespace {

using progression::Stage;
using test::kilos;
using test::LiftStory;

const base::Date kChoiceStart = *base::Date::parse("2026-09-07");

lifts::Exercise squatAt(std::string key, int rung)
{
    lifts::Exercise exercise;
    exercise.key = std::move(key);
    exercise.name = exercise.key;
    exercise.rung = rung;
    exercise.equipment = lifts::EquipmentKind::Barbell;
    exercise.cues = {"One", "Two"};
    return exercise;
}

/// box - back - front: three squats with a bar.
const lifts::Catalogue& threeSquats()
{
    static const lifts::Catalogue catalogue = [] {
        std::vector<lifts::Exercise> squats{squatAt("box", 1), squatAt("back_squat", 2), squatAt("front", 3)};
        squats[0].harder = {"back_squat"};
        squats[1].easier = {"box"};
        squats[1].harder = {"front"};
        squats[2].easier = {"back_squat"};
        return lifts::Catalogue::of(std::move(squats)).value();
    }();
    return catalogue;
}

NeighbourSwaps bothSwaps()
{
    const lifts::Equipment bar = test::barbellKit().equipment;
    const std::vector<lifts::EquipmentAtHand> atHand{{"Bar", lifts::EquipmentKind::Barbell, bar}};
    const lifts::Exercise& back = *threeSquats().find("back_squat");
    return neighbourSwaps(threeSquats(), back, lifts::swapOptions(threeSquats(), back, bar, atHand, {}));
}

std::vector<Choice> choicesOf(const LiftStory& story, const ClientSigns& client = {})
{
    const LiftRecord record{base::LiftId(1), lifts::Pattern::Squat, "Back squat", &story.fresh(), story.events()};
    const base::Date day = story.lastDay();
    return choicesFor(story.machine(), liftEvidenceOf(record, {day, 8, 8}), client, bothSwaps(), day);
}

std::vector<std::string> kindsOfChoices(const std::vector<Choice>& choices)
{
    std::vector<std::string> kinds;
    for (const Choice& choice : choices) {
        kinds.emplace_back(keyOf(choice.kind));
    }
    return kinds;
}

const Choice& choiceOf(const std::vector<Choice>& choices, ChoiceKind kind)
{
    return *std::find_if(choices.begin(), choices.end(), [kind](const Choice& choice) { return choice.kind == kind; });
}

}  // namespace

TEST(Choices, TheNeighboursAreTheNextEasierAndTheNextHarderOne)
{
    const NeighbourSwaps swaps = bothSwaps();
    ASSERT_TRUE(swaps.easier && swaps.harder);
    EXPECT_EQ(swaps.easier->exercise->key, "box");
    EXPECT_EQ(swaps.harder->exercise->key, "front");
    const auto none = neighbourSwaps(threeSquats(), *threeSquats().find("back_squat"), {});
    EXPECT_FALSE(none.easier || none.harder);
}

TEST(Choices, OneIsSuggestedAndStandsFirst)
{
    for (const LiftStory& story : {std::move(LiftStory(kChoiceStart).train(2, 5, 3)), std::move(LiftStory(kChoiceStart).train(2, 5, 3).painful(6)),
                                   std::move(LiftStory(kChoiceStart).train(2, 5, 3).train(8, 3, 2).train(12, -1, 2))}) {
        const auto choices = choicesOf(story);
        ASSERT_FALSE(choices.empty());
        EXPECT_TRUE(choices.front().isSuggested);
        EXPECT_NE(choices.front().why, ChoiceReason::None);
        EXPECT_EQ(std::count_if(choices.begin(), choices.end(), [](const Choice& choice) { return choice.isSuggested; }), 1);
    }
}

TEST(Choices, WhatComesNextIsWhatTheRulesGive)
{
    const LiftStory story = std::move(LiftStory(kChoiceStart).train(2, 5, 3).train(8, 3, 2));
    for (const Choice& choice : choicesOf(story)) {
        progression::LiftMachine machine = story.machine();
        if (choice.event) {
            progression::EventBody event = *choice.event;
            if (auto* set = std::get_if<progression::CoachSet>(&event)) {
                EXPECT_TRUE(set->reason.empty());
                set->reason = "a test";
            }
            ASSERT_FALSE(machine.faultOf(event));
            machine.apply(story.lastDay(), event);
        }
        if (choice.kind == ChoiceKind::ByHand) {
            EXPECT_FALSE(choice.next);
        } else {
            EXPECT_EQ(choice.next, machine.prescriptionOn(story.lastDay()));
        }
    }
}

TEST(Choices, MovingOnKeepsWhatWasReached)
{
    // From Load build with the load that was made last, on to Rep build.
    const LiftStory loads = std::move(LiftStory(kChoiceStart).train(2, 5, 3).train(4, 3, 2).train(1, -1, 0));
    ASSERT_EQ(loads.machine().state().stage, Stage::LoadBuild);
    const auto reps = choicesOf(loads);
    const Choice& toReps = choiceOf(reps, ChoiceKind::MoveOn);
    EXPECT_EQ(toReps.next->stage, Stage::RepBuild);
    EXPECT_EQ(toReps.next->load, *loads.machine().state().lastMade);
    // From Rep build with the best reps, on to Set build with three sets.
    const LiftStory rep = std::move(LiftStory(kChoiceStart).train(2, 5, 3).train(2, 3, 2).train(4, 0, 2));
    ASSERT_EQ(rep.machine().state().stage, Stage::RepBuild);
    const auto sets = choicesOf(rep);
    const Choice& toSets = choiceOf(sets, ChoiceKind::MoveOn);
    EXPECT_EQ(toSets.next->stage, Stage::SetBuild);
    EXPECT_EQ(toSets.next->repsLow, rep.machine().state().best);
    EXPECT_EQ(toSets.next->sets, base::Sets(3));
}

TEST(Choices, ALiftOnHoldCanBeScreenedSwappedOrLeft)
{
    const auto choices = choicesOf(std::move(LiftStory(kChoiceStart).train(2, 5, 3).painful(6)));
    EXPECT_EQ(kindsOfChoices(choices), (std::vector<std::string>{"rescreen", "hold", "swap", "swap", "by_hand"}));
    EXPECT_EQ(choices.front().why, ChoiceReason::OnHold);
    for (const Choice& choice : choices) {
        EXPECT_TRUE(!choice.next || choice.next->kind == progression::PrescriptionKind::Hold) << "no choice ends a hold";
    }
}

TEST(Choices, TheDirectionIsOpenAfterThreeMonthsUntilItIsSettled)
{
    const LiftStory story = std::move(LiftStory(kChoiceStart).train(4, 3, 2));
    ClientSigns client;
    client.firstLoad = story.lastDay() - 90;
    EXPECT_EQ(kindsOfChoices(choicesOf(story, client)).back(), "direction");
    client.isDirectionSettled = true;
    EXPECT_EQ(kindsOfChoices(choicesOf(story, client)).back(), "by_hand");
    client.isDirectionSettled = false;
    client.firstLoad = story.lastDay() - 89;
    EXPECT_EQ(kindsOfChoices(choicesOf(story, client)).back(), "by_hand");
}

TEST(Choices, ALiftThatFollowsAPlanKeepsToItOrOpensItAndDoesNotMoveOn)
{
    LiftStory story(kChoiceStart);
    story.train(4, 3, 2);
    const progression::BlockWork work{base::Sets(3), base::Reps(5), base::Reps(5), base::Milli(800), base::Seconds(180), 3};
    const base::Date monday = story.lastDay() - story.lastDay().weekday();
    story.take(progression::Block{{{monday, false, {work}}, {monday + 7, false, {work}}}, kilos(60), false, {}});
    ClientSigns client;
    client.isDirectionSettled = true;
    const auto choices = choicesOf(story, client);
    auto kinds = kindsOfChoices(choices);
    std::sort(kinds.begin(), kinds.end());
    EXPECT_EQ(kinds, (std::vector<std::string>{"by_hand", "direction", "hold", "lighter_week", "swap", "swap"}));
    EXPECT_TRUE(std::all_of(choices.begin(), choices.end(), [](const Choice& choice) { return choice.followsPlan; }));
    EXPECT_TRUE(choiceOf(choices, ChoiceKind::Hold).next->block);
    EXPECT_FALSE(choiceOf(choices, ChoiceKind::Swap).next->block) << "a swap ends the plan for the lift";
    EXPECT_FALSE(choiceOf(choicesOf(std::move(LiftStory(kChoiceStart).train(4, 3, 2))), ChoiceKind::Hold).followsPlan);
}

TEST(Choices, ALighterWeekSaysWhatComesInItAndAfterIt)
{
    const LiftStory story = std::move(LiftStory(kChoiceStart).train(2, 5, 3).train(8, 3, 2));
    const auto choices = choicesOf(story);
    const Choice& lighter = choiceOf(choices, ChoiceKind::LighterWeek);
    ASSERT_TRUE(lighter.next && lighter.later);
    EXPECT_TRUE(lighter.next->isLighter());
    EXPECT_LT(lighter.next->load, lighter.later->load);
    EXPECT_LT(lighter.next->sets, lighter.later->sets);
    EXPECT_EQ(lighter.later, story.machine().prescriptionOn(story.lastDay()));
}

TEST(Choices, ALearningLiftIsNotMovedOnButScreened)
{
    const LiftStory story = std::move(LiftStory(kChoiceStart, test::lowerLift()).take(progression::Rehearsal{}));
    EXPECT_EQ(kindsOfChoices(choicesOf(story)), (std::vector<std::string>{"hold", "swap", "swap", "by_hand", "rescreen"}));
}

}  // namespace chalk::checkin
