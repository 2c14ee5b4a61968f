#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <span>
#include <vector>

namespace chalk::ui::print {

/// Cards four to a sheet of A4 or Letter, to be cut along the dashed lines: load and reps of 18 pt, a warm-up where there is room. A card with more lifts than
/// go into its quarter goes on in the next one. Loads, reps, boxes and cautions are never left out.
[[nodiscard]] std::vector<Sheet> quarterSheets(std::span<const sessions::CardContent> cards, PaperSize paper);
/// How many quarters of a sheet a card takes.
[[nodiscard]] int quarterCount(const sessions::CardContent& card, PaperSize paper);

}  // namespace chalk::ui::print
