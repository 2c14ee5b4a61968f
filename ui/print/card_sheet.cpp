#include "ui/print/card_sheet.h"

#include "ui/print/card_parts.h"
#include "ui/print/card_words.h"

#include <algorithm>

namespace chalk::ui::print {

namespace {

using sessions::CardContent;

constexpr double kSideMargin = 8;
constexpr double kTopMargin = 8;
constexpr double kBottomMargin = 6;
constexpr double kMostRowHeight = 34;
constexpr double kLeastNotesHeight = 14;

/// How the lifts are spread over sheets.
struct Spread {
    bool hasDrills = false;
    int sheets = 1;
    int liftsPerSheet = 0;
};

QRectF printedArea(PaperSize paper)
{
    return QRectF(QPointF(), millimetresOf(paper)).adjusted(kSideMargin, kTopMargin, -kSideMargin, -kBottomMargin);
}

/// How many rows of the least height go below the head.
int mostRows(const CardContent& card, const QRectF& area, bool withDrills)
{
    Sheet trial;
    const double height = area.bottom() - kFootHeight - addHead(trial, card, area, withDrills);
    return std::clamp(static_cast<int>(height / kLeastRowHeight), 1, kMostLiftsOnASheet);
}

Spread spreadOf(const CardContent& card, const QRectF& area)
{
    const int lifts = static_cast<int>(card.lifts.size());
    const int wanted = std::min(lifts, kMostLiftsOnASheet);
    Spread spread;
    spread.hasDrills = !card.drills.empty() && mostRows(card, area, true) >= wanted;
    const int rows = mostRows(card, area, spread.hasDrills);
    spread.sheets = std::max(1, (lifts + rows - 1) / rows);
    spread.liftsPerSheet = (lifts + spread.sheets - 1) / spread.sheets;
    return spread;
}

Sheet sheetOf(const CardContent& card, PaperSize paper, const Spread& spread, int index)
{
    const QRectF area = printedArea(paper);
    Sheet sheet;
    sheet.size = millimetresOf(paper);
    const double top = addHead(sheet, card, area, spread.hasDrills);
    const double bottom = area.bottom() - kFootHeight;
    const double height = std::min((bottom - top) / std::max(1, spread.liftsPerSheet), kMostRowHeight);
    const int first = index * spread.liftsPerSheet;
    const int end = std::min(first + spread.liftsPerSheet, static_cast<int>(card.lifts.size()));
    const bool saysReserve = hasMixedReserves(card);
    double y = top;
    for (int i = first; i < end; ++i) {
        addLiftRow(sheet, card.lifts[static_cast<std::size_t>(i)], i + 1, {area.left(), y, area.width(), height}, saysReserve);
        y += height;
    }
    if (bottom - y >= kLeastNotesHeight) {
        addNotes(sheet, {area.left(), y, area.width(), bottom - y});
    }
    addFoot(sheet, sessionText(card, index + 1, spread.sheets), {area.left(), bottom, area.width(), kFootHeight});
    return sheet;
}

}  // namespace

std::vector<Sheet> cardSheets(const CardContent& card, PaperSize paper)
{
    const Spread spread = spreadOf(card, printedArea(paper));
    std::vector<Sheet> sheets;
    for (int i = 0; i < spread.sheets; ++i) {
        sheets.push_back(sheetOf(card, paper, spread, i));
    }
    return sheets;
}

}  // namespace chalk::ui::print
