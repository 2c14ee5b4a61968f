#pragma once

#include "core/planning/plan_template.h"

#include <cstddef>
#include <vector>

namespace chalk::planning {

/// What each session of a week trains, in the order in which it is done: one list for each session of a template.
using SessionContents = std::vector<std::vector<lifts::Pattern>>;

/// What the sessions of a template train, as it lists them.
[[nodiscard]] SessionContents contentsOf(const PlanTemplate& plan);

/// Whether the contents are some for that template: as many sessions, nothing twice in one, and something in each.
[[nodiscard]] bool isFor(const PlanTemplate& plan, const SessionContents& contents);

/// Moves a pattern by so many places inside of its session; it stops at either end. Nothing happens where the session has it not.
void shift(SessionContents& contents, std::size_t session, lifts::Pattern pattern, int places);

/// Adds a pattern at the end of a session that has it not.
void addTo(SessionContents& contents, std::size_t session, lifts::Pattern pattern);

/// Takes a pattern out of a session. The last one stays: a session without any is none.
void takeOutOf(SessionContents& contents, std::size_t session, lifts::Pattern pattern);

/// The session with the fewest patterns, the first of them; for a pattern that none trains yet. There is one session at least.
[[nodiscard]] std::size_t shortestOf(const SessionContents& contents);

}  // namespace chalk::planning
