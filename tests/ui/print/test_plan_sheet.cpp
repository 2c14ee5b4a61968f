#include "ui/print/plan_sheet.h"

#include "tests/support/lift_on_test.h"
#include "tests/ui/print/pdf_checks.h"
#include "tests/ui/print/sheet_checks.h"
#include "ui/common/direction_words.h"
#include "ui/print/plan_parts.h"
#include "ui/print/sheet_printing.h"

#include <QDate>
#include <QRegularExpression>

#include <gtest/gtest.h>

namespace chalk::ui::print {

namespace {

using chalk::direction::Direction;
using chalk::direction::LiftForPlan;
using chalk::direction::LiftRole;
using chalk::direction::PlanWishes;
using test::textOf;

const base::Date kSheetMonday = *base::Date::fromYmd(2026, 11, 30);

LiftForPlan liftOnPaper(std::int64_t id, const progression::Kit& kit, base::MassUnit unit)
{
    progression::LiftSetup setup = test::lowerLift(kit);
    setup.unit = unit;
    setup.policy = progression::Policy::defaultsFor(unit);
    setup.bodyMass = base::Load::fromCenti(8000);
    return {base::LiftId(id), lifts::Pattern::Squat, "back_squat", *progression::LiftMachine::create(setup), {}, {}, false};
}

/// A plan of three lifts: a bar in kilograms, a pair of dumbbells in pounds, and one whose single is not known.
PlanPaper paperOf(Direction direction, int weeks, int exposures)
{
    PlanPaper paper;
    paper.studioName = "Ketch Lane Studio";
    paper.clientName = "Joaquin Ferro";
    paper.coachName = "Ines";
    paper.today = kSheetMonday - 5;
    progression::Kit pair = test::fixedKit({20, 25, 30, 35});
    pair.pieces = 2;
    paper.lifts = {liftOnPaper(1, test::barbellKit(), base::MassUnit::Kilogram), liftOnPaper(2, pair, base::MassUnit::Pound),
                   liftOnPaper(3, test::barbellKit(), base::MassUnit::Kilogram)};
    PlanWishes& wishes = paper.plan.plan.wishes;
    wishes.direction = direction;
    wishes.weeks = weeks;
    wishes.sessionsAWeek = 7;
    wishes.start = kSheetMonday;
    wishes.lifts = {{base::LiftId(1), LiftRole::Main, exposures},
                    {base::LiftId(2), LiftRole::Assistance, std::min(2, exposures)},
                    {base::LiftId(3), LiftRole::Main, 1}};
    paper.plan.plan = chalk::direction::planFor(wishes);
    paper.plan.begunOn = paper.today;
    paper.plan.singles = {{test::kilos(104), true}, {test::kilos(40), false}, {}};
    paper.names = {"Back squat", "Dumbbell bench press, both arms at once on a low incline", "Trap-bar deadlift"};
    paper.beside = {"Farmer carry", "Pull-up"};
    paper.done.resize(3);
    return paper;
}

PlanPaper crowdedPaper()
{
    PlanPaper paper = paperOf(Direction::Strength, 16, 7);
    paper.clientName = "Maximiliana-Wilhelmina von Brandenstein-Zeppelin de la Fontaine";
    for (const char* part : {"Lower back", "Blood pressure", "Left shoulder"}) {
        paper.cautions.push_back(
            {part,
             "Brace before each repetition, no held breath, no bar below the knee until the doctor has seen the picture of last spring."});
    }
    for (chalk::direction::PlanWeek& week : paper.plan.plan.weeks) {
        for (chalk::direction::PlannedWork& work : week.work[0]) {
            work.scheme.rest = base::Seconds(30);
            work.scheme.sets = base::Sets(10);
            work.scheme.reps = base::Reps(10);
            work.repsMost = base::Reps(12);
            work.isPauseAsked = true;
        }
    }
    return paper;
}

QString flowing(QString text)
{
    return text.replace(QRegularExpression(QStringLiteral("\\s+")), QStringLiteral(" "));
}

}  // namespace

TEST(PlanSheet, NothingClipsOrOverlaps)
{
    for (const Direction direction : chalk::direction::kDirections) {
        for (const auto& [weeks, exposures] : {std::pair(8, 1), std::pair(12, 2), std::pair(16, 3)}) {
            const std::string what = std::string(chalk::direction::keyOf(direction)) + " " + std::to_string(weeks);
            const auto sheets = planSheets(paperOf(direction, weeks, exposures), PaperSize::A4);
            test::expectSheetsSound(sheets, millimetresOf(PaperSize::A4), what);
            EXPECT_FALSE(textOf(sheets).contains(QChar(0x2026))) << what << ": something is cut";
        }
    }
    for (const PaperSize size : {PaperSize::A4, PaperSize::Letter}) {
        test::expectSheetsSound(planSheets(crowdedPaper(), size), millimetresOf(size), "crowded");
    }
    test::expectSheetsSound(planSheets(paperOf(Direction::Strength, 12, 2), PaperSize::Letter), millimetresOf(PaperSize::Letter), "Letter");
}

// 80 per cent of 104 kg are 83.2, of which the bar takes 82.5; 75 per cent of 40 lb are 30. A light day is 80 per cent of the heavy
// one's 82.
TEST(PlanSheet, SaysWhatIsToBeDoneAtLoadsThatCanBeSetUp)
{
    const QString text = textOf(planSheets(paperOf(Direction::Strength, 12, 2), PaperSize::A4));
    for (const char* words : {"Ketch Lane Studio", "Joaquin Ferro", "single 104 kg, tested", "single not known yet", "82.5 kg", "2 × 30 lb",
                              "4 × 4", "65.6", "3:00", "30 Nov", "lighter", "test, about 102.5 kg", "No cautions", "Day 2"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\nis not in\n" << text.toStdString();
    }
    const QString flow = flowing(text);
    for (const char* words : {"planning figures, not tests", "with Ines", "on the ladder as before: Farmer carry, Pull-up."}) {
        EXPECT_TRUE(flow.contains(QString::fromUtf8(words))) << words;
    }
    for (const QString& caution : common::heavyWorkCautions()) {
        EXPECT_TRUE(flow.contains(caution)) << caution.toStdString();
    }
    EXPECT_FALSE(text.contains(QStringLiteral("Outside of the published ranges")));
    EXPECT_FALSE(text.contains(QStringLiteral("p: a pause")));
}

TEST(PlanSheet, CautionsOfTheClientStandWhiteOnBlack)
{
    PlanPaper paper = paperOf(Direction::Strength, 8, 1);
    paper.cautions = {{"Lower back", "Brace before each repetition."}};
    const Sheet first = planSheets(paper, PaperSize::A4).front();
    const auto label = std::find_if(first.texts.begin(), first.texts.end(), [](const SheetText& text) { return text.isWhite; });
    ASSERT_NE(label, first.texts.end());
    EXPECT_EQ(label->text.toLower(), QStringLiteral("lower back"));
}

TEST(PlanSheet, WhatLeavesAPublishedRangeIsANoteWithItsSource)
{
    PlanPaper paper = paperOf(Direction::Strength, 8, 1);
    paper.plan.plan.weeks[0].work[0][0].scheme.rest = base::Seconds(45);
    paper.plan.plan.weeks[1].work[0][0].scheme.rest = base::Seconds(45);
    paper.plan.plan.weeks[1].work[0][0].scheme.sets = base::Sets(9);
    const PlanNotes notes(paper.plan.plan);
    EXPECT_EQ(notes.marksOf(0, 0, 0), QStringLiteral("1"));
    EXPECT_EQ(notes.marksOf(1, 0, 0), QStringLiteral("2, 1"));
    EXPECT_EQ(notes.marksOf(0, 1, 0), QString());
    const QString flow = flowing(textOf(planSheets(paper, PaperSize::A4)));
    EXPECT_TRUE(flow.contains(QStringLiteral(
        "Outside of the published ranges 1 Rest 0:45; published 2:00–5:00 (Haff and Triplett 2016, table 17.12) 2 Sets 9; published 2–6")))
        << flow.toStdString();
}

TEST(PlanSheet, WeeksThatAreOverSayWhatWasDone)
{
    PlanPaper paper = paperOf(Direction::Strength, 12, 2);
    paper.today = kSheetMonday + 8;
    paper.done[0] = {{kSheetMonday + 1, test::kilos(78), base::Reps(4)}, {kSheetMonday + 1, test::kilos(83.2), base::Reps(4)}};
    const QString text = textOf(planSheets(paper, PaperSize::A4));
    EXPECT_TRUE(text.contains(QStringLiteral("2/8, 78 %"))) << text.toStdString();
    EXPECT_EQ(text.count(QStringLiteral("\n0/")), 2) << "the other two lifts, in the one week that is over";
    EXPECT_FALSE(textOf(planSheets(paperOf(Direction::Strength, 12, 2), PaperSize::A4)).contains(QStringLiteral("/8, ")));
}

TEST(PlanSheet, APauseIsExplainedWhereOneIsAsked)
{
    const QString text = textOf(planSheets(crowdedPaper(), PaperSize::A4));
    EXPECT_TRUE(text.contains(QStringLiteral("p: a pause at the bottom of each repetition.")));
    EXPECT_TRUE(text.contains(QStringLiteral("Day 7")));
}

TEST(PlanSheet, APlanOfThreeLiftsIsOnTwoPages)
{
    EXPECT_EQ(planSheets(paperOf(Direction::Strength, 12, 2), PaperSize::A4).size(), 2U);
    const QString text = textOf(planSheets(paperOf(Direction::Strength, 12, 2), PaperSize::A4));
    EXPECT_TRUE(text.contains(QStringLiteral("page 1 of 2")));
    EXPECT_TRUE(text.contains(QStringLiteral("page 2 of 2")));
}

TEST(PlanSheet, ItsFileIsNamedAfterTheClient)
{
    PlanPaper paper = paperOf(Direction::Strength, 12, 2);
    paper.clientName = "Ana/Lüise O'Neil";
    EXPECT_EQ(planFileName(paper), QStringLiteral("plan-ana-lüise-o-neil-2026-11-30"));
}

TEST(PlanSheet, IsAPlainPdf)
{
    const auto pdfOf = [](PaperSize size) {
        return sheetsPdf(planSheets(crowdedPaper(), size), size, QStringLiteral("Plan"), QDate(2026, 11, 25));
    };
    for (const PaperSize size : {PaperSize::A4, PaperSize::Letter}) {
        const QByteArray pdf = pdfOf(size);
        EXPECT_TRUE(pdf == pdfOf(size));
        const test::PdfFile file(pdf);
        test::expectPlainPdf(file);
        EXPECT_TRUE(file.text().contains(QStringLiteral("Outside of the published ranges")));
    }
}

}  // namespace chalk::ui::print
