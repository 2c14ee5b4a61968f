#include "core/checkin/suggestion.h"

#include <gtest/gtest.h>

namespace chalk::checkin {

namespace {

using plateau::PlateauVerdict;
using progression::Flag;
using progression::Stage;

const base::Date kSuggestionDay = *base::Date::parse("2026-11-25");

LiftEvidence liftJudged(PlateauVerdict verdict, Stage stage = Stage::LoadBuild)
{
    LiftEvidence lift;
    lift.stage = stage;
    lift.judgement.verdict = verdict;
    lift.evidence.stage = stage;
    lift.reserve = 2;
    return lift;
}

/// Came to everything, slept well, and nothing else has stalled.
ClientSigns wellClient()
{
    ClientSigns client;
    client.plannedSessions = 8;
    client.attendedSessions = 8;
    client.stalledLifts = 1;
    client.firstLoad = kSuggestionDay - 60;
    client.readiness = {{kSuggestionDay - 1, 4, 2, 2}, {kSuggestionDay - 8, 4, 2, 2}};
    return client;
}

Suggestion suggested(const LiftEvidence& lift, const ClientSigns& client = wellClient(), const SwapsAtHand& swaps = {true, true})
{
    return suggestionFor(lift, client, swaps, kSuggestionDay);
}

void addLighterWeek(LiftEvidence& lift, int daysAgo)
{
    lift.lighterWeeks.push_back({kSuggestionDay - daysAgo - 6, kSuggestionDay - daysAgo});
}

}  // namespace

TEST(Suggestion, PainComesFirst)
{
    LiftEvidence lift = liftJudged(PlateauVerdict::Regressing);
    lift.isOnHold = true;
    lift.flags.raise(Flag::Rescreen);
    EXPECT_EQ(suggested(lift), (Suggestion{ChoiceKind::Rescreen, ChoiceReason::OnHold}));
    lift.isOnHold = false;
    EXPECT_EQ(suggested(lift), (Suggestion{ChoiceKind::Rescreen, ChoiceReason::AfterLayoff}));
}

TEST(Suggestion, SixWeeksOfLearningAskForAScreenUnlessTheLiftWasLoadedBefore)
{
    LiftEvidence lift = liftJudged(PlateauVerdict::NotEnoughData, Stage::Control);
    lift.evidence.stage.reset();
    lift.stages = {{{kSuggestionDay - 42, kSuggestionDay}, Stage::Control, 1}};
    EXPECT_EQ(suggested(lift), (Suggestion{ChoiceKind::Rescreen, ChoiceReason::LearningForLong}));
    LiftEvidence younger = lift;
    younger.stages.front().days.from = kSuggestionDay - 41;
    EXPECT_EQ(suggested(younger), (Suggestion{ChoiceKind::Hold, ChoiceReason::OnCourse}));
    lift.evidence.stage = Stage::LoadBuild;
    EXPECT_EQ(suggested(lift), (Suggestion{ChoiceKind::Hold, ChoiceReason::OnCourse}));
}

TEST(Suggestion, APlanThatIsOverIsReviewedBeforeAnyStall)
{
    ClientSigns client = wellClient();
    client.isPlanToReview = true;
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Regressing), client), (Suggestion{ChoiceKind::Direction, ChoiceReason::PlanOver}));
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Progressing), client), (Suggestion{ChoiceKind::Direction, ChoiceReason::PlanOver}));
    LiftEvidence held = liftJudged(PlateauVerdict::Progressing);
    held.isOnHold = true;
    EXPECT_EQ(suggested(held, client), (Suggestion{ChoiceKind::Rescreen, ChoiceReason::OnHold})) << "but not before pain";
}

TEST(Suggestion, WithoutSignsOfAStallTheLiftIsCarriedOn)
{
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Progressing)), (Suggestion{ChoiceKind::Hold, ChoiceReason::OnCourse}));
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::NotEnoughData)), (Suggestion{ChoiceKind::Hold, ChoiceReason::TooLittle}));
}

TEST(Suggestion, WhoComesTooSeldomIsToComeFirst)
{
    ClientSigns client = wellClient();
    client.attendedSessions = 5;
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Regressing), client), (Suggestion{ChoiceKind::Hold, ChoiceReason::Attendance}));
    client.attendedSessions = 6;  // three of four
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Stalled), client).why, ChoiceReason::InReserve);
}

TEST(Suggestion, FallingStrengthAsksForALighterWeekThenForAnEasierExercise)
{
    LiftEvidence lift = liftJudged(PlateauVerdict::Regressing);
    EXPECT_EQ(suggested(lift), (Suggestion{ChoiceKind::LighterWeek, ChoiceReason::Falling}));
    addLighterWeek(lift, 42);
    EXPECT_EQ(suggested(lift), (Suggestion{ChoiceKind::Swap, ChoiceReason::Falling}));
    EXPECT_EQ(suggested(lift, wellClient(), {false, true}), (Suggestion{ChoiceKind::Hold, ChoiceReason::Falling}));
    lift.lighterWeeks.clear();
    addLighterWeek(lift, 43);
    EXPECT_EQ(suggested(lift).kind, ChoiceKind::LighterWeek);
}

TEST(Suggestion, TiredOrWithNothingInReserveALighterWeek)
{
    ClientSigns tired = wellClient();
    tired.readiness = {{kSuggestionDay - 2, 2, 2, 2}, {kSuggestionDay - 9, 3, 2, 2}};
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Stalled), tired), (Suggestion{ChoiceKind::LighterWeek, ChoiceReason::Tired}));
    tired.readiness.pop_back();  // one answer says too little
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Stalled), tired).why, ChoiceReason::InReserve);
    tired.readiness = {{kSuggestionDay - 2, 4, 2, 4}, {kSuggestionDay - 9, {}, 2, 3}, {kSuggestionDay - 14, 4, 5, 5}};
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Stalled), tired).why, ChoiceReason::Tired) << "stress of 3.5; the last answer is too old";
    LiftEvidence hard = liftJudged(PlateauVerdict::Stalled);
    hard.reserve = 1;
    EXPECT_EQ(suggested(hard), (Suggestion{ChoiceKind::LighterWeek, ChoiceReason::Hard}));
    addLighterWeek(hard, 10);
    EXPECT_EQ(suggested(hard), (Suggestion{ChoiceKind::MoveOn, ChoiceReason::Rested}));
}

TEST(Suggestion, TwoStallsAfterThreeMonthsAskForTheDirection)
{
    ClientSigns client = wellClient();
    client.stalledLifts = 2;
    client.firstLoad = kSuggestionDay - 90;
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Stalled), client), (Suggestion{ChoiceKind::Direction, ChoiceReason::ManyStalls}));
    client.isDirectionSettled = true;
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Stalled), client).kind, ChoiceKind::MoveOn);
    client.isDirectionSettled = false;
    client.firstLoad = kSuggestionDay - 89;
    EXPECT_EQ(suggested(liftJudged(PlateauVerdict::Stalled), client).kind, ChoiceKind::MoveOn);
}

TEST(Suggestion, WithRepsInReserveTheLiftMovesOn)
{
    LiftEvidence lift = liftJudged(PlateauVerdict::Stalled, Stage::RepBuild);
    EXPECT_EQ(suggested(lift), (Suggestion{ChoiceKind::MoveOn, ChoiceReason::InReserve}));
    lift.stage = Stage::RestCut;
    EXPECT_EQ(suggested(lift), (Suggestion{ChoiceKind::Swap, ChoiceReason::InReserve, true}));
    EXPECT_EQ(suggested(lift, wellClient(), {true, false}), (Suggestion{ChoiceKind::MoveOn, ChoiceReason::InReserve}));
    lift.reserve.reset();
    EXPECT_EQ(suggested(lift), (Suggestion{ChoiceKind::Hold, ChoiceReason::TooLittle}));
}

TEST(Suggestion, ALiftThatItsOwnRulesCallStalledIsStalled)
{
    LiftEvidence lift = liftJudged(PlateauVerdict::NotEnoughData);
    lift.flags.raise(Flag::Stalled);
    EXPECT_EQ(suggested(lift), (Suggestion{ChoiceKind::MoveOn, ChoiceReason::InReserve}));
}

}  // namespace chalk::checkin
