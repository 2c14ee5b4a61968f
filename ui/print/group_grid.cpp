#include "ui/print/group_grid.h"

#include "ui/common/formats.h"
#include "ui/print/card_words.h"
#include "ui/print/caution_block.h"
#include "ui/print/compact_lift.h"
#include "ui/print/group_words.h"
#include "ui/print/print_text.h"

#include <algorithm>

namespace chalk::ui::print {

namespace {

using planning::GroupMember;
using planning::GroupSession;

constexpr double kNumberColumn = 7;
constexpr double kCellPadding = 1.5;
constexpr double kHeadName = 6;
constexpr double kMostHeadHeight = 62;
constexpr double kGridStroke = 0.3;

QRectF columnOf(const GroupSession& group, std::size_t member, const QRectF& area)
{
    const double width = (area.width() - kNumberColumn) / static_cast<double>(group.members.size());
    return {area.left() + kNumberColumn + static_cast<double>(member) * width, area.top(), width, area.height()};
}

CompactLift compactTurn(const GroupSession& group, const GroupMember& member, std::size_t row, bool saysReserve)
{
    const planning::GroupTurn& turn = member.turns[row];
    const bool isPlaced = turn.beginSecond.has_value() && turn.place < group.places.size();
    return {member.card.lifts[turn.lift], isPlaced ? placeLetter(turn.place) : QString(), beginText(group, turn), saysReserve, true};
}

}  // namespace

double addGroupHeads(Sheet& sheet, const GroupSession& group, const QRectF& area)
{
    double bottom = area.top();
    for (std::size_t i = 0; i < group.members.size(); ++i) {
        const sessions::CardContent& card = group.members[i].card;
        const QRectF inside = columnOf(group, i, area).adjusted(kCellPadding, kCellPadding, -kCellPadding, 0);
        const QRectF cell(inside.left(), inside.top(), inside.width(), kHeadName);
        const FittedPrint name = fitted(common::qstring(card.clientName), cell.width(), {13, 12, 11, 10, 9}, QFont::Bold, true);
        sheet.texts.push_back({name.text, name.font, cell, {cell.left(), cell.center().y() + capHeightOf(name.font) / 2}, false});
        bottom = std::max(bottom, addCautionBlock(sheet, card.cautions, {cell.left(), cell.bottom(), cell.width(), kMostHeadHeight}));
    }
    return bottom + 0.6 - area.top();
}

std::size_t turnRows(const GroupSession& group)
{
    std::size_t rows = 0;
    for (const GroupMember& member : group.members) {
        rows = std::max(rows, member.turns.size());
    }
    return rows;
}

double groupRowHeight(const GroupSession& group, std::size_t row, double width)
{
    const bool saysReserve = hasMixedReserves(everybodysLifts(group));
    double height = 0;
    for (std::size_t i = 0; i < group.members.size(); ++i) {
        if (row < group.members[i].turns.size()) {
            const double inside = columnOf(group, i, {0, 0, width, 0}).width() - 2 * kCellPadding;
            height = std::max(height, compactHeight(compactTurn(group, group.members[i], row, saysReserve), inside));
        }
    }
    return height + kCellPadding;
}

void addGroupRow(Sheet& sheet, const GroupSession& group, std::size_t row, const QRectF& area)
{
    const bool saysReserve = hasMixedReserves(everybodysLifts(group));
    sheet.rules.push_back({{area.left(), area.top(), area.right(), area.top()}, kGridStroke});
    const FittedPrint number{QString::number(row + 1), printFont(12, QFont::Bold)};
    const double wide = widthOf(number.text, number.font);
    const QRectF cell(area.left() + (kNumberColumn - wide) / 2, area.top(), wide, area.height());
    sheet.texts.push_back({number.text, number.font, cell, {cell.left(), cell.center().y() + capHeightOf(number.font) / 2}, false});
    for (std::size_t i = 0; i < group.members.size(); ++i) {
        if (row < group.members[i].turns.size()) {
            const QRectF inside = columnOf(group, i, area).adjusted(kCellPadding, kCellPadding * 0.6, -kCellPadding, -kCellPadding * 0.4);
            addCompactLift(sheet, compactTurn(group, group.members[i], row, saysReserve), inside);
        }
    }
}

void addGroupColumns(Sheet& sheet, const GroupSession& group, const QRectF& area)
{
    sheet.boxes.push_back({area, kGridStroke, 0.8});
    for (std::size_t i = 0; i < group.members.size(); ++i) {
        const double x = columnOf(group, i, area).left();
        sheet.rules.push_back({{x, area.top(), x, area.bottom()}, kGridStroke});
    }
}

}  // namespace chalk::ui::print
