#pragma once

#include "ui/board/client_case.h"

#include <QString>

#include <vector>

namespace chalk::ui::board {

/// One entry of a lift's log on one line.
struct LogLine {
    base::Date date;
    QString what;        ///< `3 × 7 at 77.5`, `8, 8, 7 at 77.5`, `rehearsed, 5 of 6 met`, `set by the coach`
    QString left;        ///< `2 left`; empty where nothing was noted
    QString steadiness;  ///< `steady`, `shaky`, `lost`; for an exposure with pain `pain 5`
    QString note;        ///< the coach's own words, where there are any

    bool operator==(const LogLine&) const = default;
};

/// `measure` is what the entry's sets are counted in.
[[nodiscard]] LogLine logLineOf(const LogEntry& entry, const LiftCase& lift);
/// The same for a version that was replaced.
[[nodiscard]] LogLine logLineOf(const progression::EventBody& body, base::Date date, lifts::Measure measure, const LiftCase& lift);

/// The last entries with something done in them, newest first.
[[nodiscard]] std::vector<LogLine> lastLinesOf(const LiftCase& lift, std::size_t most);
/// The entries that were made while the lift stood on a stage, newest first.
[[nodiscard]] std::vector<LogLine> linesOfStage(const LiftCase& lift, progression::Stage stage, std::size_t most);

}  // namespace chalk::ui::board
