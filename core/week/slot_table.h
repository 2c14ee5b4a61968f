#pragma once

#include "core/week/week_problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace chalk::week {

/// What keeps a session out of a slot: the first that does, in this order.
enum class SlotBlock : std::uint8_t {
    StudioClosed,
    CoachAway,
    ClientAway,
    LastWeek,        ///< recovery with a session of last week
    LockedBookings,  ///< locked sessions of others alone fill the coach's group or a station
    OwnSessions,     ///< another session of the client: on that day, or without the recovery
    Group,           ///< the coach's capacity, or what a client in it shares
    Stations
};

inline constexpr int kSlotBlockCount = 8;

struct BlockedSlot {
    SlotBlock block = SlotBlock::StudioClosed;
    std::optional<std::size_t> station;  ///< that is short, of LockedBookings and Stations
    std::vector<std::size_t> sessions;   ///< in the way, by index, ascending; empty where the hours or last week are
    int minute = 0;                      ///< since Monday: the first that is blocked
    int needed = 0;                      ///< of a group: sessions at once, with this one; of a station: per cent of a unit
    int there = 0;                       ///< in the same measure: what is allowed

    bool operator==(const BlockedSlot&) const = default;
};

/// Who is where at each slot of the week, to ask what else fits. Starts off the grid count from the grid before.
class SlotTable {
public:
    /// `problem` outlives the table. The plan has a place for each session, and its coaches are those of the problem.
    SlotTable(const WeekProblem& problem, const WeekPlan& plan);

    [[nodiscard]] const WeekPlan& plan() const { return m_plan; }
    /// The session goes there, whatever is in the way; from where it was, if anywhere.
    void place(std::size_t session, const Slot& slot);
    /// Nothing where it is left over already.
    void remove(std::size_t session);

    /// What keeps the session out of a slot beside all the others; nothing where it fits. Whether the client accepts the coach is not asked.
    /// A session that is in the plan does not block itself.
    [[nodiscard]] std::optional<BlockedSlot> blockOf(std::size_t session, const Slot& slot) const;
    [[nodiscard]] bool fits(std::size_t session, const Slot& slot) const { return !blockOf(session, slot); }
    /// As `blockOf`, of the hours and last week alone: what holds whatever the plan is.
    [[nodiscard]] std::optional<BlockedSlot> hoursBlockOf(std::size_t session, const Slot& slot) const;

    /// Every start on the grid of the week with every coach whom the client accepts, in the order of the coaches and of the week.
    [[nodiscard]] std::vector<Slot> candidatesOf(std::size_t session) const;

private:
    struct Cells {
        std::size_t from = 0;
        std::size_t to = 0;
    };

    void enter(std::size_t session, const Slot& slot, bool isIn);
    [[nodiscard]] Cells busyCells(const SessionWish& wish, int start) const;
    [[nodiscard]] Cells needCells(const StationNeed& need, int start) const;
    [[nodiscard]] std::optional<BlockedSlot> lastWeekBlock(const SessionWish& wish, int start) const;
    [[nodiscard]] std::optional<BlockedSlot> ownBlock(std::size_t session, int start) const;
    [[nodiscard]] std::optional<BlockedSlot> groupBlock(std::size_t session, const Slot& slot, bool isOfLocked) const;
    [[nodiscard]] std::optional<BlockedSlot> stationBlock(std::size_t session, int start, bool isOfLocked) const;
    [[nodiscard]] bool isCounted(std::size_t other, std::size_t session, bool isOfLocked) const;

    const WeekProblem& m_problem;
    WeekPlan m_plan;
    std::vector<bool> m_open;                                ///< by cell of the week
    std::vector<std::vector<bool>> m_atWork;                 ///< by coach
    std::vector<std::vector<int>> m_percentThere;            ///< by station
    std::vector<std::vector<std::vector<std::size_t>>> m_with;   ///< by coach and cell: sessions
    std::vector<std::vector<std::vector<std::size_t>>> m_using;  ///< by station and cell: sessions
};

/// Whether two sessions of a client, or one and a past one, are far enough from each other.
[[nodiscard]] bool isRecovered(const Recovery& recovery, const std::vector<std::string>& patterns, int start,
                               const std::vector<std::string>& otherPatterns, int otherStart);

}  // namespace chalk::week
