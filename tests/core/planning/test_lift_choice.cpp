#include "core/planning/lift_choice.h"

#include "tests/support/small_plan.h"

#include <gtest/gtest.h>

namespace chalk::planning {

namespace {

using lifts::CautionTag;
using lifts::EquipmentKind;
using lifts::Pattern;
using progression::Stage;
using progression::StartState;

tl::expected<PlannedLift, PatternGap> planned(Pattern pattern, const PlanRequest& request)
{
    return plannedLiftOf(pattern, test::templateOf({{pattern}}), request, test::smallCatalogue());
}

PatternStanding& squatIn(PlanRequest& request)
{
    return request.standings[static_cast<std::size_t>(Pattern::Squat)];
}

base::Load kg(int whole)
{
    return base::Load::fromCenti(whole * 100);
}

}  // namespace

TEST(LiftChoice, TheFirstChoiceThatFits)
{
    const PlannedLift lift = planned(Pattern::Squat, test::readyRequest()).value();
    EXPECT_EQ(lift.exerciseKey, "bar");
    EXPECT_EQ(lift.equipmentKey, "bar");
    EXPECT_EQ(lift.exerciseReason, ExerciseReason::FirstChoice);
    EXPECT_EQ(lift.kind, PlannedKind::Work);
    EXPECT_EQ(lift.firstLoad, kg(20));
    EXPECT_EQ(lift.loadReason, FirstLoadReason::Lightest);
    EXPECT_TRUE(lift.passedOver.empty());
}

TEST(LiftChoice, ACautionPassesOverAndSaysWhy)
{
    PlanRequest request = test::readyRequest();
    request.cautions = {CautionTag::Wrist, CautionTag::Shoulder};
    const PlannedLift lift = planned(Pattern::Squat, request).value();
    EXPECT_EQ(lift.exerciseKey, "bell");
    EXPECT_EQ(lift.exerciseReason, ExerciseReason::NextChoice);
    EXPECT_EQ(lift.passedOver, (std::vector{PassedOver{"bar", PassReason::RuledOut, EquipmentKind::Barbell, CautionTag::Shoulder}}));
    EXPECT_EQ(lift.cares, std::vector{CautionTag::Wrist});
}

TEST(LiftChoice, WhatIsNotOnHandPassesOverToo)
{
    PlanRequest request = test::readyRequest();
    request.equipment.pop_back();
    const PlannedLift lift = planned(Pattern::Squat, request).value();
    EXPECT_EQ(lift.exerciseKey, "bell");
    EXPECT_EQ(lift.passedOver.front().reason, PassReason::NotOnHand);
    EXPECT_EQ(lift.passedOver.front().kind, EquipmentKind::Barbell);
}

TEST(LiftChoice, WithoutAWishTheNearestAndElseTheUnloadedOne)
{
    PlanRequest request = test::readyRequest();
    EXPECT_EQ(planned(Pattern::Hinge, request)->exerciseReason, ExerciseReason::NearestFit);
    EXPECT_EQ(planned(Pattern::Hinge, request)->exerciseKey, "dead");
    request.cautions = {CautionTag::LowerBack};
    const PlannedLift lift = planned(Pattern::Hinge, request).value();
    EXPECT_EQ(lift.exerciseReason, ExerciseReason::Unloaded);
    EXPECT_EQ(lift.exerciseKey, "bow");
    EXPECT_EQ(lift.equipmentKey, "");
    EXPECT_EQ(lift.firstLoad, base::Load());
}

TEST(LiftChoice, WhatIsNotEarnedIsRehearsed)
{
    PlanRequest request = test::readyRequest();
    const auto reasonAt = [&request](StartState state, Stage stage) {
        squatIn(request).state = state;
        squatIn(request).stage = stage;
        const PlannedLift lift = planned(Pattern::Squat, request).value();
        EXPECT_FALSE(lift.firstLoad);
        EXPECT_EQ(lift.rehearsalKey, "sit");
        EXPECT_EQ(lift.exerciseKey, "bar") << "the lift is that of later";
        return lift.rehearseReason;
    };
    EXPECT_EQ(reasonAt(StartState::NotScreened, Stage::BaseLoad), RehearseReason::NotScreened);
    EXPECT_EQ(reasonAt(StartState::Starts, Stage::Pattern), RehearseReason::PatternOpen);
    EXPECT_EQ(reasonAt(StartState::Starts, Stage::Control), RehearseReason::ControlOpen);
    request.isLoadBlocked = true;
    EXPECT_EQ(reasonAt(StartState::Starts, Stage::BaseLoad), RehearseReason::LoadBlocked);
}

TEST(LiftChoice, TheCoachsFirstLoadOrTheNearestUnderIt)
{
    PlanRequest request = test::readyRequest();
    squatIn(request).startLoad = kg(30);
    EXPECT_EQ(planned(Pattern::Squat, request)->firstLoad, kg(30));
    EXPECT_EQ(planned(Pattern::Squat, request)->loadReason, FirstLoadReason::StartLoad);
    squatIn(request).startLoad = kg(29);
    EXPECT_EQ(planned(Pattern::Squat, request)->firstLoad, kg(20));
    EXPECT_EQ(planned(Pattern::Squat, request)->loadReason, FirstLoadReason::NearestUnderStart);
}

TEST(LiftChoice, AHoldHasNoLift)
{
    PlanRequest request = test::readyRequest();
    squatIn(request).state = StartState::OnHold;
    EXPECT_EQ(planned(Pattern::Squat, request).error().reason, GapReason::OnHold);
}

TEST(LiftChoice, APatternWithNothingAllowedNamesEveryReason)
{
    lifts::Exercise only;
    only.key = "only";
    only.name = "Only";
    only.rung = 1;
    only.cues = {"One", "Two"};
    only.ruledOutBy = {CautionTag::Knee};
    lifts::Exercise bag = only;
    bag.key = "bag";
    bag.equipment = EquipmentKind::Bag;
    bag.ruledOutBy.clear();
    const auto catalogue = lifts::Catalogue::of({only, bag}).value();
    PlanTemplate plan = test::templateOf({{Pattern::Squat}});
    plan.exercises = {};
    PlanRequest request = test::readyRequest();
    request.cautions = {CautionTag::Knee};
    const auto gap = plannedLiftOf(Pattern::Squat, plan, request, catalogue);
    ASSERT_FALSE(gap);
    EXPECT_EQ(gap.error().reason, GapReason::NothingAllowed);
    ASSERT_EQ(gap.error().passedOver.size(), 2U);
    EXPECT_EQ(gap.error().passedOver[0].caution, CautionTag::Knee);
    EXPECT_EQ(gap.error().passedOver[1].kind, EquipmentKind::Bag);
}

TEST(LiftChoice, APairIsMadeOfSingles)
{
    lifts::Exercise exercise;
    exercise.equipment = EquipmentKind::KettlebellPair;
    const PlanRequest request = test::readyRequest();
    EXPECT_EQ(equipmentFor(exercise, request)->key, "kettlebells");
    exercise.equipment = EquipmentKind::DumbbellPair;
    EXPECT_EQ(equipmentFor(exercise, request), nullptr);
}

}  // namespace chalk::planning
