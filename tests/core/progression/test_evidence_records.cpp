#include "core/progression/evidence_records.h"

#include "tests/support/journey.h"

#include <gtest/gtest.h>

namespace chalk::progression {

using test::Journey;
using test::lowerLift;

TEST(EvidenceRecords, StreaksCountRecordsInARow)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.record(test::exposureOf({{50, 8, 5}, {50, 8, 5}}, 1));
    for (int i = 0; i < 3; ++i) {
        journey.pass(2);
        journey.work(2, 50, 8, 5);
    }
    journey.record(test::exposureOf({{60, 8, 5, 180, Steadiness::Shaky}, {60, 8, 5}}));
    const Evidence evidence = journey.evidence();
    EXPECT_EQ(checkOf(evidence, CheckKind::PainFree)->count, 4);
    EXPECT_FALSE(checkOf(evidence, CheckKind::Steady)->isMet);
    EXPECT_EQ(checkOf(evidence, CheckKind::Steady)->count, 0);
}

TEST(EvidenceRecords, ASwapBeginsTheStageAnew)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.work(1, 40, 8, 5);
    EXPECT_NE(checkOf(journey.evidence(), CheckKind::PainFree), nullptr);
    journey.record(Swap{test::fixedKit({8, 12, 16}).equipment, {}, {}, {}, {}});
    ASSERT_EQ(journey.state().stage, Stage::BaseLoad);
    EXPECT_EQ(checkOf(journey.evidence(), CheckKind::PainFree), nullptr);
    EXPECT_EQ(journey.evidence().checks.back().value, -1);
}

TEST(EvidenceRecords, WhatIsNoRecordBreaksNoStreak)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.work(2, 40, 8, 3);
    journey.record(Exposure{});
    journey.work(2, 40, 8, 3);
    const auto history = journey.history();
    const RecordFacts facts = recordFactsOf(history, journey.state().stage, Stage::BaseLoad);
    EXPECT_EQ(facts.painFreeInARow, 2);
    EXPECT_EQ(facts.steadyInARow, 2);
}

}  // namespace chalk::progression
