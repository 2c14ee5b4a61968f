#pragma once

#include "core/base/date.h"
#include "core/lifts/pattern.h"
#include "core/progression/stage.h"

#include <QString>

#include <cstdint>
#include <optional>
#include <vector>

namespace chalk::ui::board {

struct ClientCase;

/// What a row of the session list is.
enum class LogRowKind : std::uint8_t {
    Entry,     ///< something done or decided, as it counts now
    Replaced,  ///< a version of the entry above it that a correction replaced
    NotHeld,   ///< a session that was missed or cancelled
    Said       ///< what was said once of a session
};

/// One row of the session list: words, ready to show. Two lines in a cell are two strings.
struct LogRow {
    LogRowKind kind = LogRowKind::Entry;
    base::Date date;
    std::optional<lifts::Pattern> pattern;
    std::optional<progression::Stage> stage;  ///< that the lift stood on before
    QString day;
    QString dayNote;  ///< time and place, where it was done in a session
    QString lift;
    QString stageText;  ///< `5 Rep build`, `Plan of 8 weeks`
    QString what;
    QString whatNote;  ///< `2 left, steady`; a coach's words
    QString rules;     ///< `R-2`
    QString decision;  ///< the rules in words
    QString next;      ///< what followed: `80 kg`
    QString nextNote;  ///< `3 × 8`
    bool isCorrected = false;
};

/// The rows of a case, the newest first.
[[nodiscard]] std::vector<LogRow> logRowsOf(const ClientCase& client);

}  // namespace chalk::ui::board
