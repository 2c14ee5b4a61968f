#pragma once

#include "core/direction/plan_review.h"
#include "ui/trends/chart_view.h"

#include <optional>
#include <vector>

namespace chalk::ui::direction {

/// The weeks of a plan beside what was done in them.
struct PlanComparisonScene {
    std::vector<chalk::direction::WeekReview> weeks;  ///< one at least
    std::optional<std::size_t> present;               ///< the week that runs
    base::Date today;
};

/// Mean intensity above, sets below: planned as outlines, done filled; the present week on a ground of its own. Answers a spot for each week.
trends::HotSpots paintPlanComparison(QPainter& painter, const QRectF& area, const PlanComparisonScene& scene, const common::Theme& theme);

}  // namespace chalk::ui::direction
