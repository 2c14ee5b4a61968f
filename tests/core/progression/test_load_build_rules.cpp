#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::test {

using progression::Stage;

namespace {

LiftOnTest liftInLoadBuild(double load = 60, progression::Kit kit = barbellKit())
{
    LiftOnTest lift(lowerLift(std::move(kit)));
    lift.set(Stage::LoadBuild, load);
    return lift;
}

}  // namespace

TEST(LoadBuildRules, IncompleteChangesNothing)
{
    LiftOnTest lift = liftInLoadBuild();
    EXPECT_EQ(lift.work(1, 60, 10, 5), "A-2");
    EXPECT_EQ(lift.due().load, kilos(60));
    EXPECT_EQ(lift.state().misses, 0);
}

TEST(LoadBuildRules, EasyTakesTheStep)
{
    LiftOnTest lift = liftInLoadBuild();
    EXPECT_EQ(lift.work(2, 60, 7, 2), "L-1");
    EXPECT_EQ(lift.due().load, kilos(65));
    EXPECT_EQ(lift.state().lastMade, kilos(60));
    EXPECT_EQ(lift.work(2, 65, 6, 2), "L-2");
    EXPECT_EQ(lift.due().stage, Stage::RepBuild);
    EXPECT_EQ(lift.due().load, kilos(65));
    EXPECT_EQ(lift.state().best, base::Reps(6));
}

TEST(LoadBuildRules, TheStepIsUpperOrLower)
{
    progression::LiftSetup setup = lowerLift();
    setup.region = lifts::Region::Upper;
    LiftOnTest lift(std::move(setup));
    lift.set(Stage::LoadBuild, 60);
    EXPECT_EQ(lift.work(2, 60, 7, 2), "L-1");
    EXPECT_EQ(lift.due().load, kilos(62.5));
}

TEST(LoadBuildRules, HardIsFromTheFloorToTheHardReps)
{
    for (const auto& [reps, rules] : {std::pair(7, "L-1"), std::pair(6, "L-2"), std::pair(5, "L-2"), std::pair(4, "L-3")}) {
        LiftOnTest lift = liftInLoadBuild();
        EXPECT_EQ(lift.work(2, 60, reps, 2), rules) << reps;
    }
}

TEST(LoadBuildRules, MissesLeadBackToWhatWasMade)
{
    LiftOnTest lift = liftInLoadBuild();
    lift.work(2, 60, 8, 2);
    EXPECT_EQ(lift.work(2, 65, 4, 2), "L-3");
    EXPECT_EQ(lift.due().load, kilos(65));
    EXPECT_EQ(lift.work(2, 65, 4, 2), "L-4");
    EXPECT_EQ(lift.due().stage, Stage::RepBuild);
    EXPECT_EQ(lift.due().load, kilos(60));
    EXPECT_EQ(lift.state().best, base::Reps(0));
}

TEST(LoadBuildRules, MissesWithNothingMadeBackOff)
{
    LiftOnTest lift = liftInLoadBuild();
    EXPECT_EQ(lift.work(2, 60, 4, 2), "L-3");
    EXPECT_EQ(lift.work(2, 60, 4, 2), "L-5");
    EXPECT_EQ(lift.due().stage, Stage::LoadBuild);
    EXPECT_EQ(lift.due().load, kilos(52.5)) << "not above 54";
    EXPECT_EQ(lift.state().misses, 0);
}

TEST(LoadBuildRules, JumpsInsideTheCapAreTakenAndLargerOnesBridged)
{
    // ACSM position stand (Ratamess et al., Med Sci Sports Exerc 41:687-708, 2009): load rises of 2 to 10 per cent. A jump of
    // exactly 10 per cent is inside, the next hundredth is not.
    LiftOnTest inside = liftInLoadBuild(60, fixedKit({60, 66}));
    EXPECT_EQ(inside.work(2, 60, 8, 2), "L-1");
    EXPECT_EQ(inside.due().load, kilos(66));

    progression::Kit kit = fixedKit({60});
    std::get<lifts::FixedSet>(kit.equipment).loads.push_back(kilos(66.01));
    LiftOnTest outside = liftInLoadBuild(60, kit);
    EXPECT_EQ(outside.work(2, 60, 8, 2), "L-6");
    EXPECT_EQ(outside.due().load, kilos(60));
    EXPECT_EQ(outside.due().repsLow, base::Reps(9));
    EXPECT_EQ(outside.due().repsHigh, base::Reps(9));
}

TEST(LoadBuildRules, ABridgeIsCrossedAtTheGoal)
{
    LiftOnTest lift = liftInLoadBuild(8, fixedKit({8, 16, 24}));
    EXPECT_EQ(lift.work(2, 8, 11, 2), "L-6");
    EXPECT_EQ(lift.due().repsHigh, base::Reps(12));
    EXPECT_EQ(lift.work(2, 8, 4, 2), "L-3");
    EXPECT_EQ(lift.due().repsHigh, base::Reps(12)) << "a miss at the same load leaves the bridge";
    EXPECT_EQ(lift.work(2, 8, 12, 2), "L-7");
    EXPECT_EQ(lift.due().load, kilos(16));
    EXPECT_EQ(lift.due().repsLow, base::Reps(5));
    EXPECT_EQ(lift.state().lastMade, kilos(8));
}

TEST(LoadBuildRules, AnotherLoadEndsABridge)
{
    LiftOnTest lift = liftInLoadBuild(16, fixedKit({8, 16, 24}));
    EXPECT_EQ(lift.work(2, 16, 9, 2), "L-6");
    EXPECT_EQ(lift.work(2, 8, 4, 2), "L-3");
    EXPECT_EQ(lift.due().load, kilos(8));
    EXPECT_EQ(lift.due().repsHigh, base::Reps(10));
}

TEST(LoadBuildRules, TheHeaviestLoadLeadsToReps)
{
    LiftOnTest lift = liftInLoadBuild(24, fixedKit({8, 16, 24}));
    EXPECT_EQ(lift.work(2, 24, 9, 2), "L-8");
    EXPECT_EQ(lift.due().stage, Stage::RepBuild);
    EXPECT_EQ(lift.state().best, base::Reps(9));
}

TEST(LoadBuildRules, PercentagesAreOfTheEffectiveLoad)
{
    // A pull-up with 2.5 kg: 80 + 2.5 = 82.5; with 10 kg 90: more than a step of 5 kg, but 9.1 per cent.
    progression::LiftSetup setup = lowerLift();
    setup.bodyMass = kilos(80);
    setup.kit = {lifts::BodyAdded{{kilos(-20), kilos(0), kilos(2.5), kilos(10), kilos(30)}}, base::Milli(1000), {}, {}, {}};
    LiftOnTest lift(std::move(setup));
    lift.set(Stage::LoadBuild, 2.5);
    EXPECT_EQ(lift.work(2, 2.5, 8, 2), "L-1");
    EXPECT_EQ(lift.due().load, kilos(10));
    EXPECT_EQ(lift.work(2, 10, 8, 2), "L-6") << "110 is 22 per cent above 90";
    EXPECT_EQ(lift.work(2, 10, 4, 2), "L-3");
    EXPECT_EQ(lift.work(2, 10, 4, 2), "L-4");
    EXPECT_EQ(lift.due().load, kilos(10));
}

}  // namespace chalk::test
