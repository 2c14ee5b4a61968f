#include "ui/print/card_printing.h"
#include "ui/print/sheet_printing.h"

#include "tests/ui/print/card_fixture.h"
#include "tests/ui/print/pdf_reading.h"
#include "ui/print/card_preview.h"
#include "ui/print/qr_code.h"

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QPrinter>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace chalk::ui::print {

namespace {

using sessions::CardContent;
using test::outputOf;

const QDate kPrintDay(2026, 11, 24);

QByteArray pdfOf(const std::vector<CardContent>& cards, PaperSize paper = PaperSize::A5)
{
    return cardsPdf(cards, paper, kPrintDay);
}

/// A PDF in a folder of its own.
class PdfFile {
public:
    explicit PdfFile(const QByteArray& pdf) { EXPECT_EQ(savePdf(path(), pdf), std::nullopt); }

    [[nodiscard]] QString path(const QString& name = QStringLiteral("cards.pdf")) const { return m_folder.filePath(name); }
    [[nodiscard]] QString text() const { return outputOf(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path(), QStringLiteral("-")}); }

private:
    QTemporaryDir m_folder;
};

std::string say(const QString& text)
{
    return text.toStdString();
}

/// How much of an image is neither black nor white nor a grey between them, as the edges of letters are.
int colouredPixels(const QImage& image)
{
    int coloured = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QRgb pixel = image.pixel(x, y);
            coloured += qRed(pixel) != qGreen(pixel) || qGreen(pixel) != qBlue(pixel) ? 1 : 0;
        }
    }
    return coloured;
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
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\nis not in\n" << say(text);
    }
}

TEST(CardPrinting, FontsAreEmbedded)
{
    const PdfFile file(pdfOf({test::ferroCard()}));
    const QStringList lines = outputOf(QStringLiteral("pdffonts"), {file.path()}).split(QLatin1Char('\n'), Qt::SkipEmptyParts).mid(2);
    EXPECT_GE(lines.size(), 4);
    for (const QString& line : lines) {
        EXPECT_TRUE(line.contains(QLatin1String("InterTab"))) << say(line);
        const QStringList columns = line.simplified().split(QLatin1Char(' '));
        EXPECT_EQ(columns.value(columns.size() - 5), QStringLiteral("yes")) << "embedded: " << say(line);
        EXPECT_EQ(columns.value(columns.size() - 3), QStringLiteral("yes")) << "with its letters: " << say(line);
    }
}

TEST(CardPrinting, PagesHaveTheSizeOfThePaper)
{
    const QString a5 = outputOf(QStringLiteral("pdfinfo"), {PdfFile(pdfOf({test::crowdedCard()})).path()});
    EXPECT_TRUE(a5.contains(QLatin1String("Pages:           2"))) << say(a5);
    EXPECT_TRUE(a5.contains(QLatin1String("419 x 595 pts")) || a5.contains(QLatin1String("420 x 595 pts"))) << say(a5);
    EXPECT_TRUE(a5.contains(QLatin1String("Nov 24 "))) << say(a5);
    const QString half = outputOf(QStringLiteral("pdfinfo"), {PdfFile(pdfOf({test::ferroCard()}, PaperSize::HalfLetter)).path()});
    EXPECT_TRUE(half.contains(QLatin1String("396 x 612 pts"))) << say(half);
}

TEST(CardPrinting, TheCodeIsReadFromARasterOf150DotsToTheInch)
{
    const PdfFile file(pdfOf({test::ferroCard()}));
    outputOf(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QStringLiteral("150"), QStringLiteral("-png"), QStringLiteral("-singlefile"), file.path(),
                                          file.path(QStringLiteral("card"))});
    const QString code = outputOf(QStringLiteral("zbarimg"), {QStringLiteral("--nodbus"), QStringLiteral("-q"), QStringLiteral("--raw"), file.path(QStringLiteral("card.png"))});
    EXPECT_EQ(say(code.trimmed()), "CR1 K7QMX2PARW");
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
    EXPECT_TRUE(pages.contains(QLatin1String("Pages:           3"))) << say(pages);
    EXPECT_TRUE(pages.contains(QLatin1String("419 x 595 pts")) || pages.contains(QLatin1String("420 x 595 pts"))) << say(pages);
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
