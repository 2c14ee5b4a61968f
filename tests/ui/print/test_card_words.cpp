#include "ui/print/card_words.h"

#include "tests/ui/print/card_fixture.h"
#include "ui/print/lift_words.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using base::Load;
using lifts::EquipmentKind;
using progression::PrescriptionKind;
using progression::Stage;
using sessions::CardContent;
using sessions::CardLift;

/// `77.5 kg 3 × [8]`: the pieces of a line, the framed ones in brackets.
std::string read(const Runs& runs)
{
    QStringList words;
    for (const Run& run : runs) {
        words.append(run.isFramed ? QStringLiteral("[%1]").arg(run.text) : run.text);
    }
    return words.join(QLatin1Char(' ')).toStdString();
}

std::string largeOf(const CardLift& lift)
{
    return read(largeLine(lift));
}

std::string firstDetails(const CardLift& lift)
{
    return read(detailLines(lift, false).front());
}

}  // namespace

TEST(CardWords, TheNumberThatMovesIsFramed)
{
    const CardContent card = test::ferroCard();
    EXPECT_EQ(largeOf(card.lifts[0]), "77.5 kg 3 × [8]");
    EXPECT_EQ(largeOf(card.lifts[1]), "60 kg [5] × 8");
    EXPECT_EQ(largeOf(card.lifts[2]), "47.5 kg 4 × 8");
    EXPECT_EQ(firstDetails(card.lifts[2]), "rest [1:15] · each side 10 + 2.5 + 1.25");
    EXPECT_EQ(largeOf(card.lifts[3]), "[2 × 12] kg 3 × 5–10");
    EXPECT_EQ(largeOf(card.lifts[4]), "[28] kg 3 × 20–40 m");
    EXPECT_EQ(firstDetails(card.lifts[3]), "rest 2:00 · dumbbells");
}

TEST(CardWords, APlanSaysItsWeekAndFramesTheLoadButInALighterWeek)
{
    CardLift lift = test::ferroCard().lifts[0];
    lift.lever = progression::Lever::Load;
    lift.plan = progression::BlockMark{5, 12, false, false};
    EXPECT_EQ(largeOf(lift), "[77.5] kg 3 × 8");
    EXPECT_EQ(stageText(lift), QStringLiteral("Plan week 5 of 12"));
    EXPECT_EQ(shortStageText(lift), QStringLiteral("5/12"));
    lift.plan = progression::BlockMark{4, 12, true, false};
    EXPECT_EQ(largeOf(lift), "77.5 kg 3 × 8");
    EXPECT_EQ(stageText(lift), QStringLiteral("Plan week 4 of 12, lighter"));
    EXPECT_TRUE(read(compactDetails(lift, false).back()).ends_with("· lighter"));
    lift.plan = progression::BlockMark{12, 12, false, true};
    EXPECT_TRUE(read(lastLines(lift).front()).starts_with("Test: "));
    EXPECT_TRUE(read(compactDetails(lift, false).back()).ends_with("· test"));
}

TEST(CardWords, LoadsOnTheBodyAreSaidAsPeopleSayThem)
{
    CardLift lift = test::workLift("Pull-up", Stage::SetBuild, 0, 3, 8, 8);
    lift.equipment = EquipmentKind::AddedToBody;
    EXPECT_EQ(largeOf(lift), "bodyweight [3] × 8");
    lift.load = Load::fromCenti(1000);
    EXPECT_EQ(largeOf(lift), "+10 kg [3] × 8");
    lift.load = Load::fromCenti(-1500);
    EXPECT_EQ(largeOf(lift), "15 kg help [3] × 8");
    lift.unit = base::MassUnit::Pound;
    EXPECT_EQ(largeOf(lift), "15 lb help [3] × 8");
    EXPECT_EQ(firstDetails(lift), "rest 2:00");
}

TEST(CardWords, PlatesGetShorter)
{
    CardLift lift = test::ferroCard().lifts[0];
    lift.platesPerSide = {Load::fromCenti(2500), Load::fromCenti(2500), Load::fromCenti(125)};
    const std::vector<Runs> ways = detailLines(lift, true);
    EXPECT_EQ(read(ways[0]), "rest 2:30 · 2 left · each side 25 + 25 + 1.25");
    EXPECT_EQ(read(ways[1]), "rest 2:30 · 2 left · each side 2 × 25 + 1.25");
    EXPECT_EQ(read(ways[2]), "rest 2:30 · 2 left · side 2 × 25 + 1.25");
    EXPECT_EQ(read(ways[3]), "rest 2:30 · 2 left · side 2×25+1.25");
    lift.platesPerSide.clear();
    EXPECT_EQ(firstDetails(lift), "rest 2:30 · bar alone");
}

TEST(CardWords, RehearsalsAndHoldsHaveTheirOwn)
{
    CardLift lift = test::workLift("Squat", Stage::Control, 0, 0, 5, 5);
    lift.kind = PrescriptionKind::Rehearse;
    lift.pauseMs = 1500;
    lift.warmUp.clear();
    EXPECT_EQ(largeOf(lift), "no load 5 reps");
    EXPECT_EQ(firstDetails(lift), "hold [1.5 s] at top, middle and bottom");
    EXPECT_EQ(read(lastLines(lift).front()), "Whole foot stays on the floor · Knees go where the toes point");
    EXPECT_EQ(read(lastLines(lift).back()), "Whole foot stays on the floor");
    lift.measure = lifts::Measure::Seconds;
    lift.amountLow = lift.amountHigh = 15;
    EXPECT_EQ(largeOf(lift), "no load 15 s");
    lift.stage = Stage::Pattern;
    EXPECT_EQ(firstDetails(lift), "every point met, no pain");
    lift.kind = PrescriptionKind::Hold;
    EXPECT_EQ(largeOf(lift), "On hold");
    EXPECT_TRUE(lastLines(lift).empty());
}

TEST(CardWords, APauseThatIsAskedForComesBeforeTheWarmUp)
{
    CardLift lift = test::ferroCard().lifts[0];
    EXPECT_EQ(read(lastLines(lift).front()), "warm up 20 × 10, 37.5 × 5, 52.5 × 3, 65 × 2");
    EXPECT_EQ(read(lastLines(lift).back()), "warm up 65 × 2") << "the lightest go first";
    lift.isPauseAsked = true;
    EXPECT_EQ(read(lastLines(lift).front()), "Pause at the bottom of each rep");
}

TEST(CardWords, ALighterWeekSaysItsLastDayAndFramesNoNumber)
{
    CardLift lift = test::ferroCard().lifts[0];
    const auto isFramed = [](const Runs& runs) { return std::any_of(runs.begin(), runs.end(), [](const auto& run) { return run.isFramed; }); };
    EXPECT_TRUE(isFramed(largeLine(lift)));
    lift.lighterUntil = base::Date::parse("2026-11-29");
    EXPECT_FALSE(isFramed(largeLine(lift)));
    EXPECT_EQ(read(lastLines(lift).front()), "Lighter week, to Sun 29 Nov");
    lift.isPauseAsked = true;
    EXPECT_EQ(read(lastLines(lift).front()), "Lighter week, to Sun 29 Nov. Pause at the bottom");
}

TEST(CardWords, TheHeadSaysWhenWhereAndHowToStop)
{
    CardContent card = test::ferroCard();
    EXPECT_EQ(whenAndWhere(card).toStdString(), "Tue 24 Nov 2026, 09:00 · Ines · Rack 1");
    EXPECT_EQ(read(instructions(card).front()), "Stop with 2 reps left . The framed number moves today.");
    EXPECT_EQ(read(instructions(card).back()), "Stop with 2 reps left .");
    EXPECT_EQ(drillText(card).toStdString(), "5 min easy, bodyweight squat × 8, hip bridge × 8");
    EXPECT_EQ(sessionText(card, 1, 1).toStdString(), "session 58");
    EXPECT_EQ(sessionText(card, 2, 2).toStdString(), "session 58 · card 2 of 2");
    card.lifts[1].reserve = 3;
    EXPECT_TRUE(hasMixedReserves(card));
    EXPECT_EQ(read(instructions(card).front()), "Stop with the reps left that each lift says. The framed number moves today.");
    card.place.clear();
    card.sessionNumber = 0;
    EXPECT_EQ(whenAndWhere(card).toStdString(), "Tue 24 Nov 2026, 09:00 · Ines");
    EXPECT_EQ(sessionText(card, 1, 1).toStdString(), "");
    card.lifts.clear();
    EXPECT_FALSE(hasMixedReserves(card));
    EXPECT_TRUE(instructions(card).empty());
}

TEST(CardWords, StagesAreNamedWithTheirCycle)
{
    const CardContent card = test::ferroCard();
    EXPECT_EQ(stageText(card.lifts[0]).toStdString(), "Rep build, cycle 2");
    EXPECT_EQ(stageText(card.lifts[1]).toStdString(), "Set build");
    EXPECT_EQ(shortStageText(card.lifts[1]).toStdString(), "6");
}

}  // namespace chalk::ui::print
