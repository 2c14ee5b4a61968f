#include "ui/print/card_printing.h"

#include "ui/print/card_sheet.h"
#include "ui/print/sheet_printing.h"

#include <QPainter>

#include <algorithm>

namespace chalk::ui::print {

namespace {

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
    return sheetsPdf(sheetsOf(cards, paper), paper, QStringLiteral("Session cards"), created);
}

bool printCards(QPrinter& printer, Cards cards, PaperSize paper)
{
    return printSheets(printer, sheetsOf(cards, paper), paper);
}

}  // namespace chalk::ui::print
