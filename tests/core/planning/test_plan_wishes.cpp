#include "core/planning/plan_wishes.h"

#include "core/progression/policy.h"
#include "tests/support/marked_screen.h"
#include "tests/support/small_plan.h"

#include <gtest/gtest.h>

namespace chalk::planning {

namespace {

using lifts::Pattern;
using progression::Stage;
using progression::StartChoice;
using progression::StartState;

const base::Date kFirstMonday = *base::Date::fromYmd(2026, 3, 2);

auto startsOf(const screens::MovementScreen& screen)
{
    return progression::startsOf(screen, progression::Policy::defaultsFor(base::MassUnit::Kilogram));
}

PatternStanding standingAfter(const screens::MovementScreen& screen, Pattern pattern, std::optional<StartChoice> choice)
{
    PlanDraft draft;
    draft.of(pattern).start = std::move(choice);
    return standingsOf(startsOf(screen), draft)[static_cast<std::size_t>(pattern)];
}

StartingPlan wishedOf(const PlanDraft& draft, const PlanRequest& request = test::readyRequest())
{
    return wishedPlanOf(test::templateOf({{Pattern::Squat}, {Pattern::Squat, Pattern::Hinge}}), request, draft, test::smallCatalogue());
}

std::vector<std::string> datesOf(const StartingPlan& plan)
{
    std::vector<std::string> days;
    for (const PlannedSession& session : plan.sessions) {
        days.push_back(session.date.toString() + (session.session == 0 ? " A" : " B"));
    }
    return days;
}

}  // namespace

TEST(PlanWishes, WithoutAnyThePlanIsTheSuggestion)
{
    const PlanTemplate plan = test::templateOf({{Pattern::Squat}, {Pattern::Squat, Pattern::Hinge}});
    const StartingPlan suggestion = startingPlanOf(plan, test::readyRequest(), test::smallCatalogue());
    const StartingPlan same = wishedOf({});
    EXPECT_EQ(datesOf(same), datesOf(suggestion));
    EXPECT_EQ(same.week, suggestion.week);
    ASSERT_EQ(same.lifts.size(), suggestion.lifts.size());
    EXPECT_EQ(same.find(Pattern::Squat)->exerciseKey, suggestion.find(Pattern::Squat)->exerciseKey);
}

TEST(PlanWishes, AStageIsTheCoachsWithAReason)
{
    const auto screen = test::markedMovementScreen(kFirstMonday, screens::Mark::Partly);
    EXPECT_EQ(standingAfter(screen, Pattern::Squat, {}).stage, Stage::Pattern);
    EXPECT_EQ(standingAfter(screen, Pattern::Squat, StartChoice{Stage::Control, "trained before"}).stage, Stage::Control);
    EXPECT_EQ(standingAfter(screen, Pattern::Squat, StartChoice{Stage::Control, ""}).stage, Stage::Pattern) << "no reason";
    EXPECT_EQ(standingAfter(screen, Pattern::Squat, StartChoice{Stage::LoadBuild, "strong"}).stage, Stage::Pattern) << "no starting stage";
}

TEST(PlanWishes, PainThatWasNamedAfterTheChoiceHoldsThePattern)
{
    auto screen = test::markedMovementScreen(kFirstMonday);
    screen.of(Pattern::Squat).pain = screens::ScreenPain{"knee", 6};
    const PatternStanding standing = standingAfter(screen, Pattern::Squat, StartChoice{Stage::BaseLoad, "trained before"});
    EXPECT_EQ(standing.state, StartState::OnHold);
    PlanRequest request = test::readyRequest();
    request.standings[0] = standing;
    PlanDraft draft;
    draft.of(Pattern::Squat).start = StartChoice{Stage::BaseLoad, "trained before"};
    EXPECT_EQ(wishedOf(draft, request).find(Pattern::Squat), nullptr);
}

TEST(PlanWishes, APressWithoutThePushUpStartsWithItsPausesUnlessTheCoachSaysOtherwise)
{
    auto screen = test::markedMovementScreen(kFirstMonday);
    for (screens::PointMark& point : screen.of(Pattern::VerticalPush).points) {
        point.mark = point.key == progression::kOverheadReachPoint ? screens::Mark::Partly : point.mark;
    }
    EXPECT_LT(standingAfter(screen, Pattern::VerticalPush, {}).stage, Stage::BaseLoad);
    EXPECT_EQ(standingAfter(screen, Pattern::VerticalPush, StartChoice{Stage::BaseLoad, "reach looked at apart"}).stage, Stage::BaseLoad);
}

TEST(PlanWishes, AnExerciseAndItsFirstLoadAreTheCoachs)
{
    PlanDraft draft;
    draft.of(Pattern::Squat).exerciseKey = "bell";
    draft.of(Pattern::Squat).firstLoad = base::Load::fromCenti(1200);
    const StartingPlan plan = wishedOf(draft);
    ASSERT_NE(plan.find(Pattern::Squat), nullptr);
    EXPECT_EQ(plan.find(Pattern::Squat)->exerciseKey, "bell");
    EXPECT_EQ(plan.find(Pattern::Squat)->firstLoad, base::Load::fromCenti(1200));
    EXPECT_EQ(plan.find(Pattern::Hinge)->firstLoad, base::Load::fromCenti(2000)) << "the others keep their own";
}

TEST(PlanWishes, AnExerciseThatACautionRulesOutIsNotTaken)
{
    PlanDraft draft;
    draft.of(Pattern::Squat).exerciseKey = "bar";
    PlanRequest request = test::readyRequest();
    request.cautions = {lifts::CautionTag::Shoulder};
    const StartingPlan plan = wishedOf(draft, request);
    EXPECT_EQ(plan.find(Pattern::Squat)->exerciseKey, "bell");
    EXPECT_EQ(plan.find(Pattern::Squat)->passedOver.front().exerciseKey, "bar");
}

TEST(PlanWishes, EquipmentIsWantedForItsOwnPatternAlone)
{
    PlanRequest request = test::readyRequest();
    request.equipment.push_back({"light_bar", lifts::EquipmentKind::Barbell, lifts::Barbell{base::Load::fromCenti(1000), {}}});
    PlanDraft draft;
    draft.of(Pattern::Squat).equipmentKey = "light_bar";
    const StartingPlan plan = wishedOf(draft, request);
    EXPECT_EQ(plan.find(Pattern::Squat)->equipmentKey, "light_bar");
    EXPECT_EQ(plan.find(Pattern::Squat)->firstLoad, base::Load::fromCenti(1000));
    EXPECT_EQ(plan.find(Pattern::Hinge)->equipmentKey, "bar");
}

TEST(PlanWishes, APatternThatIsLeftOutIsAGap)
{
    PlanDraft draft;
    draft.of(Pattern::Hinge).isLeftOut = true;
    const StartingPlan plan = wishedOf(draft);
    EXPECT_EQ(plan.find(Pattern::Hinge), nullptr);
    for (const PlannedSession& session : plan.sessions) {
        EXPECT_EQ(session.patterns, std::vector<Pattern>{Pattern::Squat});
    }
}

TEST(PlanWishes, SessionsHoldWhatTheCoachPutIntoThemInThatOrder)
{
    PlanDraft draft;
    draft.contents = {{Pattern::Hinge, Pattern::Squat}, {Pattern::Squat}};
    const StartingPlan plan = wishedOf(draft);
    ASSERT_EQ(plan.sessions.size(), 4U);
    EXPECT_EQ(plan.sessions[0].patterns, (std::vector<Pattern>{Pattern::Hinge, Pattern::Squat}));
    EXPECT_EQ(plan.sessions[1].patterns, std::vector<Pattern>{Pattern::Squat});
}

TEST(PlanWishes, ContentsForAnotherTemplateAreLeftAside)
{
    PlanDraft draft;
    draft.contents = {{Pattern::Hinge}};
    EXPECT_EQ(wishedOf(draft).sessions[1].patterns.size(), 2U);
    draft.contents = {{Pattern::Hinge, Pattern::Hinge}, {Pattern::Squat}};
    EXPECT_EQ(wishedOf(draft).sessions[0].patterns, std::vector<Pattern>{Pattern::Squat}) << "a pattern twice";
}

TEST(PlanWishes, ASessionOutsideOfTheHoursIsKeptAndNamed)
{
    PlanRequest request = test::readyRequest();
    PlanDraft draft;
    draft.slots = {{0, 1, 540}, {1, 3, 21 * 60}};
    EXPECT_EQ(wishedOf(draft, request).week.outsideHours, std::vector<std::size_t>{1});
    draft.slots[1].startMinute = 540;
    EXPECT_TRUE(wishedOf(draft, request).week.outsideHours.empty());
}

TEST(PlanWishes, DaysSetByHandKeepTheirSessionAndSayWhatIsTooClose)
{
    PlanDraft draft;
    draft.slots = {{0, 3, 555}, {1, 2, 1140}};  // A on Thursday at 9:15, B on Wednesday at 19:00
    const StartingPlan plan = wishedOf(draft);
    EXPECT_EQ(datesOf(plan), (std::vector<std::string>{"2026-03-04 B", "2026-03-05 A", "2026-03-11 B", "2026-03-12 A"}));
    EXPECT_EQ(plan.sessions[1].startMinute, 555);
    ASSERT_EQ(plan.week.tooClose.size(), 1U);
    EXPECT_EQ(plan.week.tooClose[0].minutesBetween, 24 * 60 - (1140 - 555));
}

TEST(PlanWishes, TwoSessionsOnOneDayAreTheCoachsToSet)
{
    PlanDraft draft;
    draft.slots = {{0, 1, 540}, {1, 1, 1080}};
    EXPECT_EQ(datesOf(wishedOf(draft)), (std::vector<std::string>{"2026-03-03 A", "2026-03-03 B", "2026-03-10 A", "2026-03-10 B"}));
}

TEST(PlanWishes, ASessionWithoutASlotIsUnplaced)
{
    PlanDraft draft;
    draft.slots = {{0, 1, 540}};
    const StartingPlan plan = wishedOf(draft);
    EXPECT_EQ(plan.week.unplaced, std::vector<std::size_t>{1});
    ASSERT_EQ(plan.gaps.size(), 7U);
    EXPECT_EQ(plan.gaps[0].pattern, Pattern::Hinge);
    EXPECT_EQ(plan.gaps[0].reason, GapReason::NoDay);
}

TEST(PlanWishes, SlotsOfAnotherTemplateAreForgotten)
{
    PlanDraft draft;
    draft.slots = {{0, 3, 540}, {2, 5, 540}};
    EXPECT_EQ(datesOf(wishedOf(draft)), datesOf(wishedOf({})));
    draft.slots = {{0, 3, 540}, {0, 5, 540}};
    EXPECT_EQ(datesOf(wishedOf(draft)), datesOf(wishedOf({})));
}

TEST(PlanWishes, TheFirstDayIsNoEarlierThanTheRequests)
{
    PlanDraft draft;
    draft.firstDay = kFirstMonday + 9;
    EXPECT_GE(wishedOf(draft).sessions.front().date, kFirstMonday + 9);
    draft.firstDay = kFirstMonday - 9;
    EXPECT_EQ(datesOf(wishedOf(draft)), datesOf(wishedOf({})));
}

}  // namespace chalk::planning
