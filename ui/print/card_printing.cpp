#include "ui/print/card_printing.h"

#include "ui/print/card_sheet.h"
#include "ui/print/pdf_date.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSaveFile>

#include <algorithm>

namespace chalk::ui::print {

namespace {

constexpr int kPdfResolution = 1200;  ///< dots to the inch: the grid that everything is placed on
constexpr double kMmPerInch = 25.4;

using Cards = std::span<const sessions::CardContent>;

std::vector<Sheet> sheetsOf(Cards cards, PaperSize paper)
{
    std::vector<Sheet> sheets;
    for (const sessions::CardContent& card : cards) {
        for (Sheet& sheet : cardSheets(card, paper)) {
            sheets.push_back(std::move(sheet));
        }
    }
    return sheets;
}

/// Cards bring their own margins.
QPageLayout pageLayoutOf(PaperSize paper)
{
    return {pageSizeOf(paper), QPageLayout::Portrait, QMarginsF()};
}

/// A page for each sheet. False where the device does not take part.
bool paintPages(QPagedPaintDevice& device, int resolution, const std::vector<Sheet>& sheets)
{
    QPainter painter;
    if (!painter.begin(&device)) {
        return false;
    }
    painter.scale(resolution / kMmPerInch, resolution / kMmPerInch);
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        if (i > 0 && !device.newPage()) {
            return false;
        }
        paintSheet(painter, sheets[i], {0, 0});
    }
    return painter.end();
}

}  // namespace

int sheetCount(const sessions::CardContent& card, PaperSize paper)
{
    return static_cast<int>(cardSheets(card, paper).size());
}

void paintCard(QPainter& painter, const sessions::CardContent& card, PaperSize paper, const QRectF& rect, int sheet)
{
    const std::vector<Sheet> sheets = cardSheets(card, paper);
    if (sheet < 0 || sheet >= static_cast<int>(sheets.size())) {
        return;
    }
    const QSizeF size = millimetresOf(paper);
    const double scale = std::min(rect.width() / size.width(), rect.height() / size.height());
    painter.save();
    painter.translate(rect.topLeft());
    painter.scale(scale, scale);
    paintSheet(painter, sheets[static_cast<std::size_t>(sheet)], {0, 0});
    painter.restore();
}

QByteArray cardsPdf(Cards cards, PaperSize paper, const QDate& created)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(kPdfResolution);
        writer.setPageLayout(pageLayoutOf(paper));
        writer.setTitle(QStringLiteral("Session cards"));
        writer.setCreator(QStringLiteral("Chalkrung"));
        paintPages(writer, kPdfResolution, sheetsOf(cards, paper));
    }
    return withCreationDate(buffer.data(), created);
}

std::optional<QString> savePdf(const QString& file, const QByteArray& pdf)
{
    QSaveFile save(file);
    if (!save.open(QIODevice::WriteOnly) || save.write(pdf) != pdf.size() || !save.commit()) {
        return save.errorString();
    }
    return std::nullopt;
}

bool printCards(QPrinter& printer, Cards cards, PaperSize paper)
{
    printer.setFullPage(true);
    printer.setPageLayout(pageLayoutOf(paper));
    return paintPages(printer, printer.resolution(), sheetsOf(cards, paper));
}

}  // namespace chalk::ui::print
