#include "core/checkin/lift_trend.h"

#include "core/checkin/week_load.h"

#include <algorithm>

namespace chalk::checkin {

namespace {

using progression::PrescriptionKind;
using progression::Stage;

/// Keeps the best of a week.
void addSingle(LiftTrend& trend, const LiftDay& day)
{
    ++trend.estimates;
    const analysis::MaximumBand& band = day.single->band;
    const EstimatePoint point{day.date, band.lowest, band.median, band.highest};
    if (trend.singles.empty() || mondayOf(trend.singles.back().date) != mondayOf(day.date)) {
        trend.singles.push_back(point);
    } else if (point.median > trend.singles.back().median) {
        trend.singles.back() = point;
    }
}

void addTarget(LiftTrend& trend, const LiftDay& day, base::Date from)
{
    if (day.after.kind != PrescriptionKind::Work) {
        return;
    }
    const TargetStep step{std::max(day.date, from), day.after.sets, day.after.repsLow, day.after.repsHigh, day.after.rest};
    while (!trend.targets.empty() && trend.targets.back().from == step.from) {
        trend.targets.pop_back();
    }
    if (trend.targets.empty() || !trend.targets.back().isLike(step)) {
        trend.targets.push_back(step);
    }
}

void addStage(LiftTrend& trend, const LiftDay& day)
{
    trend.stage = day.after.stage;
    if (!trend.loadedSince && progression::isLoaded(trend.stage)) {
        trend.loadedSince = day.date;
    }
    if (!trend.buildSince && trend.stage >= Stage::LoadBuild) {
        trend.buildSince = day.date;
    }
}

}  // namespace

bool TargetStep::isLike(const TargetStep& other) const
{
    TargetStep same = other;
    same.from = from;
    return *this == same;
}

LiftTrend liftTrendOf(const TrendedLift& record, const DayRange& days)
{
    LiftTrend trend{record.lift, record.pattern, record.exerciseKey, record.name, record.unit, record.measure, record.metresPerRep, {}, 0, {}, Stage::Pattern, {}, {}};
    for (const LiftDay& day : record.days) {
        if (day.date > days.to) {
            break;
        }
        if (day.isSwap) {
            trend.singles.clear();
            trend.estimates = 0;
        }
        if (day.single && day.date >= days.from) {
            addSingle(trend, day);
        }
        addStage(trend, day);
        addTarget(trend, day, days.from);
    }
    return trend;
}

}  // namespace chalk::checkin
