#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/sheet.h"

namespace chalk::ui::print {

/// The boxes that a lift's results are written into, at the right of `area` and in the middle of its height: one for each set,
/// reps left (bold) and rest; for a rehearsal what it is judged by; for a hold a note.
void addWriteBoxes(Sheet& sheet, const sessions::CardLift& lift, const QRectF& area);

}  // namespace chalk::ui::print
