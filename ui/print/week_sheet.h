#pragma once

#include "core/sessions/card_content.h"
#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <span>
#include <vector>

namespace chalk::ui::print {

/// One client's sessions of a week on A4 or Letter, upright: for each day, time, coach and place, a code, the lifts as they are due by what is
/// recorded up to `asOf`, boxes for what is done and how it felt. Usually one page; a session stays whole where a page holds it. Cautions
/// stand on every page. `cards` are one client's, by day; none gives no sheet.
[[nodiscard]] std::vector<Sheet> weekSheets(std::span<const sessions::CardContent> cards, PaperSize paper, base::Date asOf);

}  // namespace chalk::ui::print
