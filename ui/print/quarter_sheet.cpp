#include "ui/print/quarter_sheet.h"

#include "ui/common/formats.h"
#include "ui/print/card_parts.h"
#include "ui/print/card_sheet.h"
#include "ui/print/card_words.h"
#include "ui/print/caution_block.h"
#include "ui/print/compact_lift.h"
#include "ui/print/cut_line.h"
#include "ui/print/print_text.h"
#include "ui/print/qr_code.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using common::qstring;
using sessions::CardContent;

constexpr double kMargin = 6.5;           ///< from the paper's edge and from the cut
constexpr double kQuarterCode = 17;       ///< side of the code: all four are read from a raster of 150 dots to the inch
constexpr double kQuarterCodeGap = 3;
constexpr double kQuarterName = 7;
constexpr double kQuarterWhen = 4.2;
constexpr double kQuarterFoot = 8.4;
constexpr double kRowPadding = 1;         ///< below the rule of a row
constexpr double kMostQuarterRow = 23;
constexpr double kMostHeadShare = 0.6;    ///< of the height, for the cautions
constexpr std::size_t kQuarters = 4;

void addQuarterText(Sheet& sheet, const FittedPrint& fit, const QRectF& cell)
{
    sheet.texts.push_back({fit.text, fit.font, cell, {cell.left(), cell.center().y() + capHeightOf(fit.font) / 2}, false});
}

/// Answers where the lifts can begin.
double addQuarterHead(Sheet& sheet, const CardContent& card, const QRectF& area)
{
    const double width = area.width() - kQuarterCode - kQuarterCodeGap;
    QRectF cell(area.left(), area.top(), width, kQuarterName);
    addQuarterText(sheet, fitted(qstring(card.clientName), width, {16, 14, 12, 10, 9}, QFont::Bold, true), cell);
    cell = {area.left(), cell.bottom(), width, kQuarterWhen};
    addQuarterText(sheet, fitted(whenAndWhere(card), width, {9, 8.5, kLeastPoints}, QFont::Medium), cell);
    if (!card.sessionCode.empty()) {
        const QRectF square(area.right() - kQuarterCode, area.top(), kQuarterCode, kQuarterCode);
        if (auto code = qrCode(codeText(QByteArray::fromStdString(card.sessionCode)), square)) {
            sheet.shapes.push_back(*std::move(code));
        }
    }
    const double y = addCautionBlock(sheet, card.cautions, {area.left(), cell.bottom() + 0.6, width, area.height() * kMostHeadShare});
    return std::max(y, area.top() + kQuarterCode) + 1.6;
}

/// What to do at the left, pain at the right.
void addQuarterFoot(Sheet& sheet, const CardContent& card, const QString& count, const QRectF& area)
{
    addRule(sheet, area, area.top());
    const QRectF line = area.adjusted(0, 1, 0, 0);
    constexpr double kPainWidth = 8;
    constexpr double kPainHeight = 6;
    sheet.boxes.push_back({{line.right() - kPainWidth, line.center().y() - kPainHeight / 2, kPainWidth, kPainHeight}, kBoxStroke, 1});
    const FittedPrint pain{QCoreApplication::translate("Card", "Pain 0–10"), printFont(8.5, QFont::Medium)};
    double x = line.right() - kPainWidth - 1.6 - widthOf(pain.text, pain.font);
    addQuarterText(sheet, pain, {x, line.top(), widthOf(pain.text, pain.font), line.height()});
    if (!count.isEmpty()) {
        const FittedPrint said{count, printFont(kLeastPoints, QFont::Medium)};
        x -= 3 + widthOf(said.text, said.font);
        addQuarterText(sheet, said, {x, line.top(), widthOf(said.text, said.font), line.height()});
    }
    std::vector<Runs> ways = instructions(card);
    if (ways.size() > 1) {
        ways.push_back({ways.front().back()});  // the framed number alone: reps left stand with each lift where they differ
    }
    for (Runs& runs : ways) {
        for (Run& run : runs) {
            run.points = 8.5;
            run.gap = std::min(run.gap, 0.9);
        }
    }
    placeBest(sheet, ways, {line.left(), line.top(), x - 3 - line.left(), line.height()});
}

/// A quarter as a sheet of its own, its corner at 0, 0.
struct QuarterPlan {
    const CardContent& card;
    std::size_t first = 0;
    std::size_t end = 0;
};

CompactLift compactOf(const CardContent& card, std::size_t lift, bool hasWarmUp)
{
    return {card.lifts[lift], {}, {}, hasMixedReserves(card), false, hasWarmUp};
}

double rowHeight(const CardContent& card, std::size_t lift, double width, bool hasWarmUp = false)
{
    return compactHeight(compactOf(card, lift, hasWarmUp), width) + kRowPadding;
}

QRectF quarterArea(PaperSize paper)
{
    const QSizeF half = millimetresOf(paper) / 2;
    return QRectF(QPointF(), half).adjusted(kMargin, kMargin, -kMargin, -kMargin);
}

/// As many lifts to a quarter as go into it.
std::vector<QuarterPlan> planOf(const CardContent& card, PaperSize paper)
{
    const QRectF area = quarterArea(paper);
    Sheet trial;
    const double room = area.bottom() - kQuarterFoot - addQuarterHead(trial, card, area);
    std::vector<QuarterPlan> plans{{card}};
    double used = 0;
    for (std::size_t i = 0; i < card.lifts.size(); ++i) {
        const double height = rowHeight(card, i, area.width());
        const bool isFull = used + height > room || plans.back().end - plans.back().first == static_cast<std::size_t>(kMostLiftsOnASheet);
        if (isFull && plans.back().end > plans.back().first) {
            plans.push_back({card, i, i});
            used = 0;
        }
        used += height;
        plans.back().end = i + 1;
    }
    return plans;
}

/// Which lifts of a quarter are given their warm-up, from the first on, as long as `room` has place for its line.
std::vector<bool> warmUpsOf(const QuarterPlan& plan, double width, double room)
{
    for (std::size_t i = plan.first; i < plan.end; ++i) {
        room -= rowHeight(plan.card, i, width);
    }
    std::vector<bool> given;
    for (std::size_t i = plan.first; i < plan.end; ++i) {
        const double more = rowHeight(plan.card, i, width, true) - rowHeight(plan.card, i, width);
        given.push_back(more <= room);
        room -= given.back() ? more : 0;
    }
    return given;
}

void addQuarter(Sheet& sheet, const QuarterPlan& plan, const QString& count, const QRectF& area)
{
    const CardContent& card = plan.card;
    double y = addQuarterHead(sheet, card, area);
    const double bottom = area.bottom() - kQuarterFoot;
    const std::vector<bool> warmUps = warmUpsOf(plan, area.width(), bottom - y);
    double least = 0;
    for (std::size_t i = plan.first; i < plan.end; ++i) {
        least += rowHeight(card, i, area.width(), warmUps[i - plan.first]);
    }
    const double more = plan.end == plan.first ? 0 : std::max(0.0, bottom - y - least) / static_cast<double>(plan.end - plan.first);
    for (std::size_t i = plan.first; i < plan.end; ++i) {
        const bool hasWarmUp = warmUps[i - plan.first];
        const double own = rowHeight(card, i, area.width(), hasWarmUp);
        const double height = std::max(own, std::min(own + more, kMostQuarterRow));
        addRule(sheet, area, y);
        addCompactLift(sheet, compactOf(card, i, hasWarmUp), {area.left(), y + kRowPadding, area.width(), height - kRowPadding});
        y += height;
    }
    if (bottom - y > 0.5) {
        addRule(sheet, area, y);
    }
    addQuarterFoot(sheet, card, count, {area.left(), bottom, area.width(), kQuarterFoot});
}

}  // namespace

int quarterCount(const CardContent& card, PaperSize paper)
{
    return static_cast<int>(planOf(card, paper).size());
}

std::vector<Sheet> quarterSheets(std::span<const CardContent> cards, PaperSize paper)
{
    std::vector<Sheet> sheets;
    const QSizeF size = millimetresOf(paper);
    std::size_t place = 0;
    for (const CardContent& card : cards) {
        const std::vector<QuarterPlan> plans = planOf(card, paper);
        for (std::size_t i = 0; i < plans.size(); ++i, ++place) {
            if (place % kQuarters == 0) {
                sheets.emplace_back();
                sheets.back().size = size;
                addCutLine(sheets.back(), {size.width() / 2, 0, size.width() / 2, size.height()});
                addCutLine(sheets.back(), {0, size.height() / 2, size.width(), size.height() / 2});
            }
            const QPointF corner(place % 2 == 0 ? 0 : size.width() / 2, place % kQuarters < 2 ? 0 : size.height() / 2);
            const QString count = plans.size() == 1 ? QString() : countText(static_cast<int>(i) + 1, static_cast<int>(plans.size()));
            addQuarter(sheets.back(), plans[i], count, quarterArea(paper).translated(corner));
        }
    }
    return sheets;
}

}  // namespace chalk::ui::print
