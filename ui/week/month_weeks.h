#pragma once

#include "core/base/date.h"
#include "core/week/studio_week.h"

#include <QString>

#include <array>
#include <vector>

namespace chalk::ui::week {

inline constexpr int kStripWeeks = 9;
inline constexpr int kWeeksBefore = 2;  ///< of them, before the one on show

/// One day of the strip.
struct StripDay {
    int sessions = 0;
    bool isShown = true;   ///< the studio opens on that weekday, or has sessions
    bool isClosed = false; ///< by a closure
    bool isShort = false;  ///< closed for a part of its hours

    bool operator==(const StripDay&) const = default;
};

struct StripWeek {
    base::Date monday;
    QString label;  ///< `9 Nov`, `16`: the month where it begins
    std::array<StripDay, 7> days;
};

/// A closure in words: `Sat 5 Dec: from 12:00, Harbour lights`.
struct StripNote {
    bool isWhole = false;  ///< whole days
    QString text;
};

struct MonthWeeks {
    std::vector<StripWeek> weeks;
    std::vector<StripNote> notes;  ///< closures of the studio in these weeks, by day

    [[nodiscard]] int mostSessions() const;
};

/// Of so many weeks from `monday`; `counts` are sessions by day from that Monday on.
[[nodiscard]] MonthWeeks monthWeeksOf(base::Date monday, const std::vector<int>& counts, const clients::WeekHours& open,
                                      const std::vector<chalk::week::Closure>& closures);

}  // namespace chalk::ui::week
