#include "ui/print/print_text.h"

#include "ui/print/runs.h"

#include <QFontInfo>

#include <gtest/gtest.h>

namespace chalk::ui::print {

TEST(PrintText, FontsAreOurOwnAndAsLargeAsAsked)
{
    for (const bool isDisplay : {false, true}) {
        const QFont font = printFont(29, QFont::Bold, isDisplay);
        EXPECT_TRUE(QFontInfo(font).family().startsWith(QLatin1String("Inter Tab"))) << QFontInfo(font).family().toStdString();
        EXPECT_NEAR(pointsOf(font), 29, 0.02);
        EXPECT_NE(font.styleStrategy() & QFont::PreferNoShaping, 0) << "else text does not come out of the PDF";
    }
    // 22 pt are 7.76 mm; a capital of Inter is 0.727 of its size.
    EXPECT_NEAR(capHeightOf(printFont(22, QFont::Bold)), 0.727 * 7.76, 0.1);
}

TEST(PrintText, TextTakesTheLargestSizeThatFits)
{
    const QString name = QStringLiteral("Back squat");
    const double width = widthOf(name, printFont(11, QFont::Bold));
    EXPECT_NEAR(pointsOf(fitted(name, width + 0.1, {12, 11, 10}, QFont::Bold).font), 11, 0.02);
    const FittedPrint cut = fitted(name, width / 2, {12, 11, 10}, QFont::Bold);
    EXPECT_NEAR(pointsOf(cut.font), 10, 0.02);
    EXPECT_TRUE(cut.text.endsWith(QChar(0x2026)));
    EXPECT_LE(widthOf(cut.text, cut.font), width / 2);
}

TEST(PrintText, LinesBreakAtSpacesAndLongWordsInside)
{
    const QFont font = printFont(10, QFont::Normal);
    const QString text = QStringLiteral("No loaded rounding, hinge under one hundred and twenty");
    const QStringList lines = wrapped(text, font, 40);
    EXPECT_GT(lines.size(), 1);
    EXPECT_EQ(lines.join(QLatin1Char(' ')), text) << "nothing is lost";
    const QString word(60, QLatin1Char('m'));
    const QStringList pieces = wrapped(word, font, 40);
    EXPECT_EQ(pieces.join(QString()), word);
    for (const QString& piece : lines + pieces) {
        EXPECT_LE(widthOf(piece, font), 40);
    }
    EXPECT_EQ(wrapped(QString(), font, 40), QStringList(QString()));
    EXPECT_EQ(wrapped(QStringLiteral("abc"), font, 0.1).size(), 3) << "ends even where nothing fits";
}

TEST(PrintRuns, LinesShrinkThenTakeShorterWaysThenAreCut)
{
    const auto way = [](const char* text) { return Runs{{QString::fromUtf8(text), 10, QFont::Normal, false, false, 0}}; };
    const std::vector<Runs> ways{way("each side 25 + 25 + 2.5"), way("each side 2 × 25 + 2.5"), way("side 2×25+2.5")};
    const double width = widthOf(ways[1]);
    EXPECT_EQ(bestFit(ways, 100, 0.8)[0].text, ways[0][0].text);
    EXPECT_EQ(bestFit(ways, width + 0.01, 0.8)[0].text, ways[1][0].text) << "shorter before smaller";
    EXPECT_EQ(bestFit(ways, widthOf(ways[2], 0.8) + 0.01, 0.8)[0].text, ways[2][0].text);
    EXPECT_EQ(bestFit(ways, 1, 0.8)[0].text, ways[2][0].text);
    EXPECT_EQ(scaleToFit(ways[0], 100), 1);
    const double scale = scaleToFit(ways[0], width);
    EXPECT_LT(scale, 1);
    EXPECT_LE(widthOf(ways[0], scale), width);
    EXPECT_LE(widthOf(elided(ways[0], 10, 1)), 10);
}

TEST(PrintText, AWordThatIsTooLongIsBrokenBehindItsHyphen)
{
    const QFont font = printFont(8, QFont::DemiBold);
    const double width = widthOf(QStringLiteral("Chest-rest"), font);
    EXPECT_EQ(wrapped(QStringLiteral("Chest-rested row"), font, width), (QStringList{QStringLiteral("Chest-"), QStringLiteral("rested row")}));
    EXPECT_EQ(wrapped(QStringLiteral("Chest-rested row"), font, 2 * width).front(), QStringLiteral("Chest-rested row"));
}

TEST(PrintRuns, AFrameStandsAroundItsNumberAndTakesItsRoom)
{
    Sheet sheet;
    const Runs runs{{QStringLiteral("3"), 29, QFont::Bold, true, false, 0}, {QStringLiteral("8"), 29, QFont::Bold, true, true, 2}};
    place(sheet, runs, {10, 20, 60, 12});
    ASSERT_EQ(sheet.boxes.size(), 1U);
    ASSERT_EQ(sheet.texts.size(), 2U);
    const QRectF frame = sheet.boxes[0].outside;
    EXPECT_TRUE(frame.contains(sheet.texts[1].baseline));
    EXPECT_FALSE(frame.intersects(sheet.texts[0].cell));
    EXPECT_NEAR(frame.right(), 10 + widthOf(runs), 0.001);
    EXPECT_NEAR(frame.center().y(), 26, 0.001);
}

}  // namespace chalk::ui::print
