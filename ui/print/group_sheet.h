#pragma once

#include "core/planning/group_session.h"
#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <vector>

namespace chalk::ui::print {

/// Everybody of one slot on A4 or Letter, lying: a column for each client, a row for each turn, then who is where, who waits and how each
/// felt. Rows that do not go on a page go on the next one, under the same heads. Loads, reps, boxes and cautions are never left out. None
/// where the group has nobody.
[[nodiscard]] std::vector<Sheet> groupSheets(const planning::GroupSession& group, PaperSize paper);

}  // namespace chalk::ui::print
