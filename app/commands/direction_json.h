#pragma once

#include "core/direction/direction_fit.h"
#include "ui/print/plan_paper.h"

#include <QJsonArray>
#include <QJsonObject>

#include <span>

namespace chalk::app {

/// A plan: `client`, `name`, `id` (0: not on file), `begun`, `ended`, `note`, `plan`, `singles`, `running`, `last_day`; `lifts` with the
/// singles that loads come from now; `loads` by week, lift and exposure (null where no single is known), `curves`, `departures`, and
/// `zones` of a strength plan.
[[nodiscard]] QJsonObject planJson(const ui::print::PlanPaper& paper);
/// What was planned beside what was done: `client`, `name`, `id`, and for each of `lifts` its `name` and `weeks`.
[[nodiscard]] QJsonObject comparisonJson(const ui::print::PlanPaper& paper);
/// The three directions with what each asks and how it fits.
[[nodiscard]] QJsonArray directionsJson(std::span<const direction::DirectionFit> fits);

}  // namespace chalk::app
