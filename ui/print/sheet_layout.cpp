#include "ui/print/sheet_layout.h"

#include "ui/print/card_sheet.h"
#include "ui/print/group_sheet.h"
#include "ui/print/quarter_sheet.h"
#include "ui/print/week_sheet.h"

#include <algorithm>
#include <map>
#include <string>

namespace chalk::ui::print {

namespace {

using sessions::CardContent;

/// Cards that belong together, in the order of their first ones.
template <typename IsAlike>
std::vector<std::vector<CardContent>> together(std::span<const CardContent> cards, IsAlike isAlike)
{
    std::vector<std::vector<CardContent>> all;
    for (const CardContent& card : cards) {
        const auto found = std::find_if(all.begin(), all.end(), [&](const auto& some) { return isAlike(some.front(), card); });
        if (found == all.end()) {
            all.push_back({card});
        } else {
            found->push_back(card);
        }
    }
    return all;
}

void append(std::vector<Sheet>& sheets, std::vector<Sheet> more)
{
    sheets.insert(sheets.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

/// Clients who share a name, as initials do, are told apart by a number.
void numberAlikeNames(std::vector<CardContent>& slot)
{
    std::map<std::string, int> count;
    for (const CardContent& card : slot) {
        ++count[card.clientName];
    }
    std::map<std::string, int> number;
    for (CardContent& card : slot) {
        if (count[card.clientName] > 1) {
            card.clientName += ' ' + std::to_string(++number[card.clientName]);
        }
    }
}

std::vector<Sheet> allGroups(std::span<const CardContent> cards, const SheetRequest& request, PaperSize paper)
{
    std::vector<Sheet> sheets;
    for (auto& slot : together(cards, [](const CardContent& a, const CardContent& b) { return a.date == b.date && a.startMinute == b.startMinute; })) {
        numberAlikeNames(slot);
        for (const auto& group : planning::inGroups(std::move(slot))) {
            append(sheets, groupSheets(planning::groupSessionOf(group, request.stations), paper));
        }
    }
    return sheets;
}

std::vector<Sheet> allWeeks(std::span<const CardContent> cards, const SheetRequest& request, PaperSize paper)
{
    std::vector<Sheet> sheets;
    for (auto& week : together(cards, [](const CardContent& a, const CardContent& b) { return a.client == b.client && a.date.isoWeek() == b.date.isoWeek(); })) {
        std::stable_sort(week.begin(), week.end(), [](const CardContent& a, const CardContent& b) {
            return a.date != b.date ? a.date < b.date : a.startMinute < b.startMinute;
        });
        append(sheets, weekSheets(week, paper, request.asOf));
    }
    return sheets;
}

}  // namespace

PaperSize paperOf(SheetLayout layout, PaperFamily family)
{
    const bool isIso = family == PaperFamily::Iso;
    if (layout == SheetLayout::Card) {
        return isIso ? PaperSize::A5 : PaperSize::HalfLetter;
    }
    return isIso ? PaperSize::A4 : PaperSize::Letter;
}

std::vector<Sheet> sheetsOf(std::span<const CardContent> cards, const SheetRequest& request)
{
    const PaperSize paper = paperOf(request.layout, request.family);
    std::vector<CardContent> shown(cards.begin(), cards.end());
    if (request.hasInitialsOnly) {
        std::transform(shown.begin(), shown.end(), shown.begin(), [](CardContent& card) { return sessions::withInitials(std::move(card)); });
    }
    std::vector<Sheet> sheets;
    switch (request.layout) {
    case SheetLayout::Card:
        for (const CardContent& card : shown) {
            append(sheets, cardSheets(card, paper));
        }
        break;
    case SheetLayout::FourCards:
        sheets = quarterSheets(shown, paper);
        break;
    case SheetLayout::Group:
        sheets = allGroups(shown, request, paper);
        break;
    case SheetLayout::Week:
        sheets = allWeeks(shown, request, paper);
        break;
    }
    return sheets;
}

}  // namespace chalk::ui::print
