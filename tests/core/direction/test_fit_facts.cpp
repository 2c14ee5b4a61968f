#include "core/direction/fit_facts.h"

#include "core/clients/client.h"
#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::direction {

namespace {

LiftForPlan liftInStage(const test::LiftOnTest& lift, bool isStalled = false)
{
    return {base::LiftId(1), lifts::Pattern::Squat, "back_squat", test::LiftOnTest(lift).machine(), {}, {}, isStalled};
}

clients::Caution cautionWith(lifts::CautionTag tag)
{
    clients::Caution caution;
    caution.tags = {lifts::CautionTag::Wrist, tag};
    return caution;
}

}  // namespace

TEST(FitFacts, CountLoadedLiftsAndThoseThatWentRound)
{
    test::LiftOnTest unloaded;
    test::LiftOnTest loaded;
    loaded.set(progression::Stage::RepBuild, 60);
    LiftForPlan round = liftInStage(loaded);
    progression::LiftState second = loaded.state();
    second.cycle = 2;
    round.machine = *progression::LiftMachine::resume(round.machine.setup(), round.machine.kit(), second);
    const std::vector lifts{liftInStage(unloaded), liftInStage(loaded, true), round};
    const FitFacts facts = fitFactsOf(lifts, std::span<const lifts::CautionTag>(), 3);
    EXPECT_EQ(facts.sessionsAWeek, 3);
    EXPECT_EQ(facts.loadedLifts, 2);
    EXPECT_EQ(facts.liftsPastFirstCycle, 1);
    EXPECT_EQ(facts.stalledLifts, 1);
    EXPECT_FALSE(facts.hasLiftOnHold);
    EXPECT_FALSE(facts.needsCareWithHeavyLoads);
}

TEST(FitFacts, ALiftOnHoldIsNotCountedAsLoaded)
{
    test::LiftOnTest held;
    held.set(progression::Stage::LoadBuild, 60);
    held.work({{60, 5, 2}}, 7);
    ASSERT_TRUE(held.state().isOnHold);
    const FitFacts facts = fitFactsOf(std::vector{liftInStage(held)}, std::span<const lifts::CautionTag>(), 2);
    EXPECT_TRUE(facts.hasLiftOnHold);
    EXPECT_EQ(facts.loadedLifts, 0);
}

TEST(FitFacts, SomeCautionsAskForCareWithHeavyLoads)
{
    using lifts::CautionTag;
    for (const CautionTag tag : {CautionTag::BloodPressure, CautionTag::BoneDensity, CautionTag::Pregnancy, CautionTag::PelvicFloor, CautionTag::LowerBack}) {
        EXPECT_TRUE(fitFactsOf({}, std::vector{cautionWith(tag)}, 2).needsCareWithHeavyLoads) << lifts::keyOf(tag);
    }
    EXPECT_FALSE(fitFactsOf({}, std::vector{cautionWith(CautionTag::Knee)}, 2).needsCareWithHeavyLoads);
}

}  // namespace chalk::direction
