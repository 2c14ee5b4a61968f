#pragma once

#include "core/planning/plan_draft.h"
#include "core/planning/starting_plan.h"

namespace chalk::planning {

/// The template with what the coach wants: a wanted exercise is the first choice of its pattern, a pattern that is left out is in no session.
/// An exercise that is not in the catalogue, or of another pattern, is passed over.
[[nodiscard]] PlanTemplate withWishes(PlanTemplate plan, const PlanDraft& draft, const lifts::Catalogue& catalogue);

/// The request with the coach's stages, first loads, equipment, days and first day. Days set by hand are the only free hours then.
[[nodiscard]] PlanRequest withWishes(PlanRequest request, const PlanDraft& draft);

}  // namespace chalk::planning
