#include "ui/board/fitted_text.h"

#include "ui/common/look.h"

#include <QFontMetricsF>

#include <gtest/gtest.h>

namespace chalk::ui::board {

class FittedTextTest : public ::testing::TestWithParam<const char*> {
protected:
    const common::Look m_look;
};

TEST_P(FittedTextTest, ALineNeverLeavesItsWidth)
{
    const QString text = QString::fromUtf8(GetParam());
    for (const double width : {30.0, 64.0, 79.0, 120.0}) {
        for (const int most : {1, 2, 3}) {
            const FittedLines lines = fittedLines(text, width, most, m_look.theme(), {13, 12}, QFont::DemiBold);
            EXPECT_LE(lines.lines.size(), most);
            for (const QString& line : lines.lines) {
                EXPECT_LE(QFontMetricsF(lines.font).horizontalAdvance(line), width) << line.toStdString();
            }
        }
        const FittedText one = fitted(text, width, m_look.theme(), {16, 14, 12}, QFont::Bold);
        EXPECT_LE(QFontMetricsF(one.font).horizontalAdvance(one.text), width);
        EXPECT_GE(one.font.pixelSize(), static_cast<int>(kLeastTextPx));
    }
}

INSTANTIATE_TEST_SUITE_P(Names, FittedTextTest,
                         ::testing::Values("Back squat", "Chest-supported row", "Rear-foot-elevated split squat with a safety bar",
                                           "Kniebeugenvorübungsschlittenschub", "2 × 102.5 kg", "-", ""));

TEST(FittedText, ALineIsNarrowedBeforeItIsCut)
{
    const common::Look look;
    const QString text = QString::fromUtf8("2 × 20–40 m");
    const QFont plain = look.theme().font(12, QFont::Medium);
    const double wanted = QFontMetricsF(plain).horizontalAdvance(text);
    const FittedText narrowed = fitted(text, wanted * 0.9, look.theme(), {13, 12}, QFont::Medium);
    EXPECT_EQ(narrowed.text, text);
    EXPECT_EQ(narrowed.font.pixelSize(), plain.pixelSize());
    EXPECT_LE(QFontMetricsF(narrowed.font).horizontalAdvance(text), wanted * 0.9);
    EXPECT_NE(fitted(text, wanted * 0.5, look.theme(), {13, 12}, QFont::Medium).text, text);
}

TEST(FittedText, ANameIsBrokenWhereNothingIsLost)
{
    const common::Look look;
    const FittedLines lines = fittedLines(QStringLiteral("Chest-supported row"), 80, 3, look.theme(), {13, 12}, QFont::DemiBold);
    EXPECT_EQ(lines.lines.join(QLatin1Char('|')), QStringLiteral("Chest-|supported|row"));
}

}  // namespace chalk::ui::board
