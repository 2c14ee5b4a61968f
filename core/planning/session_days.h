#pragma once

#include "core/clients/availability.h"
#include "core/planning/plan_template.h"

#include <cstddef>
#include <vector>

namespace chalk::planning {

/// Hours between two sessions that train the same patterns. ACSM and NSCA: one to three days between sessions for the same muscles
/// (Haff G, Triplett N (eds.), Essentials of Strength Training and Conditioning, 4th ed., 2016, table 17.4); 48 is common practice.
inline constexpr int kHoursBetween = 48;

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
    std::vector<std::size_t> outsideHours;     ///< sessions that the coach put where the client is not free

    bool operator==(const WeekOfSessions&) const = default;
};

/// When a client can come.
struct SessionHours {
    clients::WeekHours free;       ///< empty: every day from 9:00 to 20:00
    clients::WeekHours preferred;  ///< may be empty
    int sessionMinutes = 60;       ///< 15 to 240
};

/// Minutes from one slot to the next time that the other comes round; 0 for the same slot.
[[nodiscard]] int minutesBetween(const WeekSlot& first, const WeekSlot& second);

/// Those of the slots that train the same patterns with less than kHoursBetween.
[[nodiscard]] std::vector<CloseSessions> closeSessionsOf(const PlanTemplate& plan, const std::vector<WeekSlot>& slots);

/// Whether a session at that time lies in the free hours; in any hours from 9:00 to 20:00 where none are given.
[[nodiscard]] bool isInHours(const WeekSlot& slot, const SessionHours& hours);

/// Chooses days and times for the sessions of a template: one session a day, each inside the free hours, with the most sessions placed,
/// then the least time missing to 48 hours, then the most of them in preferred hours, then spread most evenly, then early. The sessions keep
/// their order in the week that begins on `firstWeekday`.
[[nodiscard]] WeekOfSessions weekOf(const PlanTemplate& plan, const SessionHours& hours, int firstWeekday);

}  // namespace chalk::planning
