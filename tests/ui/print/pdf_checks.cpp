#include "tests/ui/print/pdf_checks.h"

#include "ui/print/sheet_printing.h"

#include <QProcess>
#include <QRegularExpression>

#include <gtest/gtest.h>

namespace chalk::test {

QString outputOf(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(20000) && process.exitCode() == 0)
        << program.toStdString() << ": " << process.readAllStandardError().toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

std::string say(const QString& text)
{
    return text.toStdString();
}

PdfFile::PdfFile(const QByteArray& pdf)
{
    EXPECT_EQ(ui::print::savePdf(path(), pdf), std::nullopt);
}

QString PdfFile::text() const
{
    return outputOf(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path(), QStringLiteral("-")});
}

int PdfFile::pages() const
{
    static const QRegularExpression pages(QStringLiteral("Pages: +(\\d+)"));
    return pages.match(outputOf(QStringLiteral("pdfinfo"), {path()})).captured(1).toInt();
}

QImage PdfFile::raster(int page) const
{
    const QString number = QString::number(page);
    const QString image = path(QStringLiteral("page-%1").arg(page));
    (void)outputOf(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QStringLiteral("150"), QStringLiteral("-f"), number, QStringLiteral("-l"), number,
                                                QStringLiteral("-png"), QStringLiteral("-singlefile"), path(), image});
    return QImage(image + QStringLiteral(".png"));
}

QStringList PdfFile::codes(int page) const
{
    EXPECT_FALSE(raster(page).isNull());
    const QString read = outputOf(QStringLiteral("zbarimg"), {QStringLiteral("--nodbus"), QStringLiteral("-q"), QStringLiteral("--raw"),
                                                              path(QStringLiteral("page-%1.png").arg(page))});
    QStringList codes = read.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    codes.sort();
    return codes;
}

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

void expectPlainPdf(const PdfFile& file)
{
    const QStringList lines = outputOf(QStringLiteral("pdffonts"), {file.path()}).split(QLatin1Char('\n'), Qt::SkipEmptyParts).mid(2);
    EXPECT_GE(lines.size(), 2);
    for (const QString& line : lines) {
        EXPECT_TRUE(line.contains(QLatin1String("InterTab"))) << say(line);
        const QStringList columns = line.simplified().split(QLatin1Char(' '));
        EXPECT_EQ(columns.value(columns.size() - 5), QStringLiteral("yes")) << "embedded: " << say(line);
        EXPECT_EQ(columns.value(columns.size() - 3), QStringLiteral("yes")) << "with its letters: " << say(line);
    }
    const QString images = outputOf(QStringLiteral("pdfimages"), {QStringLiteral("-list"), file.path()});
    EXPECT_EQ(images.split(QLatin1Char('\n'), Qt::SkipEmptyParts).size(), 2) << "only the head of the table: " << say(images);
    const QImage raster = file.raster();
    EXPECT_FALSE(raster.isNull());
    EXPECT_EQ(colouredPixels(raster), 0);
}

}  // namespace chalk::test
