#include "ui/print/group_sheet.h"

#include "tests/ui/print/card_fixture.h"
#include "tests/ui/print/pdf_checks.h"
#include "tests/ui/print/sheet_checks.h"
#include "ui/print/sheet_printing.h"

#include <QDate>

#include <gtest/gtest.h>

namespace chalk::ui::print {

namespace {

using planning::GroupSession;
using sessions::CardContent;
using test::textOf;

/// `count` cards of one slot with names of their own.
std::vector<CardContent> slotCards(std::size_t count, const CardContent& like)
{
    const char* const names[] = {"Joaquin Ferro", "Adaeze Quill", "Callum Strand", "Lars Pemberley", "Tove Aldane", "Osric Bell"};
    std::vector<CardContent> cards;
    for (std::size_t i = 0; i < count; ++i) {
        cards.push_back(like);
        cards.back().clientName = names[i];
        for (sessions::CardLift& lift : cards.back().lifts) {
            lift.station = lift.isOnBar ? lifts::Station::Rack : lifts::Station::Floor;
        }
    }
    return cards;
}

GroupSession groupOf(std::size_t count, const CardContent& like = test::ferroCard())
{
    return planning::groupSessionOf(slotCards(count, like), planning::usualStations());
}

void expectGroupSound(const GroupSession& group, const std::string& what)
{
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        test::expectSheetsSound(groupSheets(group, paper), millimetresOf(paper).transposed(), what);
    }
}

}  // namespace

TEST(GroupSheet, NothingClipsOrOverlaps)
{
    for (const std::size_t count : {1U, 2U, 3U, 4U, 6U}) {
        expectGroupSound(groupOf(count), std::to_string(count) + " clients");
    }
    expectGroupSound(groupOf(6, test::crowdedCard()), "6 crowded clients");
    GroupSession longNames = groupOf(3, test::crowdedCard());
    for (planning::GroupMember& member : longNames.members) {
        member.card.clientName = test::crowdedCard().clientName;
    }
    expectGroupSound(longNames, "long names");
    CardContent none = test::ferroCard();
    none.lifts.clear();
    expectGroupSound(groupOf(2, none), "no lifts");
    EXPECT_TRUE(groupSheets({}, PaperSize::A4).empty());
}

TEST(GroupSheet, ThreeUsualClientsShareAPage)
{
    const auto sheets = groupSheets(groupOf(3), PaperSize::A4);
    EXPECT_EQ(sheets.size(), 1U);
    const QString text = textOf(sheets);
    for (const char* words : {"Tuesday 24 November, 09:00", "Joaquin Ferro", "Adaeze Quill", "Callum Strand", "77.5", "28", "Back squat", "BACK",
                              "No loaded rounding. Hinge under 120 kg.", "steady", "Pain 0–10", "9:05 Joaquin"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\nis not in\n" << text.toStdString();
    }
}

TEST(GroupSheet, EveryLiftOfEverybodyIsThereWithItsNumbers)
{
    const auto sheets = groupSheets(groupOf(6, test::crowdedCard()), PaperSize::Letter);
    const QStringList texts = textOf(sheets).split(QLatin1Char('\n'));
    for (const char* number : {"1127.5", "2 × 127.25", "27.5", "5–10", "36 s", "14", "On hold"}) {
        EXPECT_GE(texts.count(QString::fromUtf8(number)), 6) << number;
    }
    const QString flowing = texts.join(QLatin1Char(' '));
    for (const sessions::CardCaution& caution : test::crowdedCard().cautions) {
        EXPECT_TRUE(flowing.contains(QString::fromStdString(caution.label).toUpper())) << caution.label;
    }
}

TEST(GroupSheet, SaysWhoWaitsAndWhetherTheOrderIsProved)
{
    std::vector<CardContent> cards = slotCards(2, test::ferroCard());
    for (CardContent& card : cards) {
        card.lifts.resize(1);
    }
    GroupSession group = planning::groupSessionOf(cards, {{lifts::Station::Rack, 1}});
    QString text = textOf(groupSheets(group, PaperSize::A4));
    EXPECT_TRUE(text.contains(QStringLiteral(" waits "))) << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("not proved")));
    group = planning::groupSessionOf(cards, {{lifts::Station::Rack, 2}});
    group.isProved = false;
    text = textOf(groupSheets(group, PaperSize::A4));
    EXPECT_TRUE(text.contains(QStringLiteral("Nobody waits")));
    EXPECT_TRUE(text.contains(QStringLiteral("not proved")));
}

TEST(GroupSheet, IsAPlainPdfThatLiesAndTheCodeIsRead)
{
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        const GroupSession group = groupOf(3);
        const QByteArray pdf = sheetsPdf(groupSheets(group, paper), paper, QStringLiteral("Group sheet"), QDate(2026, 11, 24));
        EXPECT_TRUE(pdf == sheetsPdf(groupSheets(groupOf(3), paper), paper, QStringLiteral("Group sheet"), QDate(2026, 11, 24)));
        const test::PdfFile file(pdf);
        test::expectPlainPdf(file);
        const QImage page = file.raster();
        EXPECT_GT(page.width(), page.height());
        EXPECT_EQ(file.codes(), QStringList(QStringLiteral("CR1 K7QMX2PARW")));
        EXPECT_TRUE(file.text().contains(QStringLiteral("Adaeze Quill")));
    }
}

}  // namespace chalk::ui::print
