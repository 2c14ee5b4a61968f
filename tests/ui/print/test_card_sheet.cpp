#include "ui/print/card_sheet.h"

#include "tests/ui/print/card_fixture.h"
#include "tests/ui/print/sheet_checks.h"

#include <gtest/gtest.h>

namespace chalk::ui::print {

namespace {

using progression::Stage;
using sessions::CardContent;
using test::expectSound;
using test::textOf;

bool says(const std::vector<Sheet>& sheets, const char* text)
{
    return textOf(sheets).contains(QString::fromUtf8(text));
}

CardContent cardOfLifts(int lifts)
{
    CardContent card = test::ferroCard();
    card.lifts.clear();
    for (int i = 0; i < lifts; ++i) {
        card.lifts.push_back(test::workLift("Lift " + std::to_string(i + 1), Stage::RepBuild, 60, 3, 8, 8));
    }
    return card;
}

}  // namespace

TEST(CardSheet, NothingClipsOrOverlaps)
{
    expectSound(test::ferroCard(), "usual");
    expectSound(test::crowdedCard(), "crowded");
    expectSound(cardOfLifts(0), "no lifts");
    expectSound(cardOfLifts(1), "one lift");
}

TEST(CardSheet, NothingClipsWithAnyNumberOfSets)
{
    for (const int sets : {0, 1, 6, 7, 8, 14, 21, 22, 50}) {
        CardContent card = cardOfLifts(5);
        for (sessions::CardLift& lift : card.lifts) {
            lift.sets = sets;
        }
        expectSound(card, std::to_string(sets) + " sets");
    }
}

TEST(CardSheet, MoreThanFiveLiftsGoToFurtherCards)
{
    EXPECT_EQ(cardSheets(cardOfLifts(0), PaperSize::A5).size(), 1U);
    EXPECT_EQ(cardSheets(cardOfLifts(5), PaperSize::A5).size(), 1U);
    for (const auto& [lifts, sheets] : {std::pair(6, 2U), std::pair(8, 2U), std::pair(10, 2U), std::pair(11, 3U)}) {
        const auto all = cardSheets(cardOfLifts(lifts), PaperSize::A5);
        EXPECT_EQ(all.size(), sheets) << lifts;
        for (int i = 1; i <= lifts; ++i) {
            EXPECT_TRUE(says(all, ("Lift " + std::to_string(i)).c_str())) << i;
        }
    }
    EXPECT_TRUE(says(cardSheets(cardOfLifts(8), PaperSize::A5), "card 2 of 2"));
}

TEST(CardSheet, CautionsAreOnEverySheetAndWhole)
{
    const CardContent card = test::crowdedCard();
    for (const PaperSize paper : {PaperSize::A5, PaperSize::HalfLetter}) {
        for (const Sheet& sheet : cardSheets(card, paper)) {
            const QString text = textOf({sheet}).replace(QLatin1Char('\n'), QLatin1Char(' '));
            for (const sessions::CardCaution& caution : card.cautions) {
                EXPECT_TRUE(text.contains(QString::fromStdString(caution.text))) << caution.text;
                EXPECT_TRUE(text.contains(QString::fromStdString(caution.label).toUpper())) << caution.label;
            }
        }
    }
}

TEST(CardSheet, LongCautionsTakeTheWarmUpsRoomThenALift)
{
    CardContent card = test::ferroCard();
    EXPECT_TRUE(says(cardSheets(card, PaperSize::A5), "Warm-up"));
    std::string text;
    for (int i = 0; i < 12; ++i) {
        text += "No loaded rounding and no twisting. ";
    }
    card.cautions = {{"Back", text}, {"Knee", text}, {"Neck", text}};
    const auto sheets = cardSheets(card, PaperSize::A5);
    EXPECT_GT(sheets.size(), 1U);
    EXPECT_FALSE(says(sheets, "Warm-up"));
    for (const char* kept : {"77.5", "60", "47.5", "2 × 12", "28", "1:15", "25 + 2.5 + 1.25"}) {
        EXPECT_TRUE(says(sheets, kept)) << kept;
    }
    expectSound(card, "long cautions");
}

TEST(CardSheet, LoadsAndRepsAreNeverLeftOutOrCut)
{
    const auto sheets = cardSheets(test::crowdedCard(), PaperSize::HalfLetter);
    for (const char* kept : {"1127.5", "2 × 127.25", "27.5", "12", "5–10", "36 s", "14"}) {
        EXPECT_TRUE(textOf(sheets).split(QLatin1Char('\n')).contains(QString::fromUtf8(kept))) << kept;
    }
    EXPECT_TRUE(says(sheets, "4×45+25+10+5+2.5+1.25") || says(sheets, "4 × 45 + 25 + 10 + 5 + 2.5 + 1.25"));
}

TEST(CardSheet, EveryLiftHasItsBoxes)
{
    CardContent card = cardOfLifts(1);
    const auto boxes = [&card] { return cardSheets(card, PaperSize::A5)[0].boxes.size(); };
    // A caution, two pills, the pain box and the frame of the reps are five.
    EXPECT_EQ(boxes(), 5U + 3 + 2);
    card.lifts[0].sets = 6;
    EXPECT_EQ(boxes(), 5U + 6 + 2);
    card.lifts[0].kind = progression::PrescriptionKind::Rehearse;
    card.lifts[0].stage = Stage::Pattern;
    EXPECT_EQ(boxes(), 4U + 3);
    card.lifts[0].stage = Stage::Control;
    EXPECT_EQ(boxes(), 5U + 5) << "the pause is framed";
    card.lifts[0].kind = progression::PrescriptionKind::Hold;
    EXPECT_EQ(boxes(), 4U + 1);
}

}  // namespace chalk::ui::print
