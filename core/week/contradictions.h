#pragma once

#include "core/week/week_checker.h"
#include "core/week/week_problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace chalk::week {

/// What no plan at all can keep.
enum class ContradictionKind : std::uint8_t {
    LockedWithoutSlot,   ///< locked, and has no standing slot
    LockedAgainstRule,   ///< locked sessions where they stand break a rule, by themselves or together
    NoHours,             ///< the client has none
    NoAcceptedCoach,     ///< the client accepts none
    LongerThanHours,     ///< the session is longer than any span of the client
    LongerThanWindows,   ///< the session is longer than any stretch of work in the opening hours of the coaches whom the client accepts
    NoCommonHours,       ///< there are hours of each, but no start at which studio, a coach and the client are there
    StationNeverEnough,  ///< the session needs more of a station than there is
    TooFewDays           ///< more sessions of the client than days or recovery allow
};

inline constexpr int kContradictionKindCount = 9;

struct Contradiction {
    ContradictionKind kind = ContradictionKind::NoHours;
    std::optional<std::size_t> client;   ///< nothing where sessions of several are concerned
    std::optional<std::size_t> session;  ///< nothing where the client alone is concerned
    std::optional<std::size_t> station;  ///< of StationNeverEnough
    std::optional<PlanFault> fault;      ///< of LockedAgainstRule
    int needed = 0;  ///< LongerThan…: minutes; StationNeverEnough: per cent of a unit; TooFewDays: sessions
    int there = 0;   ///< in the same measure: the longest stretch, all units, the most sessions that can be placed

    bool operator==(const Contradiction&) const = default;
};

/// Everything of the kinds above, by the order of the kinds and then of the clients or sessions. A session is concerned by the first kind from
/// NoHours to NoCommonHours that holds for it. TooFewDays never speaks of sessions that could be placed; it may miss some that could not.
[[nodiscard]] std::vector<Contradiction> contradictionsOf(const WeekProblem& problem);

}  // namespace chalk::week
