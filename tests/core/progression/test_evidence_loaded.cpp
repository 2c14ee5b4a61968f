#include "core/progression/evidence.h"

#include "tests/support/journey.h"

#include <gtest/gtest.h>

namespace chalk::progression {

using test::Journey;
using test::kilos;
using test::lowerLift;

namespace {

/// An upper-body lift, so that each step is a bridge.
LiftSetup bellsLift()
{
    LiftSetup setup = lowerLift(test::kettlebellKit());
    setup.region = lifts::Region::Upper;
    return setup;
}

}  // namespace

TEST(EvidenceLoaded, BaseLoadAsksForWhatTheLastSetsLacked)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.work(1, 40, 8, 5);
    const Evidence evidence = journey.evidence();
    EXPECT_EQ(evidence.next, Stage::LoadBuild);
    EXPECT_TRUE(checkOf(evidence, CheckKind::RirRecorded)->isMet);
    EXPECT_FALSE(checkOf(evidence, CheckKind::FullSets)->isMet);
    EXPECT_EQ(checkOf(evidence, CheckKind::FullSets)->value, 1);
    EXPECT_TRUE(checkOf(evidence, CheckKind::ReserveKept)->isMet);
    EXPECT_EQ(evidence.checks.back().value, 13);
    EXPECT_EQ(evidence.progress.done, 2);
    EXPECT_EQ(evidence.target->load, kilos(40));
    EXPECT_EQ(evidence.target->capacityMin, base::Reps(12));
}

TEST(EvidenceLoaded, ALoadThatIsTooHeavyAsksForALighterOption)
{
    Journey journey(bellsLift(), Stage::BaseLoad);
    journey.work(2, 8, 6, 2);
    const Evidence evidence = journey.evidence();
    const Check* lighter = checkOf(evidence, CheckKind::LighterOption);
    ASSERT_NE(lighter, nullptr);
    EXPECT_FALSE(lighter->isMet);
}

TEST(EvidenceLoaded, LoadBuildIsDoneWhenTheLoadIsHard)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.work(2, 50, 8, 5);
    const Evidence evidence = journey.evidence();
    EXPECT_EQ(evidence.next, Stage::RepBuild);
    EXPECT_EQ(evidence.target->load, kilos(55));
    EXPECT_EQ(evidence.target->repsLow, base::Reps(5));
    EXPECT_EQ(evidence.target->repsHigh, base::Reps(6));
    EXPECT_FALSE(evidence.target->isOpenAbove);
    EXPECT_EQ(evidence.shortfall->end, Shortfall::End::CutLoad);
}

TEST(EvidenceLoaded, ABridgeIsCrossedBeforeTheFarLoadCounts)
{
    Journey journey(bellsLift(), Stage::BaseLoad);
    journey.work(2, 12, 8, 5);
    ASSERT_TRUE(journey.state().bridgeTarget);
    const Evidence evidence = journey.evidence();
    const Check* bridge = checkOf(evidence, CheckKind::BridgeCrossed);
    ASSERT_NE(bridge, nullptr);
    EXPECT_EQ(bridge->load, kilos(16));
    EXPECT_EQ(bridge->needed, 12);
    EXPECT_EQ(bridge->value, journey.state().bridgeTarget->value() - 1);
    EXPECT_EQ(evidence.target->load, kilos(16));
}

TEST(EvidenceLoaded, AtTheEquipmentLimitAnyMadeExposureLeadsOn)
{
    Journey journey(bellsLift(), Stage::BaseLoad);
    journey.record(CoachSet{Stage::LoadBuild, kilos(24), {}, {}, {}, "came from another coach"});
    const Evidence evidence = journey.evidence();
    EXPECT_TRUE(evidence.target->isOpenAbove);
    journey.work(2, 24, 10, 2);
    EXPECT_EQ(journey.state().stage, Stage::RepBuild);
}

TEST(EvidenceLoaded, RepBuildCountsTowardsTheGoal)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.record(CoachSet{Stage::RepBuild, kilos(60), base::Reps(7), {}, {}, "came from another coach"});
    journey.work(2, 60, 8, 1);
    const Evidence evidence = journey.evidence();
    EXPECT_EQ(evidence.progress.unit, EvidenceProgress::Unit::Reps);
    EXPECT_EQ(evidence.progress.done, 7);
    EXPECT_EQ(evidence.progress.needed, 12);
    EXPECT_FALSE(checkOf(evidence, CheckKind::ReserveKept)->isMet);
    EXPECT_EQ(evidence.checks.back().value, 7);
    EXPECT_EQ(evidence.shortfall->misses, 1);
    EXPECT_EQ(evidence.shortfall->end, Shortfall::End::CutLoad);
}

TEST(EvidenceLoaded, SetBuildAndRestCutCountTheirSteps)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.record(CoachSet{Stage::SetBuild, kilos(60), base::Reps(12), base::Sets(4), {}, "came from another coach"});
    Evidence evidence = journey.evidence();
    EXPECT_EQ(evidence.progress.done, 1);
    EXPECT_EQ(evidence.progress.needed, 3);
    EXPECT_FALSE(checkOf(evidence, CheckKind::SetsReached)->isMet);
    EXPECT_EQ(evidence.target->repsLeast, base::Reps(10));
    journey.record(CoachSet{Stage::RestCut, {}, {}, {}, base::Seconds(75), "a short break at work"});
    evidence = journey.evidence();
    EXPECT_EQ(evidence.progress.done, 3);
    EXPECT_EQ(evidence.progress.needed, 5);
    EXPECT_EQ(evidence.target->rest, base::Seconds(60));
    EXPECT_EQ(evidence.next, Stage::LoadBuild);
    EXPECT_EQ(evidence.arrival->cycle, 2);
    EXPECT_EQ(evidence.arrival->load, kilos(65));
}

}  // namespace chalk::progression
