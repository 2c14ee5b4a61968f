#include "ui/print/week_sheet.h"

#include "tests/ui/print/card_fixture.h"
#include "tests/ui/print/pdf_checks.h"
#include "tests/ui/print/sheet_checks.h"
#include "ui/print/sheet_printing.h"

#include <QDate>

#include <gtest/gtest.h>

namespace chalk::ui::print {

namespace {

using sessions::CardContent;
using test::textOf;

const base::Date kAsOf = *base::Date::parse("2026-11-23");

/// `days` sessions of one client, from the card's day on, each with a code of its own.
std::vector<CardContent> weekOf(const CardContent& like, int days)
{
    const char* const codes[] = {"7HJ2KM9QRT", "B3XWYZ4NPD", "K7QMX2PARW", "ZZTOP12345", "QQTOP12345"};
    std::vector<CardContent> cards;
    for (int i = 0; i < days; ++i) {
        cards.push_back(like);
        cards.back().date = like.date + i;
        cards.back().sessionCode = codes[i % 5];
    }
    return cards;
}

}  // namespace

TEST(WeekSheet, NothingClipsOrOverlaps)
{
    CardContent none = test::ferroCard();
    none.lifts.clear();
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        for (const int days : {1, 3, 5}) {
            for (const CardContent& card : {test::ferroCard(), test::crowdedCard(), none}) {
                test::expectSheetsSound(weekSheets(weekOf(card, days), paper, kAsOf), millimetresOf(paper), card.clientName + ", days: " + std::to_string(days));
            }
        }
    }
    EXPECT_TRUE(weekSheets({}, PaperSize::A4, kAsOf).empty());
}

TEST(WeekSheet, ThreeUsualSessionsShareAPage)
{
    const auto sheets = weekSheets(weekOf(test::ferroCard(), 3), PaperSize::A4, kAsOf);
    EXPECT_EQ(sheets.size(), 1U);
    const QString text = textOf(sheets);
    for (const char* words : {"Joaquin Ferro", "Week 48, 23 Nov – 29 Nov 2026", "numbers as of Mon 23 Nov", "Tue 24 Nov 2026, 09:00 · Ines · Rack 1",
                              "Thu 26 Nov 2026, 09:00 · Ines · Rack 1", "No loaded rounding. Hinge under 120 kg."}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\nis not in\n" << text.toStdString();
    }
    EXPECT_EQ(text.count(QStringLiteral("77.5\n")), 3);
}

TEST(WeekSheet, ASessionThatNoPageHoldsGoesOnAndNothingIsLost)
{
    CardContent card = test::ferroCard();
    card.lifts.clear();
    for (int i = 0; i < 40; ++i) {
        card.lifts.push_back(test::workLift("Lift no " + std::to_string(i + 1), progression::Stage::RepBuild, 60, 3, 8, 8));
    }
    const auto sheets = weekSheets(weekOf(card, 1), PaperSize::A4, kAsOf);
    EXPECT_GT(sheets.size(), 1U);
    const QString text = textOf(sheets);
    for (int i = 1; i <= 40; ++i) {
        EXPECT_EQ(text.count(QStringLiteral("Lift no %1\n").arg(i)), 1) << i;
    }
    EXPECT_TRUE(text.contains(QStringLiteral("(goes on)")));
}

TEST(WeekSheet, EverySessionsCodeIsReadAndThePdfIsPlain)
{
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        const auto sheets = weekSheets(weekOf(test::ferroCard(), 3), paper, kAsOf);
        const QByteArray pdf = sheetsPdf(sheets, paper, QStringLiteral("Week sheets"), QDate(2026, 11, 24));
        EXPECT_TRUE(pdf == sheetsPdf(weekSheets(weekOf(test::ferroCard(), 3), paper, kAsOf), paper, QStringLiteral("Week sheets"), QDate(2026, 11, 24)));
        const test::PdfFile file(pdf);
        test::expectPlainPdf(file);
        QStringList codes;
        for (int page = 1; page <= file.pages(); ++page) {
            codes += file.codes(page);
        }
        codes.sort();
        EXPECT_EQ(codes, (QStringList{QStringLiteral("CR1 7HJ2KM9QRT"), QStringLiteral("CR1 B3XWYZ4NPD"), QStringLiteral("CR1 K7QMX2PARW")}));
        EXPECT_TRUE(file.text().contains(QStringLiteral("Joaquin Ferro")));
    }
}

}  // namespace chalk::ui::print
