#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <vector>

namespace chalk::ui::print {

/// A card never holds more lifts than this; the others go to further sheets, as evenly as they go.
inline constexpr int kMostLiftsOnASheet = 5;

/// Lays a session card out, on one sheet or more. Where room is short, plates are written shorter first, then the warm-up goes;
/// then numbers shrink and lifts go to a further sheet. Loads, reps, boxes and cautions are never left out. Every text fits its
/// place: sizes go down to 8 pt, and only names and places are cut by an ellipsis then.
[[nodiscard]] std::vector<Sheet> cardSheets(const sessions::CardContent& card, PaperSize paper);

}  // namespace chalk::ui::print
