#pragma once

#include "core/checkin/progress_report.h"
#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <vector>

namespace chalk::ui::print {

/// A ladder holds no more lifts than this; of more, those with the latest work are on it.
inline constexpr std::size_t kMostReportLifts = 8;

/// A client's progress report on one page of A4 or Letter, upright: one sentence, figures, where each lift stood and stands, loads over time
/// told apart by their dash, sessions by week, what comes next, room for the coach's hand. Only the words of the stages are of the trade.
[[nodiscard]] std::vector<Sheet> reportSheets(const checkin::ProgressReport& report, PaperSize paper);

}  // namespace chalk::ui::print
