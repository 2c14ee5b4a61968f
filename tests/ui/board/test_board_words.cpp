#include "ui/board/board_words.h"

#include "tests/ui/board/client_fixture.h"

#include <gtest/gtest.h>

namespace chalk::ui::board {

using progression::Stage;
using test::FixtureLift;
using test::trainedLift;

namespace {

LiftCase setTo(Stage stage, double load, std::optional<int> reps = {}, std::optional<int> sets = {})
{
    LiftCase lift = trainedLift({lifts::Pattern::Squat, "Back squat", lifts::Region::Lower, test::fixtureBar(), 75, 4}, 1);
    progression::CoachSet set;
    set.stage = stage;
    set.load = base::Load::fromCenti(static_cast<std::int32_t>(load * 100));
    if (reps) {
        set.reps = base::Reps(*reps);
    }
    if (sets) {
        set.sets = base::Sets(*sets);
    }
    set.reason = "a test";
    lift.machine.apply(test::fixtureDay(), set);
    settle(lift, test::fixtureDay());
    return lift;
}

}  // namespace

TEST(BoardWords, TheBlockSaysThatItIsOfALighterWeek)
{
    LiftCase lift = setTo(Stage::SetBuild, 60, 10, 4);
    EXPECT_EQ(columnOf(lift).foot, QString());
    lift.machine.apply(test::fixtureDay(), progression::LighterWeek{"tired"});
    settle(lift, test::fixtureDay());
    const BoardColumn column = columnOf(lift);
    EXPECT_EQ(column.foot, QStringLiteral("lighter"));
    EXPECT_EQ(column.sub, QStringLiteral("2 × 10"));
    settle(lift, test::fixtureDay() + 7);
    EXPECT_EQ(columnOf(lift).foot, QString());
    EXPECT_EQ(columnOf(lift).sub, QStringLiteral("4 × 10"));
}

TEST(BoardWords, TheBlockSaysWhatIsNext)
{
    const BoardColumn reps = columnOf(setTo(Stage::RepBuild, 77.5, 7));
    EXPECT_EQ(reps.title, QStringLiteral("77.5 kg"));
    EXPECT_EQ(reps.sub, QStringLiteral("2 × 8"));
    const BoardColumn rest = columnOf(setTo(Stage::RestCut, 60, 10));
    EXPECT_EQ(rest.sub, QStringLiteral("rest 2:30"));
    EXPECT_TRUE(rest.need->isNextCycle);
    EXPECT_EQ(rest.need->stage, Stage::LoadBuild);
    EXPECT_EQ(rest.need->title, QStringLiteral("65 kg"));
}

TEST(BoardWords, TheDashedBoxSaysWhatIsNeeded)
{
    EXPECT_EQ(columnOf(setTo(Stage::BaseLoad, 40)).need->title, QStringLiteral("12–15 reps"));
    EXPECT_EQ(columnOf(setTo(Stage::LoadBuild, 60)).need->title, QStringLiteral("5–6 reps"));
    const BoardColumn reps = columnOf(setTo(Stage::RepBuild, 60, 7));
    EXPECT_EQ(reps.need->title, QStringLiteral("2 × 12"));
    EXPECT_EQ(reps.need->done, 7);
    EXPECT_EQ(reps.need->needed, 12);
    EXPECT_EQ(columnOf(setTo(Stage::SetBuild, 60, 10, 4)).need->title, QStringLiteral("5 × 10"));
}

TEST(BoardWords, AHoldIsAnOutlineWithoutANeed)
{
    const LiftCase held = trainedLift(
        {lifts::Pattern::VerticalPush, "Overhead press", lifts::Region::Upper, test::fixtureBar(), 40, 20, 1, lifts::Measure::Reps, 5}, 1);
    const BoardColumn column = columnOf(held);
    EXPECT_TRUE(column.isOutlined);
    EXPECT_EQ(column.tag, BoardTag::Pain);
    EXPECT_EQ(column.title, QStringLiteral("On hold"));
    EXPECT_EQ(column.foot, QStringLiteral("pain 5"));
    EXPECT_FALSE(column.need);
}

TEST(BoardWords, APairAndACarryAreWrittenInTheirOwnWay)
{
    const LiftCase pair =
        trainedLift({lifts::Pattern::SingleLeg, "Split squat", lifts::Region::Lower, test::fixtureDumbbells(), 14, 3, 2}, 1);
    EXPECT_EQ(loadTextOf(pair, base::Load::fromCenti(1200)), QStringLiteral("2 × 12 kg"));
    const LiftCase carry = trainedLift(
        {lifts::Pattern::CarryBrace, "Suitcase carry", lifts::Region::Lower, test::fixtureDumbbells(), 24, 8, 1, lifts::Measure::Metres},
        1);
    EXPECT_EQ(amountTextOf(carry, base::Reps(12)), QStringLiteral("48 m"));
}

TEST(BoardWords, PoundsStayPounds)
{
    progression::LiftSetup setup;
    setup.unit = base::MassUnit::Pound;
    setup.kit.equipment = lifts::Stack{base::Load::fromCenti(1000), base::Load::fromCenti(20'000), base::Load::fromCenti(1000)};
    setup.startStage = Stage::BaseLoad;
    setup.policy = progression::Policy::defaultsFor(base::MassUnit::Pound);
    LiftCase lift(progression::LiftMachine::create(setup).value());
    lift.id = base::LiftId(1);
    lift.exercise.name = "Pulldown";
    settle(lift, test::fixtureDay());
    EXPECT_EQ(columnOf(lift).title, QStringLiteral("10 lb"));
    EXPECT_TRUE(spokenOf(lift).contains(QStringLiteral("10 pounds")));
}

TEST(BoardWords, TwoLiftsLeaveTheOtherPatternsToBeScreened)
{
    const BoardColumns columns = columnsOf([] {
        ClientCase client = test::ferro();
        client.lifts.erase(client.lifts.begin() + 2, client.lifts.end());
        return client;
    }());
    ASSERT_EQ(columns.size(), 8U);
    EXPECT_FALSE(columns[1].isEmpty());
    EXPECT_TRUE(columns[2].isEmpty());
    EXPECT_EQ(columns[2].title, QStringLiteral("Screen this lift"));
    EXPECT_TRUE(columns[2].canScreen);
    EXPECT_EQ(columns[2].spoken, QStringLiteral("Horizontal push, not screened yet"));
}

TEST(BoardWords, APatternWithoutALiftSaysHowFarItsScreenIs)
{
    ClientCase client = test::ferro();
    client.lifts.clear();
    client.screen = screens::MovementScreen();
    for (std::size_t i = 0; i < lifts::kPatterns.size(); ++i) {
        client.screen->patterns[i] = {.pattern = lifts::kPatterns[i], .points = {{"depth", screens::Mark::NotJudged}}, .pauses = {}, .steadiness = {}, .reps = {}, .pain = {}, .note = {}};
    }
    client.screen->of(lifts::Pattern::Hinge).points[0].mark = screens::Mark::Met;
    client.screen->of(lifts::Pattern::VerticalPush).pain = screens::ScreenPain{"Left shoulder", 4};
    const BoardColumns columns = columnsOf(client);
    EXPECT_EQ(standingOf(client, lifts::Pattern::Squat), ScreenStanding::Open);
    EXPECT_EQ(standingOf(client, lifts::Pattern::Hinge), ScreenStanding::Judged);
    EXPECT_EQ(standingOf(client, lifts::Pattern::VerticalPush), ScreenStanding::Hurts);
    EXPECT_EQ(columns[static_cast<std::size_t>(lifts::Pattern::VerticalPush)].title, QStringLiteral("On hold: pain in the screen"));
    EXPECT_EQ(columns[static_cast<std::size_t>(lifts::Pattern::Hinge)].title, QStringLiteral("Screened, no lift begun"));
}

TEST(BoardWords, TenLiftsAreTenColumnsInTheOrderOfThePatterns)
{
    const BoardColumns columns = columnsOf(test::clientWithLifts(10));
    ASSERT_EQ(columns.size(), 10U);
    for (std::size_t i = 1; i < columns.size(); ++i) {
        EXPECT_LE(columns[i - 1].pattern, columns[i].pattern);
    }
}

}  // namespace chalk::ui::board
