#include "ui/roster/roster_layout.h"

#include "ui/common/attendance_dots.h"
#include "ui/common/lift_strip.h"

#include <cmath>

namespace chalk::ui::roster {

namespace {

// Pixels at a text size of 100 %. Each width holds the gap to the next column.
constexpr double kEdge = 16;
constexpr double kGap = 12;
constexpr double kClientWidth = 150;
constexpr double kNextWidth = 104;
constexpr double kLoadWidth = 116;
constexpr double kFlagsWidth = 96;
constexpr int kSessionSteps[] = {12, 9, 6};

int pixels(double width)
{
    return static_cast<int>(std::ceil(width));
}

std::size_t at(RosterColumn column)
{
    return static_cast<std::size_t>(column);
}

int sumOf(const RosterWidths& widths)
{
    int sum = 0;
    for (const int width : widths.columns) {
        sum += width;
    }
    return sum;
}

RosterWidths leastWidths(int sessionsShown, bool hasLoad, bool hasSessions, const common::Theme& theme)
{
    RosterWidths widths;
    widths.sessionsShown = sessionsShown;
    widths.columns[at(RosterColumn::Client)] = pixels(theme.scaled(kEdge + kClientWidth + kGap));
    widths.columns[at(RosterColumn::Next)] = pixels(theme.scaled(kNextWidth + kGap));
    widths.columns[at(RosterColumn::Lifts)] = pixels(common::liftStripSize(theme).width() + theme.scaled(kGap + 4));
    widths.columns[at(RosterColumn::Sessions)] = hasSessions ? pixels(common::attendanceWidth(sessionsShown, theme) + theme.scaled(kGap + 4)) : 0;
    widths.columns[at(RosterColumn::Load)] = hasLoad ? pixels(theme.scaled(kLoadWidth + kGap)) : 0;
    widths.columns[at(RosterColumn::Flags)] = pixels(theme.scaled(kFlagsWidth + kEdge));
    return widths;
}

/// The fullest table that fits.
RosterWidths fittingWidths(int width, const common::Theme& theme)
{
    for (const bool hasLoad : {true, false}) {
        for (const int sessions : kSessionSteps) {
            const RosterWidths widths = leastWidths(sessions, hasLoad, true, theme);
            if (sumOf(widths) <= width) {
                return widths;
            }
        }
    }
    return leastWidths(kSessionSteps[2], false, false, theme);
}

}  // namespace

RosterWidths rosterWidths(int width, const common::Theme& theme)
{
    RosterWidths widths = fittingWidths(width, theme);
    const int spare = std::max(0, width - sumOf(widths));
    const int forNext = spare * 3 / 11;
    const int forFlags = spare * 3 / 11;
    widths.columns[at(RosterColumn::Next)] += forNext;
    widths.columns[at(RosterColumn::Flags)] += forFlags;
    widths.columns[at(RosterColumn::Client)] += spare - forNext - forFlags;
    return widths;
}

int rosterRowHeight(const common::Theme& theme)
{
    return pixels(theme.scaled(52));
}

double rosterCellLeft(RosterColumn column, const common::Theme& theme)
{
    return column == RosterColumn::Client ? theme.scaled(kEdge) : 0;
}

}  // namespace chalk::ui::roster
