#include "ui/common/formats.h"
#include "ui/common/stage_glyph.h"
#include "ui/print/card_parts.h"
#include "ui/print/lift_words.h"
#include "ui/print/write_boxes.h"

#include <algorithm>

namespace chalk::ui::print {

namespace {

using sessions::CardLift;

constexpr double kTextShare = 64.0 / 132;  ///< of a row's width
constexpr double kColumnGap = 2;
constexpr double kTitleHeight = 14 * kMmPerPoint;
constexpr double kLargeHeight = 30 * kMmPerPoint;
constexpr double kDetailHeight = 12 * kMmPerPoint;
constexpr double kLastHeight = 10 * kMmPerPoint;
constexpr double kAboveLarge = 1.1;
constexpr double kBelowLarge = 1.3;
constexpr double kAboveLast = 0.5;
constexpr double kGlyphSide = 2.9;
constexpr double kTitleGap = 1.6;
constexpr double kGlyphGap = 1.2;
constexpr double kStagePoints = 8.5;
constexpr double kLeastTitlePoints = 9;
constexpr double kDetailPoints = 9.5;
constexpr double kBoxesLower = 1;

/// A text and its place on a line, from x on.
void addPiece(Sheet& sheet, const FittedPrint& piece, double x, const QRectF& cell)
{
    const double baseline = cell.center().y() + capHeightOf(piece.font) / 2;
    sheet.texts.push_back({piece.text, piece.font, {x, cell.top(), widthOf(piece.text, piece.font), cell.height()}, {x, baseline}});
}

/// Name, shape and word of the stage; the word becomes a number before the name is cut.
void addTitle(Sheet& sheet, const CardLift& lift, int number, const QRectF& cell)
{
    const QString title = QStringLiteral("%1. %2").arg(number).arg(common::qstring(lift.name));
    FittedPrint stage{stageText(lift), printFont(kStagePoints, QFont::Medium)};
    const auto room = [&] { return cell.width() - kTitleGap - kGlyphSide - kGlyphGap - widthOf(stage.text, stage.font); };
    if (widthOf(title, printFont(kLeastTitlePoints, QFont::Bold)) > room()) {
        stage.text = shortStageText(lift);
    }
    const FittedPrint name = fitted(title, room(), {12, 11, 10, kLeastTitlePoints}, QFont::Bold);
    addPiece(sheet, name, cell.left(), cell);
    const double glyphLeft = cell.left() + widthOf(name.text, name.font) + kTitleGap;
    sheet.shapes.push_back(common::stageGlyph(lift.stage, {glyphLeft, cell.center().y() - kGlyphSide / 2, kGlyphSide, kGlyphSide}));
    addPiece(sheet, stage, glyphLeft + kGlyphSide + kGlyphGap, cell);
}

/// The one or two lines below the numbers, each in the ways to say it.
struct SmallLines {
    std::vector<Runs> details;
    std::vector<Runs> last;
};

/// Plates that do not fit behind the rest, however short they are written, take the warm-up's line. Without that line, a pause and a
/// lighter week are said behind the rest.
SmallLines smallLines(const CardLift& lift, bool saysReserve, double width, bool hasLast)
{
    const bool isToBeSaid = lift.isPauseAsked || lift.lighterUntil || (lift.plan && lift.plan->isTest);
    SmallLines lines{!hasLast && isToBeSaid ? compactDetails(lift, saysReserve) : detailLines(lift, saysReserve),
                     hasLast ? lastLines(lift) : std::vector<Runs>()};
    if (hasLast && lift.isOnBar && widthOf(lines.details.back(), kLeastPoints / kDetailPoints) > width) {
        lines = {{restLine(lift, saysReserve)}, platesLines(lift)};
    }
    return lines;
}

}  // namespace

void addRule(Sheet& sheet, const QRectF& area, double y)
{
    sheet.rules.push_back({{area.left(), y, area.right(), y}, kRuleStroke});
}

void addLiftRow(Sheet& sheet, const CardLift& lift, int number, const QRectF& row, bool saysReserve)
{
    addRule(sheet, row, row.top());
    const bool isFull = row.height() >= kFullRowHeight;
    const double around = kTitleHeight + kAboveLarge + kBelowLarge + kDetailHeight + (isFull ? kAboveLast + kLastHeight : 0);
    const double largeHeight = std::min(kLargeHeight, row.height() - 0.8 - around);
    const double width = row.width() * kTextShare;

    // In a full row the boxes begin below the title, which may go on above them.
    QRectF cell(row.left(), row.center().y() - (around + largeHeight) / 2, isFull ? row.width() : width, kTitleHeight);
    addTitle(sheet, lift, number, cell);
    cell = {cell.left(), cell.bottom() + kAboveLarge, width, largeHeight};
    const Runs large = largeLine(lift);
    place(sheet, large, cell, std::min(largeHeight / kLargeHeight, scaleToFit(large, width)));
    const SmallLines small = smallLines(lift, saysReserve, width, isFull);
    cell = {cell.left(), cell.bottom() + kBelowLarge, width, kDetailHeight};
    placeBest(sheet, small.details, cell);
    placeBest(sheet, small.last, {cell.left(), cell.bottom() + kAboveLast, width, kLastHeight});
    const double boxesTop = row.top() + (isFull ? kBoxesLower : 0);
    addWriteBoxes(sheet, lift, {row.left() + width + kColumnGap, boxesTop, row.width() - width - kColumnGap, row.height()});
}

}  // namespace chalk::ui::print
