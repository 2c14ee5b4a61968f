#include "ui/print/compact_lift.h"

#include "ui/common/formats.h"
#include "ui/common/stage_glyph.h"
#include "ui/print/lift_words.h"
#include "ui/print/print_text.h"
#include "ui/print/runs.h"
#include "ui/print/write_boxes.h"

#include <algorithm>

namespace chalk::ui::print {

namespace {

using sessions::CardLift;

constexpr BoxSizes kCompactBoxes{9.6, 0.9, 6.8, 6.6, 7.6, 0};
constexpr double kLeastSetWidth = 4.6;      ///< a number of two digits by hand
constexpr double kLeastBoxRowHeight = 10.6; ///< with the words above the boxes
constexpr double kLargeScale = 18.0 / 29;   ///< of the large line of a whole card
constexpr double kLeastLargeScale = 0.8;    ///< of that, before the boxes go below
constexpr double kCompactTitle = 4.9;
constexpr double kLetterSide = 4.9;
constexpr double kCompactLarge = 7.7;
constexpr double kCompactDetail = 3.9;
constexpr double kCompactGap = 0.3;
constexpr double kCompactColumnGap = 2.4;
constexpr double kBelowBoxes = 0.8;
constexpr double kCompactGlyph = 2.4;
constexpr double kPieceGap = 1.3;
constexpr double kPieceLeastTitle = 8.5;
constexpr double kTextHeight = kCompactTitle + kCompactLarge + kCompactDetail + 2 * kCompactGap + 0.4;

double addPieceAt(Sheet& sheet, const FittedPrint& piece, double x, const QRectF& cell, bool isWhite = false)
{
    const double wide = widthOf(piece.text, piece.font);
    sheet.texts.push_back({piece.text, piece.font, {x, cell.top(), wide, cell.height()}, {x, cell.center().y() + capHeightOf(piece.font) / 2}, isWhite});
    return x + wide;
}

/// White on a black square; answers where it ends.
double addStationLetter(Sheet& sheet, const QString& letter, double x, const QRectF& cell)
{
    const FittedPrint piece = fitted(letter, kLetterSide - 0.6, {10, 9, kLeastPoints}, QFont::Bold);
    QPainterPath black;
    black.addRoundedRect(QRectF(x, cell.center().y() - kLetterSide / 2, kLetterSide, kLetterSide), 0.8, 0.8);
    sheet.shapes.push_back(black);
    addPieceAt(sheet, piece, x + (kLetterSide - widthOf(piece.text, piece.font)) / 2, cell, true);
    return x + kLetterSide;
}

void addCompactTitle(Sheet& sheet, const CompactLift& what, const QRectF& cell)
{
    double x = cell.left();
    if (!what.letter.isEmpty()) {
        x = addStationLetter(sheet, what.letter, x, cell) + kPieceGap;
    }
    if (!what.lead.isEmpty()) {
        x = addPieceAt(sheet, {what.lead, printFont(kPieceLeastTitle, QFont::Medium)}, x, cell) + kPieceGap;
    }
    const QString title = common::qstring(what.lift.name);
    FittedPrint stage{what.hasStageWord ? stageText(what.lift) : shortStageText(what.lift), printFont(kLeastPoints, QFont::Medium)};
    const auto room = [&] { return cell.right() - x - 2 * kPieceGap - kCompactGlyph - widthOf(stage.text, stage.font); };
    if (widthOf(title, printFont(kPieceLeastTitle, QFont::Bold)) > room()) {
        stage.text = shortStageText(what.lift);
    }
    x = addPieceAt(sheet, fitted(title, room(), {10.5, 10, 9.5, 9, kPieceLeastTitle, kLeastPoints}, QFont::Bold), x, cell) + kPieceGap;
    sheet.shapes.push_back(common::stageGlyph(what.lift.stage, {x, cell.center().y() - kCompactGlyph / 2, kCompactGlyph, kCompactGlyph}));
    addPieceAt(sheet, stage, x + kCompactGlyph + kPieceGap, cell);
}

/// How a lift's numbers and boxes share a width.
struct CompactShare {
    bool isBeside = true;
    double textWidth = 0;
    double boxesWidth = 0;
};

/// How small the line below the numbers may be printed.
constexpr double kLeastDetailScale = kLeastPoints / 9.5;

/// The ways to say the line below the numbers: rest alone only where nothing else fits.
std::vector<Runs> detailsFitting(const CompactLift& what, double width)
{
    std::vector<Runs> ways = compactDetails(what.lift, what.saysReserve);
    if (ways.size() > 1 && widthOf(ways[ways.size() - 2], kLeastDetailScale) <= width) {
        ways.pop_back();
    }
    return ways;
}

/// What the numbers and the line below them need; boxes get no more than is left.
double textWanted(const CompactLift& what)
{
    const std::vector<Runs> ways = compactDetails(what.lift, what.saysReserve);
    const Runs& shortest = ways.size() > 1 ? ways[ways.size() - 2] : ways.front();
    return std::max(widthOf(largeLine(what.lift), kLargeScale), widthOf(shortest, kLeastDetailScale)) + 0.1;
}

CompactShare shareOf(const CompactLift& what, double width)
{
    const CardLift& lift = what.lift;
    const double large = widthOf(largeLine(lift), kLargeScale);
    const double least = boxesWidth(lift, kCompactBoxes, kLeastSetWidth);
    const double room = width - kCompactColumnGap - least;
    if (room < std::max(large * kLeastLargeScale, width * 0.3)) {
        return {false, width, width};
    }
    const double usual = boxesWidth(lift, kCompactBoxes, kCompactBoxes.setWidth);
    const double boxes = std::max(least, std::min(usual, width - kCompactColumnGap - std::max(textWanted(what), width * 0.46)));
    return {true, width - kCompactColumnGap - boxes, boxes};
}

/// The warm-up's line where it is wanted and its shortest way fits; none else.
std::vector<Runs> warmUpOf(const CompactLift& what, const CompactShare& share)
{
    std::vector<Runs> ways = what.hasWarmUp ? warmUpLines(what.lift) : std::vector<Runs>();
    const bool fits = !ways.empty() && widthOf(ways.back(), kLeastPoints / ways.back().front().points) <= share.textWidth;
    return fits ? ways : std::vector<Runs>();
}

double textHeightOf(const CompactLift& what, const CompactShare& share)
{
    return kTextHeight + (warmUpOf(what, share).empty() ? 0 : kCompactDetail);
}

}  // namespace

double compactHeight(const CompactLift& what, double width)
{
    const CompactShare share = shareOf(what, width);
    const double boxes = boxRows(what.lift, kCompactBoxes, share.boxesWidth) * kLeastBoxRowHeight;
    const double text = textHeightOf(what, share);
    return share.isBeside ? std::max(text, kCompactTitle + boxes + kBelowBoxes) : text + kCompactGap + boxes + kBelowBoxes;
}

void addCompactLift(Sheet& sheet, const CompactLift& what, const QRectF& area)
{
    const CompactShare share = shareOf(what, area.width());
    QRectF cell(area.left(), area.top(), area.width(), kCompactTitle);
    addCompactTitle(sheet, what, cell);
    const QRectF below = area.adjusted(0, kCompactTitle, 0, 0);
    const double numbersHeight = textHeightOf(what, share) - kCompactTitle;
    const double top = share.isBeside ? below.center().y() - numbersHeight / 2 : below.top();
    const Runs large = largeLine(what.lift);
    cell = {area.left(), top + kCompactGap, share.textWidth, kCompactLarge};
    place(sheet, large, cell, std::min(kLargeScale, scaleToFit(large, share.textWidth)));
    cell = {area.left(), cell.bottom() + kCompactGap, share.textWidth, kCompactDetail};
    placeBest(sheet, detailsFitting(what, cell.width()), cell);
    if (const auto warmUp = warmUpOf(what, share); !warmUp.empty()) {
        cell.moveTop(cell.bottom());
        placeBest(sheet, warmUp, cell);
    }
    const QRectF beside = below.adjusted(share.textWidth + kCompactColumnGap, 0, 0, -kBelowBoxes);
    const QRectF underneath(area.left(), cell.bottom() + kCompactGap, area.width(), area.bottom() - cell.bottom() - kCompactGap - kBelowBoxes);
    addWriteBoxes(sheet, what.lift, share.isBeside ? beside : underneath, kCompactBoxes);
}

}  // namespace chalk::ui::print
