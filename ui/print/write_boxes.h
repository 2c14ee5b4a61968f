#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/sheet.h"

namespace chalk::ui::print {

/// How large boxes are, in millimetres.
struct BoxSizes {
    double height = 13;    ///< at most
    double gap = 1.2;
    double setWidth = 13;  ///< at most
    double leftWidth = 10.5;
    double restWidth = 12;
    double around = 2;     ///< left free above and below together
};

/// The boxes that a lift's results are written into, at the right of `area` and in the middle of its height: one for each set,
/// reps left (bold) and rest; for a rehearsal what it is judged by; for a hold a note.
void addWriteBoxes(Sheet& sheet, const sessions::CardLift& lift, const QRectF& area, const BoxSizes& sizes = {});
/// How wide boxes have to be for `setWidth` millimetres for each set, or for the words above them.
[[nodiscard]] double boxesWidth(const sessions::CardLift& lift, const BoxSizes& sizes, double setWidth);
/// How many rows the boxes take in `width` millimetres.
[[nodiscard]] int boxRows(const sessions::CardLift& lift, const BoxSizes& sizes, double width);

}  // namespace chalk::ui::print
