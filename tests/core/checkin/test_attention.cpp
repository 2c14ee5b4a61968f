#include "core/checkin/attention.h"

#include <gtest/gtest.h>

// Every threshold is tried on its border and one short of it. The three of the direction are those of the rules of progression;
// the others are common practice.

namespace chalk::checkin {

namespace {

using clients::ClearanceState;
using progression::Flag;
using progression::Stage;
using sessions::SessionState;

base::Date attentionDay()
{
    return *base::Date::parse("2026-11-24");
}

LiftFacts liftIn(Stage stage, lifts::Pattern pattern = lifts::Pattern::Squat)
{
    LiftFacts lift;
    lift.pattern = pattern;
    lift.exerciseKey = "some_lift";
    lift.stage = stage;
    lift.stageSince = attentionDay() - 10;
    return lift;
}

LiftFacts stalledLift(lifts::Pattern pattern, int daysInStage)
{
    LiftFacts lift = liftIn(Stage::RepBuild, pattern);
    lift.flags.raise(Flag::Stalled);
    lift.stageSince = attentionDay() - daysInStage;
    return lift;
}

/// Somebody about whom there is nothing to say.
ClientFacts quietClient()
{
    ClientFacts facts;
    facts.startedOn = attentionDay() - 100;
    facts.isBooked = true;
    facts.lastCame = attentionDay() - 2;
    facts.lastSessions = {SessionState::Recorded, SessionState::Recorded, SessionState::Recorded, SessionState::Recorded};
    facts.lifts = {liftIn(Stage::LoadBuild)};
    return facts;
}

template <class Reason>
std::optional<Reason> reasonIn(const std::vector<AttentionReason>& reasons)
{
    for (const AttentionReason& reason : reasons) {
        if (const auto* found = std::get_if<Reason>(&reason)) {
            return *found;
        }
    }
    return std::nullopt;
}

template <class Reason>
std::optional<Reason> reasonFor(const ClientFacts& facts)
{
    return reasonIn<Reason>(attentionFor(facts, attentionDay()));
}

ClientFacts withClearance(ClearanceState state, std::optional<base::Date> asked = {}, std::optional<base::Date> until = {})
{
    ClientFacts facts = quietClient();
    facts.clearance = {state, "two answers", asked, {}, until, {}};
    return facts;
}

ClientFacts withSessions(std::vector<SessionState> states)
{
    ClientFacts facts = quietClient();
    facts.lastSessions = std::move(states);
    return facts;
}

}  // namespace

TEST(Attention, NothingIsWrong)
{
    EXPECT_TRUE(attentionFor(quietClient(), attentionDay()).empty());
    EXPECT_TRUE(attentionFor(ClientFacts{}, attentionDay()).empty());
}

TEST(Attention, ClearanceSaysWhatItWaitsFor)
{
    using Cause = ClearanceDue::Cause;
    const auto asked = attentionDay() - 6;
    EXPECT_EQ(reasonFor<ClearanceDue>(withClearance(ClearanceState::Recommended)), (ClearanceDue{Cause::NotAsked, {}, "two answers"}));
    EXPECT_EQ(reasonFor<ClearanceDue>(withClearance(ClearanceState::Recommended, asked)), (ClearanceDue{Cause::Waiting, asked, "two answers"}));
    EXPECT_EQ(reasonFor<ClearanceDue>(withClearance(ClearanceState::StopAndSeek, asked))->cause, Cause::StopAndSeek);
    ClientFacts reminded = withClearance(ClearanceState::Recommended, asked);
    reminded.clearance.remindOn = attentionDay() + 1;
    EXPECT_EQ(reasonFor<ClearanceDue>(reminded)->remindOn, attentionDay() + 1);
    EXPECT_FALSE(reasonFor<ClearanceDue>(withClearance(ClearanceState::NotNeeded)));
    EXPECT_FALSE(reasonFor<ClearanceDue>(withClearance(ClearanceState::Granted))) << "granted for good";
}

TEST(Attention, ClearanceThatEndsIsAnnounced)
{
    using Cause = ClearanceDue::Cause;
    const struct {
        int daysLeft;
        std::optional<Cause> cause;
    } rows[] = {{15, {}}, {14, Cause::RunsOut}, {0, Cause::RunsOut}, {-1, Cause::RanOut}};
    for (const auto& row : rows) {
        const auto until = attentionDay() + row.daysLeft;
        const auto reason = reasonFor<ClearanceDue>(withClearance(ClearanceState::Granted, attentionDay() - 300, until));
        ASSERT_EQ(reason.has_value(), row.cause.has_value()) << row.daysLeft;
        if (reason) {
            EXPECT_EQ(reason->cause, *row.cause) << row.daysLeft;
            EXPECT_EQ(reason->day, until);
        }
    }
}

TEST(Attention, TheMostPainfulHoldComesFirst)
{
    ClientFacts facts = quietClient();
    for (const auto pattern : {lifts::Pattern::Squat, lifts::Pattern::VerticalPush, lifts::Pattern::Hinge}) {
        LiftFacts lift = liftIn(Stage::BaseLoad, pattern);
        lift.isOnHold = pattern != lifts::Pattern::Hinge;
        facts.lifts.push_back(lift);
    }
    facts.lifts[1].hold = HoldFacts{4, 1, attentionDay() - 3};
    facts.lifts[2].hold = HoldFacts{6, 2, attentionDay() - 1};
    EXPECT_EQ(reasonFor<LiftOnHold>(facts), (LiftOnHold{lifts::Pattern::VerticalPush, "some_lift", HoldFacts{6, 2, attentionDay() - 1}, 1}));

    facts.lifts[2].hold.reset();
    EXPECT_EQ(reasonFor<LiftOnHold>(facts)->pattern, lifts::Pattern::Squat) << "what is not known does not hide what is";
}

TEST(Attention, TheLongestStallComesFirst)
{
    ClientFacts facts = withSessions({SessionState::Recorded, SessionState::CancelledInTime, SessionState::Missed, SessionState::Recorded});
    facts.lifts = {stalledLift(lifts::Pattern::Squat, 20), stalledLift(lifts::Pattern::HorizontalPush, 30)};
    facts.lifts[1].load = LiftLoad{base::Load::fromCenti(7250)};
    const auto reason = reasonFor<LiftStalled>(facts);
    ASSERT_TRUE(reason);
    EXPECT_EQ(*reason, (LiftStalled{lifts::Pattern::HorizontalPush, "some_lift", Stage::RepBuild, attentionDay() - 30, facts.lifts[1].load, 1, 2, 3}));
}

TEST(Attention, AHeldLiftIsNotAPlateau)
{
    ClientFacts facts = quietClient();
    facts.lifts = {stalledLift(lifts::Pattern::Squat, 20)};
    facts.lifts[0].isOnHold = true;
    EXPECT_FALSE(reasonFor<LiftStalled>(facts));
    EXPECT_TRUE(reasonFor<LiftOnHold>(facts));
}

TEST(Attention, TwoOfTheLastFourMissed)
{
    using S = SessionState;
    const struct {
        const char* what;
        std::vector<S> states;
        std::optional<SessionsMissed> reason;
    } rows[] = {
        {"one", {S::Recorded, S::Recorded, S::Missed, S::Recorded}, {}},
        {"two", {S::Recorded, S::Missed, S::Missed, S::Recorded}, SessionsMissed{2, 4}},
        {"cancelled late counts", {S::Recorded, S::CancelledLate, S::Missed, S::Missed}, SessionsMissed{1, 4}},
        {"cancelled in time does not", {S::Recorded, S::Recorded, S::CancelledInTime, S::Recorded, S::Missed, S::CancelledInTime}, {}},
        {"the fifth from the end is too long ago", {S::Missed, S::Missed, S::Recorded, S::Recorded, S::Recorded}, {}},
        {"the first two ever", {S::Missed, S::Missed}, SessionsMissed{0, 2}},
        {"none yet", {}, {}},
    };
    for (const auto& row : rows) {
        EXPECT_EQ(reasonFor<SessionsMissed>(withSessions(row.states)), row.reason) << row.what;
    }
}

TEST(Attention, NotSeenAndNothingBooked)
{
    ClientFacts facts = quietClient();
    facts.isBooked = false;
    facts.lastCame = attentionDay() - 20;
    EXPECT_FALSE(reasonFor<NotSeen>(facts));
    facts.lastCame = attentionDay() - 21;
    EXPECT_EQ(reasonFor<NotSeen>(facts), (NotSeen{attentionDay() - 21, 21}));
    facts.isBooked = true;
    EXPECT_FALSE(reasonFor<NotSeen>(facts));
    facts.isBooked = false;
    facts.lastCame.reset();
    EXPECT_FALSE(reasonFor<NotSeen>(facts)) << "never there: nobody stopped coming";
    facts.lastCame = attentionDay() - 30;
    facts.lastSessions = {SessionState::Missed, SessionState::Missed};
    EXPECT_FALSE(reasonFor<NotSeen>(facts)) << "missed sessions say it already";
}

TEST(Attention, ALayoffAsksForAScreen)
{
    ClientFacts facts = quietClient();
    LiftFacts lift = liftIn(Stage::BaseLoad, lifts::Pattern::Hinge);
    lift.flags.raise(Flag::Rescreen);
    lift.lastWork = attentionDay() - 61;
    facts.lifts.push_back(lift);
    EXPECT_EQ(reasonFor<ScreenDue>(facts), (ScreenDue{lifts::Pattern::Hinge, "some_lift", Stage::BaseLoad, true, attentionDay() - 61, 0}));
}

TEST(Attention, SixWeeksOfLearningAskForAScreen)
{
    ClientFacts facts = quietClient();
    facts.lifts = {liftIn(Stage::Control, lifts::Pattern::SingleLeg)};
    facts.lifts[0].stageSince = attentionDay() - 41;
    EXPECT_FALSE(reasonFor<ScreenDue>(facts));
    facts.lifts[0].stageSince = attentionDay() - 42;
    EXPECT_EQ(reasonFor<ScreenDue>(facts), (ScreenDue{lifts::Pattern::SingleLeg, "some_lift", Stage::Control, false, attentionDay() - 42, 0}));

    facts.lifts[0].stage = Stage::BaseLoad;
    EXPECT_FALSE(reasonFor<ScreenDue>(facts)) << "loaded";
    facts.lifts[0].stage = Stage::Control;
    facts.lifts[0].firstWork = attentionDay() - 80;
    EXPECT_FALSE(reasonFor<ScreenDue>(facts)) << "came back to Control: it has been loaded";
    facts.lifts[0].firstWork.reset();
    facts.lifts[0].isOnHold = true;
    EXPECT_FALSE(reasonFor<ScreenDue>(facts)) << "pain comes first";
}

TEST(Attention, ALayoffComesBeforeSlowLearning)
{
    ClientFacts facts = quietClient();
    facts.lifts = {liftIn(Stage::Pattern, lifts::Pattern::Squat), liftIn(Stage::BaseLoad, lifts::Pattern::Hinge)};
    facts.lifts[0].stageSince = attentionDay() - 90;
    facts.lifts[1].flags.raise(Flag::Rescreen);
    const auto reason = reasonFor<ScreenDue>(facts);
    ASSERT_TRUE(reason);
    EXPECT_TRUE(reason->isAfterLayoff);
    EXPECT_EQ(reason->others, 1);
}

TEST(Attention, DirectionIsDueByTheRule)
{
    const struct {
        int days;
        int stalls;
        bool isDue;
    } rows[] = {{89, 3, false}, {90, 1, false}, {90, 2, true}, {179, 0, false}, {180, 0, true}};
    for (const auto& row : rows) {
        ClientFacts facts = quietClient();
        facts.lifts[0].firstWork = attentionDay() - row.days;
        for (int i = 0; i < row.stalls; ++i) {
            facts.lifts.push_back(stalledLift(lifts::kPatterns[static_cast<std::size_t>(i + 1)], 20));
            facts.lifts.back().firstWork = attentionDay() - 30;
        }
        const auto reason = reasonFor<DirectionDue>(facts);
        ASSERT_EQ(reason.has_value(), row.isDue) << row.days << " days, " << row.stalls << " stalls";
        if (reason) {
            EXPECT_EQ(*reason, (DirectionDue{attentionDay() - row.days, row.days, row.stalls}));
        }
    }
}

TEST(Attention, APlanRestsTheDirectionAndIsReviewedWhenItIsOver)
{
    ClientFacts facts = quietClient();
    facts.lifts[0].firstWork = attentionDay() - 200;
    facts.direction.planEnd = attentionDay();
    EXPECT_FALSE(reasonFor<DirectionDue>(facts));
    facts.direction.planEnd = attentionDay() - 1;
    EXPECT_EQ(reasonFor<DirectionDue>(facts), (DirectionDue{attentionDay() - 200, 200, 0, attentionDay() - 1}));
    facts.lifts[0].firstWork = attentionDay() - 100;
    EXPECT_TRUE(reasonFor<DirectionDue>(facts)) << "a plan is reviewed whenever it began";
    facts.direction.lastChoice = attentionDay();
    EXPECT_FALSE(reasonFor<DirectionDue>(facts));
}

TEST(Attention, GravestFirst)
{
    ClientFacts facts = withSessions({SessionState::Missed, SessionState::Missed});
    facts.clearance = {ClearanceState::Granted, {}, {}, {}, attentionDay() + 3, {}};
    facts.lifts = {stalledLift(lifts::Pattern::Squat, 20), liftIn(Stage::Control, lifts::Pattern::Hinge), liftIn(Stage::LoadBuild, lifts::Pattern::VerticalPull)};
    facts.lifts[0].firstWork = attentionDay() - 200;
    facts.lifts[1].stageSince = attentionDay() - 60;
    facts.lifts[2].isOnHold = true;
    const auto reasons = attentionFor(facts, attentionDay());
    std::vector<std::size_t> kinds;
    for (const AttentionReason& reason : reasons) {
        kinds.push_back(reason.index());
    }
    EXPECT_EQ(kinds, (std::vector<std::size_t>{0, 1, 2, 3, 5, 6})) << "in the order of the variant, which is that of the priorities";
    EXPECT_EQ(liftOf(reasons[0]), std::nullopt);
    EXPECT_EQ(liftOf(reasons[1]), lifts::Pattern::VerticalPull);
    EXPECT_EQ(liftOf(reasons[2]), lifts::Pattern::Squat);
    EXPECT_EQ(liftOf(reasons[4]), lifts::Pattern::Hinge);
    EXPECT_EQ(liftOf(reasons[5]), std::nullopt);
}

TEST(Attention, WhoIsAwayOrBlockedIsTroubledAboutHealthAlone)
{
    ClientFacts facts = withSessions({SessionState::Missed, SessionState::Missed});
    facts.lifts[0].isOnHold = true;
    facts.awayUntil = attentionDay() + 1;
    EXPECT_EQ(attentionFor(facts, attentionDay()).size(), 1U);
    EXPECT_TRUE(reasonFor<LiftOnHold>(facts));
    facts.awayUntil = attentionDay();
    EXPECT_TRUE(reasonFor<SessionsMissed>(facts)) << "the first day back";

    facts.clearance.state = ClearanceState::Recommended;
    EXPECT_EQ(attentionFor(facts, attentionDay()).size(), 2U);
    EXPECT_FALSE(reasonFor<SessionsMissed>(facts));
}

}  // namespace chalk::checkin
