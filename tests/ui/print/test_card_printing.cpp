#include "ui/print/card_printing.h"
#include "ui/print/sheet_printing.h"

#include "tests/ui/print/card_fixture.h"
#include "tests/ui/print/pdf_checks.h"
#include "ui/print/card_preview.h"
#include "ui/print/qr_code.h"

#include <QImage>
#include <QPainter>
#include <QPrinter>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace chalk::ui::print {

namespace {

using sessions::CardContent;
using test::colouredPixels;
using test::outputOf;
using test::PdfFile;

const QDate kPrintDay(2026, 11, 24);

QByteArray pdfOf(const std::vector<CardContent>& cards, PaperSize paper = PaperSize::A5)
{
    return cardsPdf(cards, paper, kPrintDay);
}

double blackShare(const QImage& image)
{
    std::int64_t black = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            black += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
        }
    }
    return static_cast<double>(black) / (image.width() * image.height());
}

QImage paintedCard(const CardContent& card)
{
    QImage image(592, 840, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintCard(painter, card, PaperSize::A5, image.rect());
    return image;
}

}  // namespace

TEST(CardPrinting, TheSameCardsAreTheSameBytes)
{
    const std::vector<CardContent> cards{test::ferroCard(), test::crowdedCard()};
    EXPECT_TRUE(pdfOf(cards) == pdfOf(cards));
    CardContent other = test::ferroCard();
    other.lifts[0].load = base::Load::fromCenti(8000);
    EXPECT_FALSE(pdfOf({other}) == pdfOf({test::ferroCard()}));
}

TEST(CardPrinting, TextComesOutOfThePdf)
{
    const QString text = PdfFile(pdfOf({test::ferroCard()})).text();
    for (const char* words : {"Joaquin Ferro", "Tue 24 Nov 2026, 09:00 · Ines · Rack 1", "Stop with 2 reps left. The framed number moves today.", "BACK",
                              "No loaded rounding. Hinge under 120 kg.", "1. Back squat", "Rep build, cycle 2", "77.5 kg", "3 × 8", "60 kg", "5 × 8",
                              "rest 2:30 · each side 25 + 2.5 + 1.25", "2 × 12 kg", "3 × 5–10", "3 × 20–40 m", "Pain 0–10", "session 58"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\nis not in\n" << test::say(text);
    }
}

TEST(CardPrinting, FontsAreEmbedded)
{
    test::expectPlainPdf(PdfFile(pdfOf({test::ferroCard()})));
}

TEST(CardPrinting, PagesHaveTheSizeOfThePaper)
{
    const QString a5 = outputOf(QStringLiteral("pdfinfo"), {PdfFile(pdfOf({test::crowdedCard()})).path()});
    EXPECT_TRUE(a5.contains(QLatin1String("Pages:           2"))) << test::say(a5);
    EXPECT_TRUE(a5.contains(QLatin1String("419 x 595 pts")) || a5.contains(QLatin1String("420 x 595 pts"))) << test::say(a5);
    EXPECT_TRUE(a5.contains(QLatin1String("Nov 24 "))) << test::say(a5);
    const QString half = outputOf(QStringLiteral("pdfinfo"), {PdfFile(pdfOf({test::ferroCard()}, PaperSize::HalfLetter)).path()});
    EXPECT_TRUE(half.contains(QLatin1String("396 x 612 pts"))) << test::say(half);
}

TEST(CardPrinting, TheCodeIsReadFromARasterOf150DotsToTheInch)
{
    EXPECT_EQ(PdfFile(pdfOf({test::ferroCard()})).codes(), QStringList(QStringLiteral("CR1 K7QMX2PARW")));
}

TEST(CardPrinting, TheCodeTellsNothingButTheSession)
{
    EXPECT_EQ(codeText("K7QMX2PARW"), QByteArray("CR1 K7QMX2PARW"));
    EXPECT_TRUE(qrCode(QByteArray(200, 'a'), {0, 0, 19, 19}).has_value());
    EXPECT_FALSE(qrCode(QByteArray(5000, 'a'), {0, 0, 19, 19}).has_value()) << "longer than any code holds";
    CardContent card = test::ferroCard();
    card.sessionCode.clear();
    EXPECT_FALSE(pdfOf({card}).isEmpty());
}

TEST(CardPrinting, PreviewAndPaperAreBlackOnWhite)
{
    const QImage image = paintedCard(test::ferroCard());
    EXPECT_EQ(colouredPixels(image), 0);
    EXPECT_GT(blackShare(image), 0.04);
    EXPECT_LT(blackShare(image), 0.25);
}

TEST(CardPrinting, APrinterGetsTheSamePages)
{
    QTemporaryDir folder;
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(QStringLiteral("printed.pdf")));
    const std::vector<CardContent> cards{test::ferroCard(), test::crowdedCard()};
    ASSERT_TRUE(printCards(printer, cards, PaperSize::A5));
    const QString pages = outputOf(QStringLiteral("pdfinfo"), {printer.outputFileName()});
    EXPECT_TRUE(pages.contains(QLatin1String("Pages:           3"))) << test::say(pages);
    EXPECT_TRUE(pages.contains(QLatin1String("419 x 595 pts")) || pages.contains(QLatin1String("420 x 595 pts"))) << test::say(pages);
}

TEST(CardPrinting, AFileThatCannotBeWrittenIsSaid)
{
    QTemporaryDir folder;
    EXPECT_TRUE(savePdf(folder.filePath(QStringLiteral("no/such/folder/cards.pdf")), "x").has_value());
    EXPECT_TRUE(savePdf(folder.path(), "x").has_value()) << "a folder";
}

TEST(CardPreview, ShowsTheSheetsOfACard)
{
    CardPreview preview;
    preview.resize(296, 420);
    EXPECT_EQ(preview.sheetCount(), 0);
    EXPECT_EQ(preview.heightForWidth(148), 210);
    preview.setCard(test::crowdedCard());
    EXPECT_EQ(preview.sheetCount(), 2);
    const QImage first = preview.grab().toImage();
    preview.setSheet(7);
    EXPECT_EQ(preview.sheet(), 1) << "kept inside the card";
    EXPECT_NE(first, preview.grab().toImage());
    EXPECT_TRUE(preview.accessibleDescription().contains(QLatin1String("Wilhelmina")));
    preview.setCard(test::ferroCard());
    EXPECT_EQ(preview.sheet(), 0);
    preview.clear();
    EXPECT_EQ(preview.sheetCount(), 0);
    EXPECT_TRUE(preview.accessibleDescription().isEmpty());
}

}  // namespace chalk::ui::print
