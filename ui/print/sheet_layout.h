#pragma once

#include "core/planning/group_session.h"
#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace chalk::ui::print {

/// How sessions are put on paper: a card each, four cards to a sheet, everybody of a slot, a client's week.
enum class SheetLayout : std::uint8_t { Card, FourCards, Group, Week };

/// Papers of one measure: A4 and its half, or Letter and its half.
enum class PaperFamily : std::uint8_t { Iso, NorthAmerican };

/// What a layout is printed on.
[[nodiscard]] PaperSize paperOf(SheetLayout layout, PaperFamily family);

/// What sheets are laid out from.
struct SheetRequest {
    SheetLayout layout = SheetLayout::Card;
    PaperFamily family = PaperFamily::Iso;
    bool hasInitialsOnly = false;         ///< `J. F.` in place of a client's name
    planning::FloorStations stations = planning::usualStations();
    base::Date asOf;                      ///< the day up to which records count: said on a week sheet
};

/// All sheets of some cards. Groups are the cards of one day and time, at most six to a sheet; weeks are those of one client and one ISO week.
/// The order is that of the cards; of weeks that of their first cards.
[[nodiscard]] std::vector<Sheet> sheetsOf(std::span<const sessions::CardContent> cards, const SheetRequest& request);

}  // namespace chalk::ui::print
