#pragma once

#include "core/week/week_problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace chalk::week {

/// A rule of the week that a plan breaks.
enum class PlanRule : std::uint8_t {
    OffGrid,           ///< does not start on the problem's grid
    CoachNotAccepted,  ///< or there is no such coach
    StudioClosed,      ///< at some minute of the session; outside of the week and past midnight too
    CoachAway,         ///< at some minute: outside the coach's windows, in a break or an absence
    ClientAway,        ///< not inside of one of the client's spans
    Capacity,          ///< more sessions at once than the coach takes
    GroupSize,         ///< more at once than one of the clients in it shares
    StationUnits,      ///< more of a station at once than there is
    SameDay,           ///< two sessions of one client on one day
    RecoveryTime,      ///< two sessions of one client that share a pattern are too near to each other
    LockedMoved,       ///< a locked session off its standing slot
    LockedLeftOver     ///< a locked session without a place
};

inline constexpr int kPlanRuleCount = 12;

/// One rule, broken once: the same sessions over an unbroken stretch of minutes are one fault.
struct PlanFault {
    PlanRule rule = PlanRule::OffGrid;
    std::vector<std::size_t> sessions;       ///< every one that has a part in it, by index, ascending
    std::optional<std::size_t> coach;        ///< the one whose place it is; nothing where a station or a client is concerned
    std::optional<std::size_t> station;      ///< of StationUnits
    std::optional<std::size_t> pastSession;  ///< of RecoveryTime with last week: index in the client's `lastWeek`
    int from = 0;  ///< the first minute that breaks the rule, since Monday; of two sessions, the start of the later one
    int to = 0;    ///< after the last such minute
    /// Capacity and GroupSize: sessions at once. StationUnits: per cent of one unit. RecoveryTime: minutes from start to start, or days for
    /// a rest day. 0 of the others.
    int needed = 0;
    int there = 0;  ///< in the same measure: what is allowed or, of RecoveryTime, what lies between the two

    /// 0 for Monday to 6 for Sunday; beyond these where a plan leaves the week.
    [[nodiscard]] int day() const;

    bool operator==(const PlanFault&) const = default;
};

/// Every rule that a plan breaks, by the order of the rules and then of the sessions or the minutes; empty for a plan that may be carried out.
/// Goes by the definition, minute by minute, and shares nothing with the search: it judges it. Busy time ends on the grid, rounded up; what
/// a session takes of a station begins on the grid, rounded down. Indices inside of the problem must be sound; a plan that is shorter than
/// the sessions leaves the rest over.
[[nodiscard]] std::vector<PlanFault> faultsOf(const WeekProblem& problem, const WeekPlan& plan);

}  // namespace chalk::week
