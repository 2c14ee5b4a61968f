#pragma once

#include "core/week/week_problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace chalk::week {

/// What would have to change so that a session that is left over gets a place, everything else being kept.
enum class WayKind : std::uint8_t {
    FitsNow,         ///< nothing: there is a place
    WiderHours,      ///< the client comes up to an hour earlier or later
    OtherCoach,      ///< one whom the client does not accept
    ShorterSession,  ///< 45 or 30 minutes; what it takes of stations shrinks in proportion
    MoreUnits,       ///< one more of a station, whenever there are fewer too
    LargerGroup,     ///< a client shares with one more
    LargerCapacity,  ///< a coach takes one more at once
    MoveAnother,     ///< one other session, not locked, goes elsewhere
    OneFewer         ///< the session is given up
};

inline constexpr int kWayKindCount = 9;
inline constexpr std::size_t kMostWaysOut = 3;
inline constexpr int kWiderMinutes = 60;

/// What asking for a change counts, in the measure of the problem's weights and beside what the plan then costs. Each is 0 or more.
struct WayPrices {
    int hoursPer15 = 8;     ///< for every quarter of an hour outside of the client's hours
    int coach = 30;         ///< on top of the dearest coach whom the client accepts
    int shorterPer15 = 20;
    int group = 40;         ///< LargerGroup and LargerCapacity
    int unit = 200;
    int move = 20;
};

struct WayOut {
    WayKind kind = WayKind::OneFewer;
    std::optional<Slot> slot = {};       ///< that the session gets; nothing of OneFewer
    /// The price of the change and by how much the plan then costs more, what the session cost while left over not counted. OneFewer: what
    /// leaving it over costs.
    long cost = 0;
    std::size_t span = 0;                ///< WiderHours: index among the client's `available`
    DaySpan hours = {};                  ///< WiderHours: what that span becomes, no wider than needed
    int minutes = 0;                     ///< WiderHours: by which it grows; ShorterSession: that the session lasts then
    std::optional<std::size_t> coach = {};    ///< of OtherCoach and LargerCapacity
    std::optional<std::size_t> client = {};   ///< of LargerGroup: whose group grows
    std::optional<std::size_t> station = {};  ///< of MoreUnits
    std::optional<std::size_t> moved = {};    ///< of MoveAnother: the other session
    std::optional<Slot> movedTo = {};         ///< and where it goes

    bool operator==(const WayOut&) const = default;
};

/// A week with its plan.
struct PlannedWeek {
    WeekProblem problem;
    WeekPlan plan;
};

/// The cheapest way of each kind after which a left-over session fits, by cost, at most kMostWaysOut. MoveAnother is looked for where no other
/// kind helps but OneFewer, which always does. A locked session goes nowhere but to its standing slot. The plan keeps the rules.
[[nodiscard]] std::vector<WayOut> waysOut(const WeekProblem& problem, const WeekPlan& plan, std::size_t session, const WayPrices& prices = {});

/// The week as it is once a way out was taken. OneFewer takes the session out of the problem: those after it move up.
[[nodiscard]] PlannedWeek takenWay(const WeekProblem& problem, const WeekPlan& plan, std::size_t session, const WayOut& way);

}  // namespace chalk::week
