#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/sheet.h"

#include <QString>

namespace chalk::ui::print {

/// One lift where room is short: load and reps of 18 pt, a warm-up only where it is asked for. Its boxes stand beside the numbers, or below them where the place is
/// narrow.
struct CompactLift {
    const sessions::CardLift& lift;
    QString letter;             ///< of the station, white on black; may be empty
    QString lead;               ///< before the name, such as a time; may be empty
    bool saysReserve = false;   ///< the reps that are to be left
    bool hasStageWord = false;  ///< the stage by its name, not by its number, where that fits
    bool hasWarmUp = false;     ///< a line with the warm-up below all, where there is one and it fits the width
};

/// The least height that a lift takes in `width` millimetres, with boxes that can be written into.
[[nodiscard]] double compactHeight(const CompactLift& what, double width);
/// Lays it out in `area`, which is at least as high as that; more height makes the boxes taller, up to what is usual.
void addCompactLift(Sheet& sheet, const CompactLift& what, const QRectF& area);

}  // namespace chalk::ui::print
