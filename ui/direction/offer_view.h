#pragma once

#include "ui/direction/direction_side.h"
#include "ui/direction/plan_panel.h"

namespace chalk::ui::direction {

/// The chart and the table of a plan that could be begun; it has weeks.
[[nodiscard]] PlanPanelView offerPanelView(const DirectionCase& client, const DirectionOffer& offer);
/// What it changes, why a direction is suggested or none is, why it cannot be begun.
[[nodiscard]] DirectionSideView offerSideView(const DirectionCase& client, const DirectionOffer& offer);

}  // namespace chalk::ui::direction
