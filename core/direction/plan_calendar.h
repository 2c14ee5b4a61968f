#pragma once

#include "core/direction/block_plan.h"

#include <span>
#include <vector>

namespace chalk::direction {

/// What becomes of the weeks of a plan that are missed.
enum class MissedWeeks : std::uint8_t {
    Shift,    ///< the plan goes on where it stopped, and ends later
    Squeeze   ///< the plan ends when it was to end: weeks of work are left out, the earliest of the longest phases first
};

/// The plan with the weeks of these Mondays missed, none of them before the plan's first. Weeks before the first missed one stay as they are. A
/// squeezed plan keeps its test and never loses the last week of work of a phase while another phase has more than one; a lighter week is left out
/// before a week of work, as the missed week was one. Where more is missed than can be left out, the rest is shifted.
[[nodiscard]] BlockPlan withMissedWeeks(const BlockPlan& plan, std::span<const base::Date> mondays, MissedWeeks way);

/// The index of the week that holds `day`; nothing outside of the plan and in a hole of it.
[[nodiscard]] std::optional<std::size_t> weekOn(const BlockPlan& plan, base::Date day);

}  // namespace chalk::direction
