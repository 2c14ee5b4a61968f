#pragma once

#include "core/base/date.h"

#include <compare>
#include <cstdint>
#include <optional>

namespace chalk::checkin {

/// In which order a list of everybody stands.
enum class RosterOrder : std::uint8_t {
    TodayThenFlagged,     ///< who still comes today, by time; then who is flagged; then the others; both by their next session
    NextSession,          ///< by the next session; who has none comes last
    Name,
    LongestSinceSession   ///< who was never there comes first, then by the last session that was recorded, the longest ago first
};

/// A session's place in time.
struct SessionTime {
    base::Date date;
    int startMinute = 0;  ///< since midnight

    constexpr auto operator<=>(const SessionTime&) const = default;
};

/// What decides a client's place in such a list, the name left aside: its order is a matter of the language.
struct RosterPosition {
    std::optional<SessionTime> next;
    bool isToday = false;    ///< the next session is today
    bool isFlagged = false;
    std::optional<base::Date> lastCame;
};

/// `less` where a stands before b; `equivalent` where the names decide.
[[nodiscard]] std::weak_ordering compare(RosterOrder order, const RosterPosition& a, const RosterPosition& b);

}  // namespace chalk::checkin
