#pragma once

#include "core/planning/plan_draft.h"
#include "core/planning/starting_plan.h"

namespace chalk::planning {

/// Where the patterns stand: by the screen, or as the coach chose. A choice that cannot be (pain, no reason) is not followed. Loaded work that
/// lacks something starts with its pauses, unless the coach chose otherwise.
[[nodiscard]] std::array<PatternStanding, lifts::kPatterns.size()> standingsOf(const std::array<progression::PatternStart, lifts::kPatterns.size()>& starts,
                                                                               const PlanDraft& draft);

/// The template with what the coach wants: sessions hold what the coach put into them, in that order (contents for another template are left
/// aside); a wanted exercise is the first choice of its pattern, a pattern that is left out is in no session.
/// An exercise that is not in the catalogue, or of another pattern, is passed over.
[[nodiscard]] PlanTemplate withWishes(PlanTemplate plan, const PlanDraft& draft, const lifts::Catalogue& catalogue);

/// The sessions of the template that are left with a pattern: where each session of withWishes() comes from, in its order.
[[nodiscard]] std::vector<std::size_t> keptSessions(const PlanTemplate& plan, const PlanDraft& draft);

/// The day that a plan begins on: no earlier than that of the request.
[[nodiscard]] base::Date firstDayOf(const PlanRequest& request, const PlanDraft& draft);

/// The suggestion with the coach's exercises, equipment, first loads, days and first day laid over it; the starting stages are those of the
/// request. Days set by hand are kept as they are, whatever the hours: the week says what lies too close. Slots of sessions that the template
/// does not have make the days those that are suggested.
[[nodiscard]] StartingPlan wishedPlanOf(const PlanTemplate& plan, const PlanRequest& request, const PlanDraft& draft, const lifts::Catalogue& catalogue);

}  // namespace chalk::planning
