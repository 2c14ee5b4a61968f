#include "ui/print/write_boxes.h"

#include "ui/print/print_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <vector>

namespace chalk::ui::print {

namespace {

using progression::PrescriptionKind;
using sessions::CardLift;

constexpr double kBoxHeight = 13;
constexpr double kBoxGap = 1.2;
constexpr double kLabelHeight = 10 * kMmPerPoint;
constexpr double kMostSetWidth = 13;
constexpr double kLeftWidth = 10.5;
constexpr double kRestWidth = 12;
constexpr int kMostSetsInARow = 7;
constexpr int kMostBoxes = 3 * kMostSetsInARow;

struct WriteBox {
    QString label;
    double width = 0;
    bool isHeavy = false;
};
using WriteBoxes = std::vector<WriteBox>;

QString boxText(const char* text)
{
    return QCoreApplication::translate("Card", text);
}

double widthOfAll(const WriteBoxes& boxes)
{
    double width = -kBoxGap;
    for (const WriteBox& box : boxes) {
        width += box.width + kBoxGap;
    }
    return width;
}

void addBox(Sheet& sheet, const WriteBox& box, const QRectF& place)
{
    const QFont font = printFont(kLeastPoints, QFont::DemiBold);
    const double textWidth = widthOf(box.label, font);
    const QRectF cell(place.center().x() - textWidth / 2, place.top(), textWidth, kLabelHeight);
    sheet.texts.push_back({box.label, font, cell, {cell.left(), cell.center().y() + capHeightOf(font) / 2}, false});
    const QRectF outside = place.adjusted(0, kLabelHeight + 0.3, 0, 0);
    sheet.boxes.push_back({outside, box.isHeavy ? kHeavyStroke : kBoxStroke, 1});
}

/// Boxes from left to right, the last one ending at the right edge.
void addBoxRow(Sheet& sheet, const WriteBoxes& boxes, const QRectF& area)
{
    double x = area.right() - widthOfAll(boxes);
    for (const WriteBox& box : boxes) {
        addBox(sheet, box, {x, area.top(), box.width, area.height()});
        x += box.width + kBoxGap;
    }
}

/// The sets of one or more rows of boxes.
std::vector<WriteBoxes> setBoxes(int sets, double width)
{
    if (sets > kMostBoxes) {
        return {{{boxText(QT_TRANSLATE_NOOP("Card", "sets 1 to %1")).arg(sets), width, false}}};
    }
    const int rows = (sets + kMostSetsInARow - 1) / kMostSetsInARow;
    const int perRow = rows == 0 ? 0 : (sets + rows - 1) / rows;
    std::vector<WriteBoxes> all;
    for (int set = 1; set <= sets; ++set) {
        if (all.empty() || static_cast<int>(all.back().size()) == perRow) {
            all.emplace_back();
        }
        const double even = (width + kBoxGap) / perRow - kBoxGap;
        all.back().push_back({QString::number(set), std::min(kMostSetWidth, even), false});
    }
    return all;
}

WriteBoxes rehearsalBoxes(const CardLift& lift, double width)
{
    const QString reps = boxText(QT_TRANSLATE_NOOP("Card", "reps"));
    if (lift.stage == progression::Stage::Pattern) {
        const WriteBoxes judged{{reps, kRestWidth, false}, {boxText(QT_TRANSLATE_NOOP("Card", "all met")), kMostSetWidth, true}};
        const double left = width - widthOfAll(judged) - kBoxGap;
        return {judged[0], judged[1], {boxText(QT_TRANSLATE_NOOP("Card", "not yet")), left, false}};
    }
    const double even = (width + kBoxGap) / 5 - kBoxGap;
    return {{reps, even, false},
            {boxText(QT_TRANSLATE_NOOP("Card", "top")), even, false},
            {boxText(QT_TRANSLATE_NOOP("Card", "middle")), even, false},
            {boxText(QT_TRANSLATE_NOOP("Card", "bottom")), even, false},
            {boxText(QT_TRANSLATE_NOOP("Card", "steady")), even, true}};
}

void addWorkBoxes(Sheet& sheet, const CardLift& lift, const QRectF& area)
{
    const WriteBoxes after{{boxText(QT_TRANSLATE_NOOP("Card", "left")), kLeftWidth, true}, {boxText(QT_TRANSLATE_NOOP("Card", "rest")), kRestWidth, false}};
    addBoxRow(sheet, after, area);
    const QRectF forSets = area.adjusted(0, 0, -widthOfAll(after) - kBoxGap, 0);
    const std::vector<WriteBoxes> rows = setBoxes(lift.sets, forSets.width());
    const double height = forSets.height() / static_cast<double>(std::max<std::size_t>(1, rows.size()));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double gap = i > 0 ? 0.4 : 0;
        addBoxRow(sheet, rows[i], {forSets.left(), forSets.top() + static_cast<double>(i) * height + gap, forSets.width(), height - gap});
    }
}

}  // namespace

void addWriteBoxes(Sheet& sheet, const CardLift& lift, const QRectF& area)
{
    const double height = std::min(kLabelHeight + kBoxHeight, area.height() - 2);
    const QRectF middle(area.left(), area.center().y() - height / 2, area.width(), height);
    switch (lift.kind) {
    case PrescriptionKind::Work:
        addWorkBoxes(sheet, lift, middle);
        return;
    case PrescriptionKind::Rehearse:
        addBoxRow(sheet, rehearsalBoxes(lift, middle.width()), middle);
        return;
    case PrescriptionKind::Hold:
        addBoxRow(sheet, {{boxText(QT_TRANSLATE_NOOP("Card", "note")), middle.width(), false}}, middle);
        return;
    }
}

}  // namespace chalk::ui::print
