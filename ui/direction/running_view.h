#pragma once

#include "ui/direction/direction_side.h"
#include "ui/direction/plan_panel.h"

namespace chalk::ui::direction {

// What is shown of a plan that runs; the case has one.

/// The chart with the present week marked, and for each main lift this week, the next one and the single that its loads come from now.
[[nodiscard]] PlanPanelView runningPanelView(const DirectionCase& client);
/// What is next, and which lifts do not follow the plan and why.
[[nodiscard]] DirectionSideView runningSideView(const DirectionCase& client);
/// Whether a lift that is off the plan could take it up again today: it carries load, is not on hold, and a single is known.
[[nodiscard]] bool canTakeUp(const DirectionCase& client);

}  // namespace chalk::ui::direction
