#pragma once

#include "ui/common/theme.h"
#include "ui/roster/roster_model.h"

#include <array>

namespace chalk::ui::roster {

/// The widths of the columns in a table of one width; a column of width 0 is hidden.
struct RosterWidths {
    std::array<int, kRosterColumns> columns{};
    int sessionsShown = 12;  ///< 12, 9 or 6

    bool operator==(const RosterWidths&) const = default;
};

/// Fills `width` pixels: first fewer of the last sessions are shown, then the load gives way, then the sessions; the columns of the client,
/// of the next session and of the flags share what is left over.
[[nodiscard]] RosterWidths rosterWidths(int width, const common::Theme& theme);

/// The height of a row, 52 px at a text size of 100 %.
[[nodiscard]] int rosterRowHeight(const common::Theme& theme);
/// Where the contents of a column begin inside its cell.
[[nodiscard]] double rosterCellLeft(RosterColumn column, const common::Theme& theme);

}  // namespace chalk::ui::roster
