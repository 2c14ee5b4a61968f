#include "core/progression/evidence.h"

#include "tests/support/journey.h"

#include <gtest/gtest.h>

namespace chalk::progression {

using test::Journey;
using test::lowerLift;

TEST(EvidenceRehearsed, PatternNamesTheCriteriaOfTheLastRehearsal)
{
    Journey journey(lowerLift());
    EXPECT_EQ(journey.evidence().progress.needed, 0);
    Rehearsal rehearsal = test::goodRehearsal();
    rehearsal.criteria.back().verdict = Verdict::Partly;
    journey.record(rehearsal);
    const Evidence evidence = journey.evidence();
    EXPECT_EQ(evidence.next, Stage::Control);
    ASSERT_EQ(evidence.checks.size(), 4U);
    EXPECT_EQ(evidence.checks[0].key, "depth");
    EXPECT_TRUE(evidence.checks[0].isMet);
    EXPECT_EQ(evidence.checks[1].key, "heels");
    EXPECT_FALSE(evidence.checks[1].isMet);
    EXPECT_EQ(evidence.checks[2].kind, CheckKind::PainFree);
    EXPECT_EQ(evidence.progress.done, 1);
    EXPECT_EQ(evidence.progress.needed, 2);
}

TEST(EvidenceRehearsed, ControlCountsThePausesOfTheRehearsalThatLedThere)
{
    Journey journey(lowerLift());
    Rehearsal rehearsal = test::goodRehearsal();
    rehearsal.pauses = {1200, 600, std::nullopt};
    journey.record(rehearsal);
    const Evidence evidence = journey.evidence();
    EXPECT_EQ(evidence.stage, Stage::Control);
    EXPECT_EQ(evidence.next, Stage::BaseLoad);
    EXPECT_EQ(evidence.progress.done, 1);
    EXPECT_TRUE(checkOf(evidence, CheckKind::PauseTop)->isMet);
    EXPECT_EQ(checkOf(evidence, CheckKind::PauseMiddle)->value, 600);
    EXPECT_EQ(checkOf(evidence, CheckKind::PauseBottom)->value, -1);
    EXPECT_EQ(evidence.target->repsLow, base::Reps(5));
}

}  // namespace chalk::progression
