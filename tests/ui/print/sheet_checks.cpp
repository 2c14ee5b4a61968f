#include "tests/ui/print/sheet_checks.h"

#include "ui/print/card_sheet.h"
#include "ui/print/print_text.h"

#include <QFontMetricsF>
#include <QPainterPath>

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

using ui::print::kFontUnitsPerMm;
using ui::print::kLeastPoints;
using ui::print::PaperSize;
using ui::print::Sheet;
using ui::print::SheetBox;
using ui::print::SheetRule;
using ui::print::SheetText;
using ui::print::cardSheets;
using ui::print::millimetresOf;
using ui::print::pointsOf;
using ui::print::widthOf;

constexpr double kTolerance = 0.15;  ///< millimetres: round letters reach a little over their lines

/// Where a text really puts ink, in millimetres.
QRectF inkOf(const SheetText& text)
{
    const QRectF ink = QFontMetricsF(text.font).tightBoundingRect(text.text);
    return QRectF(text.baseline + ink.topLeft() / kFontUnitsPerMm, ink.size() / kFontUnitsPerMm);
}

void expectTextsFit(const Sheet& sheet, const std::string& what)
{
    const QRectF page(QPointF(), sheet.size);
    const double margin = 6 - kTolerance;
    const QRectF printable = page.adjusted(margin, margin, -margin, -margin);
    for (const SheetText& text : sheet.texts) {
        const std::string where = what + ": " + text.text.toStdString();
        EXPECT_LE(widthOf(text.text, text.font), text.cell.width() + 0.01) << where;
        EXPECT_GE(pointsOf(text.font), kLeastPoints - 0.02) << where;
        const QRectF ink = inkOf(text);
        EXPECT_TRUE(printable.contains(ink)) << where;
        EXPECT_GE(ink.top(), text.cell.top() - kTolerance) << where;
        EXPECT_LE(ink.bottom(), text.cell.bottom() + kTolerance) << where;
    }
}

void expectNothingOverlaps(const Sheet& sheet, const std::string& what)
{
    for (std::size_t i = 0; i < sheet.texts.size(); ++i) {
        const QRectF ink = inkOf(sheet.texts[i]).adjusted(0.05, 0.05, -0.05, -0.05);
        for (std::size_t j = i + 1; j < sheet.texts.size(); ++j) {
            EXPECT_FALSE(ink.intersects(inkOf(sheet.texts[j])))
                << what << ": " << sheet.texts[i].text.toStdString() << " over " << sheet.texts[j].text.toStdString();
        }
        for (const SheetBox& box : sheet.boxes) {
            const QRectF inside = box.outside.adjusted(box.stroke, box.stroke, -box.stroke, -box.stroke);
            EXPECT_TRUE(inside.contains(ink) || !box.outside.intersects(ink)) << what << ": " << sheet.texts[i].text.toStdString() << " over a line";
        }
        for (const QPainterPath& shape : sheet.shapes) {
            if (sheet.texts[i].isWhite) {
                break;  // it stands on a black shape of its own
            }
            EXPECT_FALSE(shape.boundingRect().intersects(ink) && shape.intersects(ink)) << what << ": " << sheet.texts[i].text.toStdString() << " over a shape";
        }
        for (const SheetRule& rule : sheet.rules) {
            const QRectF line = QRectF(rule.line.p1(), rule.line.p2()).normalized().adjusted(-0.01, -0.01, 0.01, 0.01);
            EXPECT_FALSE(line.intersects(ink)) << what << ": " << sheet.texts[i].text.toStdString() << " over a rule";
        }
    }
}

}  // namespace

void expectSound(const Sheet& sheet, const std::string& what)
{
    expectTextsFit(sheet, what);
    expectNothingOverlaps(sheet, what);
}

void expectSheetsSound(const std::vector<Sheet>& sheets, const QSizeF& size, const std::string& what)
{
    EXPECT_FALSE(sheets.empty()) << what;
    for (const Sheet& sheet : sheets) {
        EXPECT_EQ(sheet.size, size) << what;
        expectSound(sheet, what);
    }
}

void expectSound(const sessions::CardContent& card, const std::string& what)
{
    for (const PaperSize paper : {PaperSize::A5, PaperSize::HalfLetter}) {
        expectSheetsSound(cardSheets(card, paper), millimetresOf(paper), what);
    }
}

QString textOf(const std::vector<Sheet>& sheets)
{
    QStringList texts;
    for (const Sheet& sheet : sheets) {
        for (const SheetText& text : sheet.texts) {
            texts.append(text.text);
        }
    }
    return texts.join(QLatin1Char('\n'));
}

}  // namespace chalk::test
