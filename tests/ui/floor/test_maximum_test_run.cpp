#include "ui/floor/maximum_test_run.h"

#include "tests/support/lift_on_test.h"
#include "ui/floor/maximum_test_words.h"

#include <gtest/gtest.h>

namespace chalk::ui::floor {

namespace {

using chalk::direction::NoTest;
using chalk::direction::TestEnd;
using test::kilos;

TestedLift testedSquat(bool isPlanTest = false)
{
    lifts::Exercise squat;
    squat.name = "Back squat";
    return {base::ClientId(3), "Ada Lund", base::LiftId(7), squat, *progression::LiftMachine::create(test::lowerLift()), kilos(100), {}, isPlanTest,
            *base::Date::parse("2026-11-25"), base::SessionId(9)};
}

/// Does the next sets as asked.
void passSets(MaximumTestRun& run, int sets)
{
    for (int i = 0; i < sets; ++i) {
        run.record({run.next()->load, run.next()->repsLeast.value(), 0});
    }
}

}  // namespace

TEST(MaximumTestRun, WarmsUpAttemptsAndKeepsTheHeaviestThatWasMade)
{
    MaximumTestRun run(testedSquat(), TestKind::Single);
    EXPECT_EQ(testStepText(run), QStringLiteral("Warm-up"));
    passSets(run, 3);
    EXPECT_EQ(testStepText(run), QStringLiteral("Attempt 1 of 5 at most"));
    EXPECT_EQ(run.attemptsLeft(), 5);
    EXPECT_FALSE(run.found({}));
    const base::Load first = run.next()->load;
    passSets(run, 1);
    EXPECT_EQ(run.attemptsLeft(), 4);
    EXPECT_EQ(run.best()->load, first);
    ASSERT_TRUE(run.next());
    run.record({run.next()->load, 0, 0});
    run.stop();
    const auto found = run.found("steady");
    ASSERT_TRUE(found);
    EXPECT_EQ(found->load, first);
    EXPECT_EQ(found->reps, base::Reps(1));
    EXPECT_EQ(found->client, base::ClientId(3));
    EXPECT_EQ(found->lift, base::LiftId(7));
    EXPECT_EQ(found->note, "steady");
}

TEST(MaximumTestRun, TheCoachMayTakeAnotherLoadThanAsked)
{
    MaximumTestRun run(testedSquat(), TestKind::Single);
    passSets(run, 3);
    run.record({kilos(110), 1, 0});
    EXPECT_EQ(run.best()->load, kilos(110));
    EXPECT_GT(run.next()->load, kilos(110));
}

TEST(MaximumTestRun, OutsideOfATestWeekAllSetsAreWarmUpsAndInItAttemptsAreWorkToFailure)
{
    for (const bool isPlanTest : {false, true}) {
        MaximumTestRun run(testedSquat(isPlanTest), TestKind::Single);
        EXPECT_FALSE(run.exposure());
        passSets(run, 4);
        run.record({run.next()->load, 0, 0});
        const auto exposure = run.exposure();
        ASSERT_TRUE(exposure);
        ASSERT_EQ(exposure->sets.size(), 5U);
        EXPECT_EQ(exposure->pain, 0);
        for (std::size_t i = 0; i < 3; ++i) {
            EXPECT_TRUE(exposure->sets[i].isWarmup);
            EXPECT_EQ(exposure->sets[i].rir, progression::SetRecord::kNotRecorded);
        }
        for (std::size_t i = 3; i < 5; ++i) {
            EXPECT_EQ(exposure->sets[i].isWarmup, !isPlanTest);
            EXPECT_EQ(exposure->sets[i].rir, isPlanTest ? 0 : progression::SetRecord::kNotRecorded);
        }
        EXPECT_EQ(exposure->sets[3].amount, 1);
        EXPECT_EQ(exposure->sets[4].amount, 0) << "missed";
    }
}

TEST(MaximumTestRun, AnyPainEndsItAndIsKept)
{
    MaximumTestRun run(testedSquat(), TestKind::Single);
    passSets(run, 4);
    const base::Load made = run.best()->load;
    run.record({run.next()->load, 0, 4});
    EXPECT_FALSE(run.next());
    EXPECT_EQ(run.end(), TestEnd::Pain);
    EXPECT_EQ(run.exposure()->pain, 4);
    EXPECT_EQ(run.found({})->load, made);
    EXPECT_EQ(run.found({})->end, TestEnd::Pain);
    EXPECT_TRUE(testEndingText(testedSquat(), run).contains(QStringLiteral("doctor or physiotherapist")));
}

TEST(MaximumTestRun, ThreeToFiveRepetitionsAreTestedWithOneHeavySet)
{
    MaximumTestRun run(testedSquat(), TestKind::Reps);
    EXPECT_EQ(run.next()->load, kilos(50));
    passSets(run, 2);
    EXPECT_EQ(run.next()->load, kilos(85)) << "87 per cent, the printed share for five repetitions: 87 kg are not to be had";
    EXPECT_EQ(testStepText(run), QStringLiteral("Set 1 of 3 at most"));
    run.record({kilos(85), 4, 0});
    EXPECT_EQ(run.end(), TestEnd::Found);
    EXPECT_EQ(run.found({})->reps, base::Reps(4));
    EXPECT_EQ(testResultText(testedSquat(), run), QStringLiteral("Back squat: 85 kg, 4 reps"));
}

TEST(MaximumTestRun, SomeReasonsAgainstASingleAreReasonsAgainstAnyTest)
{
    EXPECT_TRUE(canTestReps({}));
    for (const NoTest reason : {NoTest::Caution, NoTest::NotThisLift, NoTest::TooEarly}) {
        EXPECT_TRUE(canTestReps(reason));
    }
    for (const NoTest reason : {NoTest::NotCleared, NoTest::OnHold, NoTest::Unloaded}) {
        EXPECT_FALSE(canTestReps(reason));
    }
}

TEST(MaximumTestWords, ThePlatesAndTheReasonsAreSaid)
{
    TestedLift lift = testedSquat();
    EXPECT_EQ(testPlatesOf(lift, kilos(70))->plates, (std::vector<base::Load>{kilos(25)}));
    EXPECT_EQ(testSetUpText(lift, kilos(70)), QStringLiteral("each side of a 20 kg bar"));
    EXPECT_TRUE(noSingleText(lift).isEmpty());
    const qsizetype checks = testChecks(lift).size();
    lift.reason = NoTest::Caution;
    EXPECT_TRUE(noSingleText(lift).startsWith(QStringLiteral("No single: ")));
    EXPECT_EQ(testChecks(lift).size(), checks + 1) << "whoever treats the client is asked";
    EXPECT_TRUE(noTestAtAllText(lift).isEmpty());
    lift.reason = NoTest::NotCleared;
    EXPECT_FALSE(noTestAtAllText(lift).isEmpty());
    lift.reason.reset();
    lift.single = base::Load();
    EXPECT_FALSE(noTestAtAllText(lift).isEmpty()) << "there is nothing to start from";
}

}  // namespace chalk::ui::floor
