#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/plan_review.h"
#include "ui/trends/trend_sheets.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <span>
#include <vector>

namespace chalk::ui::direction {

/// One lift of a plan, planned and done (see direction::reviewOf).
struct ComparedLift {
    QString name;
    std::vector<chalk::direction::WeekReview> weeks;  ///< of the plan
};

/// A plan beside what was done.
struct PlanComparisonCase {
    chalk::direction::BlockPlan plan;
    std::vector<ComparedLift> lifts;  ///< one at least
    QString client;
    base::Date today;
};

/// Whether anything is to be said of what was done in a week: it has begun.
[[nodiscard]] bool hasBegun(const chalk::direction::WeekReview& week, base::Date today);
/// Of a lift, or of all of them together: sets and repetitions summed, shares weighed by repetitions.
[[nodiscard]] std::vector<chalk::direction::WeekReview> comparedWeeks(const PlanComparisonCase& facts, std::optional<std::size_t> lift);
/// `Week 5, from 28 Dec: 8 sets planned, 6 done; 85 % planned, 83.5 % done`.
[[nodiscard]] QString comparedText(std::size_t number, const chalk::direction::WeekReview& week, base::Date today);
/// Sets of the weeks that have begun: `26 of 32 sets done so far.`
[[nodiscard]] QString comparedSoFar(std::span<const chalk::direction::WeekReview> weeks, base::Date today);

/// The weeks as a table; the present one says so.
[[nodiscard]] trends::TrendSheet comparisonSheet(const PlanComparisonCase& facts, std::optional<std::size_t> lift);
/// Every lift and week as CSV (RFC 4180), UTF-8, under the header
/// `lift,week,monday,phase,kind,planned_sets,done_sets,planned_reps,done_reps,planned_percent,done_percent`. What was done is empty before a week begins,
/// shares are per cent of the single with one decimal and empty where nothing was done.
[[nodiscard]] QByteArray comparisonCsv(const PlanComparisonCase& facts);

}  // namespace chalk::ui::direction
