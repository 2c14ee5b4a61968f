#pragma once

#include "ui/direction/plan_editor_model.h"

namespace chalk::ui::direction {

/// Monday 30 November 2026: the first week of the plans on test.
[[nodiscard]] base::Date firstMonday();
/// A back squat in kg with an estimated single of 100, a bench press in kg with a tested one of 80, a dumbbell row in lb with none.
[[nodiscard]] std::vector<chalk::direction::LiftForPlan> liftsOnTest();
/// A strength plan of 12 weeks, linear, with a test: squat and bench lead twice a week, the row assists once.
[[nodiscard]] chalk::direction::PlanWishes wishesOnTest();
/// That plan, not on file, on a day of it.
[[nodiscard]] PlanEditorCase caseOnTest(base::Date today = firstMonday() - 4);

}  // namespace chalk::ui::direction
