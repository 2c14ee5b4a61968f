#include "ui/print/quarter_sheet.h"

#include "tests/ui/print/card_fixture.h"
#include "tests/ui/print/pdf_checks.h"
#include "tests/ui/print/sheet_checks.h"
#include "ui/print/print_text.h"
#include "ui/print/sheet_printing.h"

#include <QDate>

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using sessions::CardContent;
using test::textOf;

void expectQuartersSound(const std::vector<CardContent>& cards, const std::string& what)
{
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        test::expectSheetsSound(quarterSheets(cards, paper), millimetresOf(paper), what);
    }
}

CardContent quarterOf(int lifts, int sets)
{
    CardContent card = test::ferroCard();
    card.lifts.clear();
    for (int i = 0; i < lifts; ++i) {
        card.lifts.push_back(test::workLift("Lift " + std::to_string(i + 1), progression::Stage::RepBuild, 60, sets, 8, 8));
    }
    return card;
}

/// The largest size that a text is printed in, in points; 0 where it is not there.
double pointsOfText(const std::vector<Sheet>& sheets, const QString& wanted)
{
    double points = 0;
    for (const Sheet& sheet : sheets) {
        for (const SheetText& text : sheet.texts) {
            points = text.text == wanted ? std::max(points, pointsOf(text.font)) : points;
        }
    }
    return points;
}

}  // namespace

TEST(QuarterSheet, NothingClipsOrOverlaps)
{
    expectQuartersSound({test::ferroCard()}, "usual");
    expectQuartersSound({test::crowdedCard(), test::ferroCard(), test::crowdedCard()}, "crowded");
    expectQuartersSound({quarterOf(0, 0)}, "no lifts");
    for (const int sets : {0, 1, 6, 7, 8, 14, 21, 22, 50}) {
        expectQuartersSound({quarterOf(5, sets)}, std::to_string(sets) + " sets");
    }
}

TEST(QuarterSheet, FourUsualCardsShareASheetWithLoadAndRepsOf18Points)
{
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        const auto sheets = quarterSheets(std::vector<CardContent>(4, test::ferroCard()), paper);
        EXPECT_EQ(sheets.size(), 1U);
        for (const char* number : {"77.5", "8", "60", "5", "2 × 12"}) {
            EXPECT_NEAR(pointsOfText(sheets, QString::fromUtf8(number)), 18, 0.1) << number;
        }
        EXPECT_EQ(textOf(sheets).count(QStringLiteral("Joaquin Ferro")), 4);
    }
    EXPECT_EQ(quarterSheets(std::vector<CardContent>(5, test::ferroCard()), PaperSize::A4).size(), 2U);
    EXPECT_TRUE(quarterSheets({}, PaperSize::A4).empty());
}

TEST(QuarterSheet, WhatDoesNotGoIntoAQuarterGoesOnInTheNext)
{
    const CardContent card = quarterOf(8, 3);
    EXPECT_EQ(quarterCount(card, PaperSize::A4), 2);
    const QString text = textOf(quarterSheets(std::vector<CardContent>{card}, PaperSize::A4));
    for (int i = 1; i <= 8; ++i) {
        EXPECT_TRUE(text.contains(QStringLiteral("Lift %1\n").arg(i))) << i;
    }
    EXPECT_TRUE(text.contains(QStringLiteral("card 2 of 2")));
    EXPECT_EQ(text.count(QStringLiteral("Joaquin Ferro")), 2);
}

TEST(QuarterSheet, TheWarmUpStandsWhereThereIsRoomAndGoesFirstWhereThereIsNone)
{
    const auto withWarmUps = [](int lifts, int sets) {
        CardContent card = quarterOf(lifts, sets);
        for (sessions::CardLift& lift : card.lifts) {
            lift.warmUp = {{base::Load::fromCenti(2000), 8}, {base::Load::fromCenti(4000), 5}, {base::Load::fromCenti(5000), 2}};
        }
        return card;
    };
    const auto countOf = [](const CardContent& card) {
        return textOf(quarterSheets(std::vector<CardContent>{card}, PaperSize::A4)).count(QStringLiteral("warm up"));
    };
    EXPECT_EQ(countOf(withWarmUps(4, 3)), 4);
    CardContent without = quarterOf(4, 3);
    for (sessions::CardLift& lift : without.lifts) {
        lift.warmUp.clear();
    }
    EXPECT_EQ(countOf(without), 0);
    for (int lifts = 1; lifts <= 12; ++lifts) {
        const CardContent card = withWarmUps(lifts, 3);
        EXPECT_EQ(quarterCount(card, PaperSize::A4), quarterCount(quarterOf(lifts, 3), PaperSize::A4)) << "a warm-up costs no quarter";
        expectQuartersSound({card}, std::to_string(lifts) + " lifts with warm-ups");
    }
    EXPECT_GT(countOf(withWarmUps(5, 3)), 0);
    EXPECT_LT(countOf(withWarmUps(5, 3)), 5);
}

TEST(QuarterSheet, LoadsRepsAndCautionsAreWhole)
{
    const CardContent card = test::crowdedCard();
    const QString text = textOf(quarterSheets(std::vector<CardContent>{card}, PaperSize::Letter));
    for (const char* kept : {"1127.5", "2 × 127.25", "27.5", "12", "5–10", "36 s", "14"}) {
        EXPECT_TRUE(text.split(QLatin1Char('\n')).contains(QString::fromUtf8(kept))) << kept;
    }
    const QString flowing = QString(text).replace(QLatin1Char('\n'), QLatin1Char(' '));
    for (const sessions::CardCaution& caution : card.cautions) {
        EXPECT_TRUE(flowing.contains(QString::fromStdString(caution.text))) << caution.text;
    }
    EXPECT_TRUE(text.contains(QStringLiteral("pause"))) << "a pause that is asked for is part of the work";
}

TEST(QuarterSheet, PlatesGoBeforeTheyAreCut)
{
    CardContent card = test::ferroCard();
    card.lifts = {test::crowdedCard().lifts[0]};
    const QString text = textOf(quarterSheets(std::vector<CardContent>{card}, PaperSize::A4));
    EXPECT_FALSE(text.contains(QChar(0x2026))) << text.toStdString();
}

TEST(QuarterSheet, AllFourCodesAreReadFromARasterOf150DotsToTheInch)
{
    std::vector<CardContent> cards(4, test::ferroCard());
    const char* const kept[] = {"7HJ2KM9QRT", "B3XWYZ4NPD", "K7QMX2PARW", "ZZTOP12345"};
    for (std::size_t i = 0; i < cards.size(); ++i) {
        cards[i].sessionCode = kept[i];
    }
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        const auto sheets = quarterSheets(cards, paper);
        const QByteArray pdf = sheetsPdf(sheets, paper, QStringLiteral("Session cards"), QDate(2026, 11, 24));
        EXPECT_TRUE(pdf == sheetsPdf(sheets, paper, QStringLiteral("Session cards"), QDate(2026, 11, 24)));
        const test::PdfFile file(pdf);
        EXPECT_EQ(file.codes(), (QStringList{QStringLiteral("CR1 7HJ2KM9QRT"), QStringLiteral("CR1 B3XWYZ4NPD"), QStringLiteral("CR1 K7QMX2PARW"),
                                             QStringLiteral("CR1 ZZTOP12345")}));
        test::expectPlainPdf(file);
        EXPECT_TRUE(file.text().contains(QStringLiteral("Joaquin Ferro")));
    }
}

}  // namespace chalk::ui::print
