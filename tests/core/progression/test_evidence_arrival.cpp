#include "core/progression/evidence_arrival.h"

#include "tests/support/journey.h"

#include <gtest/gtest.h>

namespace chalk::progression {

using test::Journey;
using test::kilos;
using test::lowerLift;

TEST(EvidenceArrival, ControlLeadsBackToTheReturnStageWithTheLoadCut)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.work(2, 50, 8, 5);
    ASSERT_EQ(journey.state().stage, Stage::LoadBuild);
    const Exposure lost = test::exposureOf({{55, 8, 2}, {55, 8, 2, 180, Steadiness::Lost}});
    journey.record(lost);
    journey.record(lost);
    const Evidence evidence = journey.evidence();
    EXPECT_EQ(evidence.stage, Stage::Control);
    EXPECT_EQ(evidence.next, Stage::LoadBuild);
    EXPECT_EQ(evidence.progress.done, 0);
    // 55 kg less 10 per cent is 49.5 kg: 47.5 kg on this bar.
    EXPECT_EQ(evidence.arrival->load, kilos(47.5));
}

TEST(EvidenceArrival, AReturnAfterALongGapIsLookedAtOnceMore)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.work(2, 50, 8, 5);
    const Exposure lost = test::exposureOf({{55, 8, 2}, {55, 8, 2, 180, Steadiness::Lost}});
    journey.record(lost);
    journey.record(lost);
    journey.pass(30);
    const Evidence evidence = journey.evidence();
    EXPECT_EQ(evidence.next, Stage::LoadBuild);
    EXPECT_EQ(evidence.arrival->stage, Stage::Control);
    EXPECT_TRUE(evidence.arrival->rules.has(Rule::G2));
}

TEST(EvidenceArrival, TheRecordToTheLetterIsTheFewestThatLeadsOn)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    const auto record = recordToTheLetter(journey.machine());
    ASSERT_TRUE(record);
    const auto& exposure = std::get<Exposure>(*record);
    ASSERT_EQ(exposure.sets.size(), 2U);
    EXPECT_EQ(exposure.sets.front().amount + exposure.sets.front().rir, 12);
    EXPECT_EQ(exposure.sets.front().rir, 2);
    EXPECT_EQ(arrivalOf(journey.machine(), journey.day())->stage, Stage::LoadBuild);
}

TEST(EvidenceArrival, APolicyThatLeavesNoSuchRecordLeadsNowhere)
{
    LiftSetup setup = lowerLift();
    setup.policy.repFloor = setup.policy.hardReps = base::Reps(10);
    setup.policy.reserve = 8;
    const Journey journey(setup, Stage::BaseLoad);
    EXPECT_FALSE(recordToTheLetter(journey.machine()));
    EXPECT_FALSE(journey.evidence().next);
}

}  // namespace chalk::progression
