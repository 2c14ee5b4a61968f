#pragma once

#include "ui/print/paper.h"
#include "ui/print/plan_paper.h"
#include "ui/print/sheet.h"

#include <QString>

#include <vector>

namespace chalk::ui::print {

/// A whole plan on as few pages of A4 or Letter, upright, as it needs: whose it is, how it is done, intensity and hard sets by week,
/// cautions, then the weeks of each lift with room to write in, what stays beside it, and which figures leave their published range with
/// their sources. Loads are rounded to what the equipment gives; they are planning figures, no tests.
[[nodiscard]] std::vector<Sheet> planSheets(const PlanPaper& paper, PaperSize size);

/// What a PDF of it is called, without its ending: `plan-joaquin-ferro-2026-11-30`.
[[nodiscard]] QString planFileName(const PlanPaper& paper);

}  // namespace chalk::ui::print
