#pragma once

#include "core/direction/block_plan.h"
#include "core/progression/block.h"

#include <string>

namespace chalk::direction {

/// The weeks of one lift of a plan from the week of `from` on, as its machine takes them. `lift` is an index of the plan's lifts; weeks without work of
/// the lift are left out. `single` is the effective load of its single, above 0.
[[nodiscard]] progression::Block blockOf(const BlockPlan& plan, std::size_t lift, base::Date from, base::Load single, bool isTested, std::string note);

}  // namespace chalk::direction
