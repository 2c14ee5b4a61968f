#pragma once

#include "core/base/date.h"
#include "core/planning/plan_template.h"

#include <span>
#include <vector>

namespace chalk::planning {

/// Hours between two sessions that train the same patterns. ACSM and NSCA: one to three days between sessions for the same muscles
/// (Haff G, Triplett N (eds.), Essentials of Strength Training and Conditioning, 4th ed., 2016, table 17.4); 48 is common practice.
inline constexpr int kHoursBetween = 48;

/// A time on one weekday in which the client can train.
struct FreeSpan {
    int weekday = 0;     ///< 0 for Monday to 6 for Sunday
    int fromMinute = 0;  ///< of the day, 0 to 1440
    int toMinute = 0;    ///< above fromMinute
};

/// A session of the week on its day and time.
struct WeekSlot {
    std::size_t session = 0;  ///< of the template
    int weekday = 0;
    int startMinute = 0;      ///< of the day

    bool operator==(const WeekSlot&) const = default;
};

/// Two sessions, one after the other, that train the same patterns with less than kHoursBetween from start to start.
struct CloseSessions {
    std::size_t first = 0;   ///< session of the template
    std::size_t second = 0;  ///< the later one; in the week after where its day is earlier
    int minutesBetween = 0;
    std::vector<lifts::Pattern> shared;

    bool operator==(const CloseSessions&) const = default;
};

/// The week as it repeats.
struct WeekOfSessions {
    std::vector<WeekSlot> slots;               ///< in the order of the week; fewer than the template's where hours are missing
    std::vector<std::size_t> unplaced;         ///< sessions of the template for which no day is left
    std::vector<CloseSessions> tooClose;       ///< where the hours do not allow the 48

    bool operator==(const WeekOfSessions&) const = default;
};

/// Chooses days and times for the sessions of a template: one session a day, each in a free span that holds `sessionMinutes`, with the
/// least time missing to 48 hours, then spread evenly, then early in the week. Without spans every day is free at 9:00. The sessions
/// keep their order in the week that starts on `firstWeekday`.
[[nodiscard]] WeekOfSessions weekOf(const PlanTemplate& plan, std::span<const FreeSpan> spans, int sessionMinutes, int firstWeekday);

}  // namespace chalk::planning
