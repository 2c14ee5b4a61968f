#include "ui/print/group_foot.h"

#include "ui/common/formats.h"
#include "ui/print/card_parts.h"
#include "ui/print/group_words.h"
#include "ui/print/print_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using planning::GroupSession;

constexpr double kTableShare = 0.56;    ///< of the width
constexpr double kTableRow = 4.6;
constexpr double kPlaceColumn = 30;
constexpr double kLeastEntryColumn = 24;
constexpr double kEntryPadding = 1;
constexpr double kTableStroke = 0.25;
constexpr double kFootGap = 5;
constexpr double kFeltRow = 8;
constexpr double kWaitLine = 3.9;

/// A client at a place.
struct PlaceEntry {
    int begin = 0;
    QString text;
};

std::vector<PlaceEntry> entriesAt(const GroupSession& group, const QStringList& names, std::size_t place)
{
    std::vector<PlaceEntry> entries;
    for (std::size_t m = 0; m < group.members.size(); ++m) {
        for (const planning::GroupTurn& turn : group.members[m].turns) {
            if (turn.beginSecond && turn.place == place) {
                entries.push_back({*turn.beginSecond, QStringLiteral("%1 %2").arg(beginText(group, turn), names[static_cast<qsizetype>(m)])});
            }
        }
    }
    std::stable_sort(entries.begin(), entries.end(), [](const PlaceEntry& a, const PlaceEntry& b) { return a.begin < b.begin; });
    return entries;
}

void addCellText(Sheet& sheet, const QString& text, QFont::Weight weight, const QRectF& cell)
{
    const QRectF inside = cell.adjusted(kEntryPadding, 0, -kEntryPadding, 0);
    const FittedPrint fit = fitted(text, inside.width(), {8.5, kLeastPoints}, weight);
    sheet.texts.push_back({fit.text, fit.font, inside, {inside.left(), inside.center().y() + capHeightOf(fit.font) / 2}, false});
}

/// A row for each place: its letter and name, then who is there, in the order of time. Answers the lower edge.
double addPlaceTable(Sheet& sheet, const GroupSession& group, const QRectF& area)
{
    const QStringList names = shortNames(group);
    const auto columns = std::max<std::size_t>(1, static_cast<std::size_t>((area.width() - kPlaceColumn) / kLeastEntryColumn));
    const double columnWidth = (area.width() - kPlaceColumn) / static_cast<double>(columns);
    double y = area.top();
    for (std::size_t place = 0; place < group.places.size(); ++place) {
        const std::vector<PlaceEntry> entries = entriesAt(group, names, place);
        if (entries.empty()) {
            continue;
        }
        sheet.rules.push_back({{area.left(), y, area.right(), y}, kTableStroke});
        addCellText(sheet, QStringLiteral("%1  %2").arg(placeLetter(place), placeName(group.places[place])), QFont::Bold, {area.left(), y, kPlaceColumn, kTableRow});
        for (std::size_t i = 0; i < entries.size(); ++i) {
            const double x = area.left() + kPlaceColumn + static_cast<double>(i % columns) * columnWidth;
            addCellText(sheet, entries[i].text, QFont::Medium, {x, y + static_cast<double>(i / columns) * kTableRow, columnWidth, kTableRow});
        }
        y += static_cast<double>((entries.size() + columns - 1) / columns) * kTableRow;
    }
    sheet.rules.push_back({{area.left(), y, area.right(), y}, kTableStroke});
    for (const double x : {area.left(), area.left() + kPlaceColumn, area.right()}) {
        sheet.rules.push_back({{x, area.top(), x, y}, kTableStroke});
    }
    return y;
}

double addWaits(Sheet& sheet, const GroupSession& group, const QRectF& area)
{
    double y = area.top() + 1;
    QStringList said = waitTexts(group);
    if (!group.isProved) {
        said.append(QCoreApplication::translate("Card", "This order is the best that was found. It is not proved that none waits less."));
    }
    const QFont font = printFont(8.5, QFont::Medium);
    for (const QString& wait : said) {
        for (const QString& line : wrapped(wait, font, area.width())) {
            sheet.texts.push_back({line, font, {area.left(), y, area.width(), kWaitLine}, {area.left(), y + kWaitLine / 2 + capHeightOf(font) / 2}, false});
            y += kWaitLine;
        }
    }
    return y;
}

double addFeltRows(Sheet& sheet, const GroupSession& group, const QRectF& area)
{
    constexpr double kMostName = 26;
    double y = area.top();
    for (const QString& name : shortNames(group)) {
        addFeltRow(sheet, name, kMostName, {area.left(), y, area.width(), kFeltRow});
        y += kFeltRow;
    }
    return y;
}

}  // namespace

double addGroupFoot(Sheet& sheet, const GroupSession& group, const QRectF& area)
{
    const double left = area.width() * kTableShare;
    double y = addPlaceTable(sheet, group, {area.left(), area.top(), left, area.height()});
    y = addWaits(sheet, group, {area.left(), y, left, area.height()});
    const double right = addFeltRows(sheet, group, {area.left() + left + kFootGap, area.top(), area.width() - left - kFootGap, area.height()});
    return std::max(y, right) - area.top();
}

}  // namespace chalk::ui::print
