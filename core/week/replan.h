#pragma once

#include "core/week/week_problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace chalk::week {

enum class MoveKind : std::uint8_t { Moved, Placed, LeftOver };

/// A session that is elsewhere after a change.
struct SessionMove {
    std::size_t session = 0;
    std::optional<Slot> from;  ///< nothing: it was left over
    std::optional<Slot> to;    ///< nothing: it is left over now

    [[nodiscard]] MoveKind kind() const { return !from ? MoveKind::Placed : to ? MoveKind::Moved : MoveKind::LeftOver; }
    bool operator==(const SessionMove&) const = default;
};

struct ReplanOptions {
    /// Minutes since Monday: a session that starts before stays, and none is put there. 0 for the whole week.
    int fromMinute = 0;
    /// Of the search among competitors, some microseconds each.
    std::int64_t iterations = 20'000;
    unsigned seed = 1;
};

struct Replan {
    WeekPlan plan;
    std::vector<SessionMove> moves;  ///< by session

    bool operator==(const Replan&) const = default;
};

/// The plan after a change of the week: somebody cancelled (the session is gone from the problem), a coach or a client is away, a station or the
/// studio is closed, somebody is new. `present` is the plan from before and may break the rules of the problem now.
///
/// First, as few sessions as can be are left over, by priority; then as few as can be of those that have a slot leave it; then what moves
/// goes where the plan costs least, what leaving its slot costs counted twice. A plan that keeps the rules is changed only where something that
/// was left over gains. Beside the sessions that became illegal or were left over, only competitors move: all others in a small week (at most
/// kSmallWeek sessions that may move), else the nearest kMostCompetitors. In a small week these counts are the least there are unless the
/// iterations run out. Locked and past sessions stay, whatever rules they break.
[[nodiscard]] Replan replanned(const WeekProblem& problem, const WeekPlan& present, const ReplanOptions& options = {});

inline constexpr std::size_t kSmallWeek = 24;
inline constexpr std::size_t kMostCompetitors = 36;

/// What is elsewhere in `plan`, by session.
[[nodiscard]] std::vector<SessionMove> movesBetween(const WeekPlan& present, const WeekPlan& plan);

}  // namespace chalk::week
