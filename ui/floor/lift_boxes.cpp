#include "ui/floor/lift_boxes.h"

#include "ui/common/theme.h"

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using common::Theme;

constexpr double kBox = 36;
constexpr double kBoxTop = 9;
constexpr double kColumnGap = 10;
constexpr double kLeastName = 110;  ///< with less room beside the boxes, they stand below the name
constexpr double kNarrowRow = 720;  ///< below it boxes are narrower
constexpr double kTargetTop = 27;   ///< of the line under the name
constexpr double kTargetLine = 22;
constexpr int kManySets = 6;        ///< above it boxes stand closer

struct BoxWidths {
    double sets, left, rest, felt, pain, set;
};
constexpr BoxWidths kWideBoxes{216, 46, 58, 72, 42, 38};
constexpr BoxWidths kNarrowBoxes{190, 42, 52, 64, 38, 33};

const BoxWidths& boxWidthsFor(double width, const Theme& theme)
{
    return width < theme.scaled(kNarrowRow) ? kNarrowBoxes : kWideBoxes;
}

}  // namespace

LiftColumns liftColumnsFor(double width, const Theme& theme)
{
    const BoxWidths& boxes = boxWidthsFor(width, theme);
    LiftColumns columns;
    columns.pain = width - theme.scaled(kRowSide + boxes.pain);
    columns.felt = columns.pain - theme.scaled(kColumnGap + boxes.felt);
    columns.rest = columns.felt - theme.scaled(kColumnGap + boxes.rest);
    columns.left = columns.rest - theme.scaled(kColumnGap + boxes.left);
    columns.setsWidth = theme.scaled(boxes.sets);
    columns.sets = columns.left - theme.scaled(kColumnGap) - columns.setsWidth;
    columns.isStacked = columns.sets < theme.scaled(kRowSide + kLeastName);
    return columns;
}

std::vector<LiftBox> liftBoxesOf(const QRectF& row, int sets, const Theme& theme)
{
    const LiftColumns columns = liftColumnsFor(row.width(), theme);
    const BoxWidths& boxes = boxWidthsFor(row.width(), theme);
    const double top = row.top() + theme.scaled(columns.isStacked ? kBoxTop + kStackedBy : kBoxTop);
    const auto placeAt = [&](double x, double width) { return QRectF(row.left() + x, top, width, theme.scaled(kBox)); };
    const double nameEnd = columns.isStacked ? row.width() - theme.scaled(kRowSide) : columns.sets - theme.scaled(8);
    std::vector<LiftBox> all;
    all.push_back({LiftField::Load, 0,
                   QRectF(row.left() + theme.scaled(kRowSide), row.top() + theme.scaled(kTargetTop), nameEnd - theme.scaled(kRowSide), theme.scaled(kTargetLine))});
    const double gap = sets > kManySets ? 2 : 5;
    const double width = std::min(theme.scaled(boxes.set), (columns.setsWidth - gap * (sets - 1)) / std::max(sets, 1));
    for (int set = 0; set < sets; ++set) {
        all.push_back({LiftField::Amount, set, placeAt(columns.sets + set * (width + gap), width)});
    }
    all.push_back({LiftField::Left, 0, placeAt(columns.left, theme.scaled(boxes.left))});
    all.push_back({LiftField::Rest, 0, placeAt(columns.rest, theme.scaled(boxes.rest))});
    all.push_back({LiftField::Felt, 0, placeAt(columns.felt, theme.scaled(boxes.felt))});
    all.push_back({LiftField::Pain, 0, placeAt(columns.pain, theme.scaled(boxes.pain))});
    return all;
}

}  // namespace chalk::ui::floor
