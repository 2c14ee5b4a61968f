#pragma once

#include "app/commands/command.h"
#include "core/direction/lift_for_plan.h"
#include "core/direction/tested_maximum.h"
#include "ui/print/plan_paper.h"

#include <vector>

namespace chalk::app {

/// Writes a plan, or with `--compare` what was done of it, in the form that is asked for: text, `--json`, `--csv` or `--pdf`. The last
/// needs QGuiApplication.
int showPlan(const CommandContext& context, const ui::print::PlanPaper& paper);

/// Writes what tests found, as text or as JSON: `day`, `lift`, `load`, `unit`, `reps`, `end`, `note`.
void showTestedMaxima(const CommandContext& context, const std::vector<direction::TestedMaximum>& tests,
                      const std::vector<direction::LiftForPlan>& lifts, const lifts::Catalogue& catalogue);

}  // namespace chalk::app
