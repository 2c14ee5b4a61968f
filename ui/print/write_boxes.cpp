#include "ui/print/write_boxes.h"

#include "ui/print/print_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <vector>

namespace chalk::ui::print {

namespace {

using progression::PrescriptionKind;
using sessions::CardLift;

constexpr double kLabelHeight = 10 * kMmPerPoint;
constexpr double kLabelGap = 0.3;
constexpr double kMostRowedHeight = 22;  ///< of several rows of boxes together
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

double widthOfAll(const WriteBoxes& boxes, double gap)
{
    double width = -gap;
    for (const WriteBox& box : boxes) {
        width += box.width + gap;
    }
    return width;
}

void addBox(Sheet& sheet, const WriteBox& box, const QRectF& place)
{
    const QFont font = printFont(kLeastPoints, QFont::DemiBold);
    const double textWidth = widthOf(box.label, font);
    const QRectF cell(place.center().x() - textWidth / 2, place.top(), textWidth, kLabelHeight);
    sheet.texts.push_back({box.label, font, cell, {cell.left(), cell.center().y() + capHeightOf(font) / 2}, false});
    const QRectF outside = place.adjusted(0, kLabelHeight + kLabelGap, 0, 0);
    sheet.boxes.push_back({outside, box.isHeavy ? kHeavyStroke : kBoxStroke, 1});
}

/// Boxes from left to right, the last one ending at the right edge.
void addBoxRow(Sheet& sheet, const WriteBoxes& boxes, const QRectF& area, double gap)
{
    double x = area.right() - widthOfAll(boxes, gap);
    for (const WriteBox& box : boxes) {
        addBox(sheet, box, {x, area.top(), box.width, area.height()});
        x += box.width + gap;
    }
}

/// How wide each of `count` boxes is that fill `width`.
double evenWidth(double width, int count, double gap)
{
    return (width + gap) / count - gap;
}

int perRowOf(int sets)
{
    const int rows = (sets + kMostSetsInARow - 1) / kMostSetsInARow;
    return rows == 0 ? 0 : (sets + rows - 1) / rows;
}

/// The sets of one or more rows of boxes.
std::vector<WriteBoxes> setBoxes(int sets, double width, const BoxSizes& sizes)
{
    if (sets > kMostBoxes) {
        return {{{boxText(QT_TRANSLATE_NOOP("Card", "sets 1 to %1")).arg(sets), width, false}}};
    }
    const int perRow = perRowOf(sets);
    std::vector<WriteBoxes> all;
    for (int set = 1; set <= sets; ++set) {
        if (all.empty() || static_cast<int>(all.back().size()) == perRow) {
            all.emplace_back();
        }
        all.back().push_back({QString::number(set), std::min(sizes.setWidth, evenWidth(width, perRow, sizes.gap)), false});
    }
    return all;
}

/// Boxes no narrower than their words.
WriteBoxes worded(WriteBoxes boxes)
{
    const QFont font = printFont(kLeastPoints, QFont::DemiBold);
    for (WriteBox& box : boxes) {
        box.width = std::max(box.width, widthOf(box.label, font));
    }
    return boxes;
}

/// Boxes with what is left of a width shared out evenly.
WriteBoxes filling(WriteBoxes boxes, double width, double gap)
{
    const double more = (width - widthOfAll(boxes, gap)) / static_cast<double>(boxes.size());
    for (WriteBox& box : boxes) {
        box.width += more;
    }
    return boxes;
}

WriteBoxes rehearsalBoxes(const CardLift& lift)
{
    const QString reps = boxText(QT_TRANSLATE_NOOP("Card", "reps"));
    if (lift.stage == progression::Stage::Pattern) {
        return worded({{reps, 0, false}, {boxText(QT_TRANSLATE_NOOP("Card", "all met")), 0, true}, {boxText(QT_TRANSLATE_NOOP("Card", "not yet")), 0, false}});
    }
    return worded({{reps, 0, false},
                   {boxText(QT_TRANSLATE_NOOP("Card", "top")), 0, false},
                   {boxText(QT_TRANSLATE_NOOP("Card", "middle")), 0, false},
                   {boxText(QT_TRANSLATE_NOOP("Card", "bottom")), 0, false},
                   {boxText(QT_TRANSLATE_NOOP("Card", "steady")), 0, true}});
}

WriteBoxes boxesAfterSets(const BoxSizes& sizes)
{
    return worded({{boxText(QT_TRANSLATE_NOOP("Card", "left")), sizes.leftWidth, true}, {boxText(QT_TRANSLATE_NOOP("Card", "rest")), sizes.restWidth, false}});
}

/// Boxes in as many rows as their words need.
std::vector<WriteBoxes> brokenInto(const WriteBoxes& boxes, double width, double gap)
{
    std::vector<WriteBoxes> rows(1);
    for (const WriteBox& box : boxes) {
        if (!rows.back().empty() && widthOfAll(rows.back(), gap) + gap + box.width > width) {
            rows.emplace_back();
        }
        rows.back().push_back(box);
    }
    return rows;
}

/// Rows of boxes one below the other.
void addBoxRows(Sheet& sheet, const std::vector<WriteBoxes>& rows, const QRectF& area, double gap)
{
    const double height = area.height() / static_cast<double>(std::max<std::size_t>(1, rows.size()));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double above = i > 0 ? 0.4 : 0;
        addBoxRow(sheet, rows[i], {area.left(), area.top() + static_cast<double>(i) * height + above, area.width(), height - above}, gap);
    }
}

void addWorkBoxes(Sheet& sheet, const CardLift& lift, const QRectF& area, const BoxSizes& sizes)
{
    const WriteBoxes after = boxesAfterSets(sizes);
    addBoxRow(sheet, after, area, sizes.gap);
    const QRectF forSets = area.adjusted(0, 0, -widthOfAll(after, sizes.gap) - sizes.gap, 0);
    addBoxRows(sheet, setBoxes(lift.sets, forSets.width(), sizes), forSets, sizes.gap);
}

void addRehearsalBoxes(Sheet& sheet, const CardLift& lift, const QRectF& area, const BoxSizes& sizes)
{
    std::vector<WriteBoxes> rows = brokenInto(rehearsalBoxes(lift), area.width(), sizes.gap);
    for (WriteBoxes& row : rows) {
        row = filling(row, area.width(), sizes.gap);
    }
    addBoxRows(sheet, rows, area, sizes.gap);
}

}  // namespace

int boxRows(const CardLift& lift, const BoxSizes& sizes, double width)
{
    switch (lift.kind) {
    case PrescriptionKind::Work:
        return lift.sets > kMostBoxes ? 1 : std::max(1, (lift.sets + kMostSetsInARow - 1) / kMostSetsInARow);
    case PrescriptionKind::Rehearse:
        return static_cast<int>(brokenInto(rehearsalBoxes(lift), width, sizes.gap).size());
    case PrescriptionKind::Hold:
        return 1;
    }
    return 1;
}

double boxesWidth(const CardLift& lift, const BoxSizes& sizes, double setWidth)
{
    switch (lift.kind) {
    case PrescriptionKind::Work: {
        const bool isOne = lift.sets > kMostBoxes;
        const double sets = isOne ? worded(setBoxes(lift.sets, 0, sizes)[0])[0].width + sizes.gap : perRowOf(lift.sets) * (setWidth + sizes.gap);
        return sets + widthOfAll(boxesAfterSets(sizes), sizes.gap);
    }
    case PrescriptionKind::Rehearse:
        return widthOfAll(rehearsalBoxes(lift), sizes.gap);
    case PrescriptionKind::Hold:
        return sizes.leftWidth + sizes.restWidth;
    }
    return 0;
}

void addWriteBoxes(Sheet& sheet, const CardLift& lift, const QRectF& area, const BoxSizes& sizes)
{
    const double wanted = kLabelHeight + sizes.height;
    const double height = std::min(boxRows(lift, sizes, area.width()) > 1 ? std::max(wanted, kMostRowedHeight) : wanted, area.height() - sizes.around);
    const QRectF middle(area.left(), area.center().y() - height / 2, area.width(), height);
    switch (lift.kind) {
    case PrescriptionKind::Work:
        addWorkBoxes(sheet, lift, middle, sizes);
        return;
    case PrescriptionKind::Rehearse:
        addRehearsalBoxes(sheet, lift, middle, sizes);
        return;
    case PrescriptionKind::Hold:
        addBoxRow(sheet, {{boxText(QT_TRANSLATE_NOOP("Card", "note")), middle.width(), false}}, middle, sizes.gap);
        return;
    }
}

}  // namespace chalk::ui::print
