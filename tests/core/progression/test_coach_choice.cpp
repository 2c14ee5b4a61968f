#include "core/progression/coach_choice.h"

#include "tests/support/journey.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::progression {

using test::Journey;
using test::kilos;
using test::lowerLift;

namespace {

Journey livedJourney()
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    const auto whim = rc::gen::inRange<std::uint32_t>(0, 4'000'000'000U);
    for (const std::uint32_t value : *rc::gen::scale(0.6, rc::gen::container<std::vector<std::uint32_t>>(whim))) {
        journey.live(value);
    }
    return journey;
}

}  // namespace

RC_GTEST_PROP(CoachChoiceProperty, KeepingTheNumbersKeepsThePrescription, ())
{
    const Journey journey = livedJourney();
    const Prescription before = journey.machine().prescriptionOn(journey.day());
    RC_PRE(before.kind == PrescriptionKind::Work);
    LiftMachine kept = journey.machine();
    const CoachSet set = keepingSetOf(kept, before, "a hard week");
    RC_ASSERT(!kept.faultOf(set));
    kept.apply(journey.day(), set);
    const Prescription after = kept.prescriptionOn(journey.day());
    RC_ASSERT(numbersOf(after) == numbersOf(before));
    RC_ASSERT(after.cycle == before.cycle);
}

RC_GTEST_PROP(CoachChoiceProperty, TheNumbersOfAnyStageCanBeSet, ())
{
    const Journey journey = livedJourney();
    const Stage stage = *rc::gen::elementOf(std::vector<Stage>(kStages.begin(), kStages.end()));
    const CoachNumbers numbers = numbersAt(journey.machine(), stage, journey.day());
    RC_ASSERT(numbers.stage == stage);
    LiftMachine chosen = journey.machine();
    const CoachSet set = coachSetOf(numbers, "came from another coach");
    RC_ASSERT(!chosen.faultOf(set));
    chosen.apply(journey.day(), set);
    if (!chosen.state().isOnHold) {
        RC_ASSERT(numbersOf(chosen.prescriptionOn(journey.day())) == numbers);
    }
}

TEST(CoachChoice, EachStageHasItsOwnNumbers)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    const auto at = [&journey](Stage stage) { return numbersAt(journey.machine(), stage, journey.day()); };
    EXPECT_FALSE(at(Stage::Control).load);
    EXPECT_EQ(at(Stage::BaseLoad).load, kilos(20));
    EXPECT_FALSE(at(Stage::LoadBuild).reps);
    EXPECT_EQ(at(Stage::RepBuild).reps, base::Reps(5));
    EXPECT_EQ(at(Stage::SetBuild).reps, base::Reps(12));
    EXPECT_EQ(at(Stage::SetBuild).sets, base::Sets(3));
    EXPECT_FALSE(at(Stage::SetBuild).rest);
    EXPECT_EQ(at(Stage::RestCut).rest, base::Seconds(150));
}

TEST(CoachChoice, ALoadThatIsNotOnTheListIsKeptByLeavingItOut)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.work(2, 61, 12, 1);
    ASSERT_EQ(journey.state().load, kilos(61));
    const Prescription before = journey.machine().prescriptionOn(journey.day());
    const CoachSet set = keepingSetOf(journey.machine(), before, "a hard week");
    EXPECT_FALSE(journey.machine().faultOf(set));
    journey.record(set);
    EXPECT_EQ(journey.machine().prescriptionOn(journey.day()).load, kilos(61));
}

TEST(CoachChoice, RepBuildIsSetByTheBestSoFar)
{
    CoachNumbers numbers;
    numbers.stage = Stage::RepBuild;
    numbers.reps = base::Reps(8);
    EXPECT_EQ(coachSetOf(numbers, "steady enough").reps, base::Reps(7));
    EXPECT_EQ(coachSetOf(numbers, "steady enough").reason, "steady enough");
}

}  // namespace chalk::progression
