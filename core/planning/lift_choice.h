#pragma once

#include "core/planning/starting_plan.h"

#include <tl/expected.hpp>

namespace chalk::planning {

/// What on hand an exercise can be done with; a pair is made of singles too. Nothing where it is not there, or where none is needed.
[[nodiscard]] const EquipmentOnHand* equipmentFor(const lifts::Exercise& exercise, const PlanRequest& request);

/// Why an exercise cannot be done; nothing where it can.
[[nodiscard]] std::optional<PassedOver> passOf(const lifts::Exercise& exercise, const PlanRequest& request);

/// The lift of one pattern of the template, or why there is none. A pattern on hold has none.
[[nodiscard]] tl::expected<PlannedLift, PatternGap> plannedLiftOf(lifts::Pattern pattern, const PlanTemplate& plan, const PlanRequest& request,
                                                                  const lifts::Catalogue& catalogue);

}  // namespace chalk::planning
