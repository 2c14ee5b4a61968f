#pragma once

#include "core/base/date.h"
#include "core/direction/block_plan.h"

#include <QString>

#include <optional>
#include <span>
#include <vector>

namespace chalk::ui::direction {

/// Days on which the studio is closed; both count.
struct ClosedDays {
    base::Date first;
    base::Date last;

    bool operator==(const ClosedDays&) const = default;
};

/// One week of a plan on its chart.
struct PlanChartWeek {
    QString label;         ///< of its Monday: `30 Nov`; `7` where the month is that of the week before
    QString spoken;        ///< all that it says: `Week 4, from 21 Dec: 65 %, 20 hard sets, lighter week`
    double intensity = 0;  ///< share of the single, 0 to 1
    int hardSets = 0;
    chalk::direction::WeekKind kind = chalk::direction::WeekKind::Work;

    bool operator==(const PlanChartWeek&) const = default;
};

/// Weeks of one phase that follow each other.
struct PlanChartPhase {
    QString name;
    QString note;  ///< `4 weeks`
    chalk::direction::Phase phase = chalk::direction::Phase::Base;
    std::size_t first = 0;
    std::size_t count = 0;

    bool operator==(const PlanChartPhase&) const = default;
};

/// Closed days, in weeks of the chart: 1.5 is the middle of the second one.
struct PlanChartClosure {
    double from = 0;
    double to = 0;

    bool operator==(const PlanChartClosure&) const = default;
};

/// What the chart of a plan shows.
struct PlanChartScene {
    std::vector<PlanChartWeek> weeks;
    std::vector<PlanChartPhase> phases;
    std::vector<PlanChartClosure> closures;  ///< apart from each other, the earliest first
    std::optional<std::size_t> present;      ///< the week that runs
    QString spoken;                          ///< the whole in a sentence

    bool operator==(const PlanChartScene&) const = default;
};

/// The chart of a plan with one week at least. `present` is the day that is marked, none for a plan that is only looked at.
[[nodiscard]] PlanChartScene planChartScene(const chalk::direction::BlockPlan& plan, std::span<const ClosedDays> closures,
                                            std::optional<base::Date> present = {});

/// The weeks of the plan, counted from 1, in which the studio is closed on one day or more.
[[nodiscard]] std::vector<int> closedWeeks(const chalk::direction::BlockPlan& plan, const ClosedDays& closed);

}  // namespace chalk::ui::direction
