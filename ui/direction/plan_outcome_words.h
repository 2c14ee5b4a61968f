#pragma once

#include "core/base/load.h"
#include "core/direction/client_plan.h"
#include "core/direction/plan_review.h"
#include "ui/trends/trend_sheets.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace chalk::ui::direction {

/// What a lift did in a plan that is over.
struct OutcomeLift {
    QString name;
    base::MassUnit unit = base::MassUnit::Kilogram;
    chalk::direction::PlanSingle before;              ///< when the plan was begun; 0 where none was known
    std::optional<chalk::direction::PlanSingle> now;  ///< nothing where none is known
    std::vector<chalk::direction::WeekReview> weeks;  ///< of the plan
    int painDays = 0;                                 ///< days of the plan with pain written down
    bool isOnHold = false;
};

/// A plan that is over.
struct PlanOutcomeCase {
    chalk::direction::ClientPlan plan;
    QString client;
    std::vector<OutcomeLift> lifts;  ///< by lift of the plan
};

/// The change of a single in per cent; nothing where one of the two is not known.
[[nodiscard]] std::optional<double> changeOf(const OutcomeLift& lift);
/// Weeks until the plan's last day in which no set of any lift was done.
[[nodiscard]] int weeksMissed(const PlanOutcomeCase& outcome);

/// `Strength, 12 weeks: 30 November 2026 – 21 February 2027.`, how much was done, which singles rose and fell, what hurt: a sentence each.
[[nodiscard]] QStringList outcomeSentences(const PlanOutcomeCase& outcome);
/// By lift: the single then and now, the change, the sets.
[[nodiscard]] trends::TrendSheet outcomeSheet(const PlanOutcomeCase& outcome);

}  // namespace chalk::ui::direction
