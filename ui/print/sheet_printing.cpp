#include "ui/print/sheet_printing.h"

#include "ui/print/pdf_date.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSaveFile>

namespace chalk::ui::print {

namespace {

constexpr int kPdfResolution = 1200;  ///< dots to the inch: the grid that everything is placed on
constexpr double kMmPerInch = 25.4;

/// Sheets bring their own margins; they lie where they are wider than high.
QPageLayout pageLayoutOf(PaperSize paper, const std::vector<Sheet>& sheets)
{
    const bool isLying = !sheets.empty() && sheets.front().size.width() > sheets.front().size.height();
    return {pageSizeOf(paper), isLying ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF()};
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

QByteArray sheetsPdf(const std::vector<Sheet>& sheets, PaperSize paper, const QString& title, const QDate& created)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(kPdfResolution);
        writer.setPageLayout(pageLayoutOf(paper, sheets));
        writer.setTitle(title);
        writer.setCreator(QStringLiteral("Chalkrung"));
        paintPages(writer, kPdfResolution, sheets);
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

bool printSheets(QPrinter& printer, const std::vector<Sheet>& sheets, PaperSize paper)
{
    printer.setFullPage(true);
    printer.setPageLayout(pageLayoutOf(paper, sheets));
    return paintPages(printer, printer.resolution(), sheets);
}

}  // namespace chalk::ui::print
