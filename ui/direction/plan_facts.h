#pragma once

#include "ui/direction/direction_case.h"
#include "ui/direction/missed_weeks.h"
#include "ui/direction/plan_comparison_figures.h"
#include "ui/direction/plan_editor_model.h"
#include "ui/direction/plan_outcome_words.h"

namespace chalk::ui::direction {

// What the editor, the missed weeks, the comparison and the review of a plan are made from.

/// For a plan that runs or could be begun.
[[nodiscard]] PlanEditorCase editorFacts(const DirectionCase& client, chalk::direction::ClientPlan plan);
/// An offer as a plan of the client; it is on no file.
[[nodiscard]] chalk::direction::ClientPlan planOf(const DirectionCase& client, const DirectionOffer& offer);
/// Of the running plan.
[[nodiscard]] MissedWeeksCase missedFacts(const DirectionCase& client);
/// Of a plan that runs or is over, whose sets are `done` of the case.
[[nodiscard]] PlanComparisonCase comparisonFacts(const DirectionCase& client, const chalk::direction::ClientPlan& plan);
/// Of the plan that is over.
[[nodiscard]] PlanOutcomeCase outcomeFacts(const DirectionCase& client);

}  // namespace chalk::ui::direction
