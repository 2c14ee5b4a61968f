#include "core/checkin/trend_figures.h"

#include "core/base/enum_keys.h"

#include <algorithm>

namespace chalk::checkin {

namespace {

constexpr std::array<std::string_view, kFigureKinds.size()> kFigureKeys{
    "load_volume",      "came",        "counted",     "session_load", "monotony",   "strain",
    "estimated_single", "target_sets", "target_reps", "target_rest",  "load_ratio", "load_ratio_coupled"};

constexpr double kKilogramsPerPound = 0.45359237;  // exactly, by the yard and pound agreement of 1959

TrendFigure figureOf(FigureKind kind, base::Date day, double value)
{
    return {kind, day, {}, {}, value, {}, {}};
}

void addVolumes(std::vector<TrendFigure>& figures, const TrendWeek& week, base::MassUnit unit)
{
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const analysis::Work& work = week.work[static_cast<std::size_t>(pattern)];
        if (work.volume > base::Mass()) {
            figures.push_back({FigureKind::LoadVolume, week.monday, pattern, {}, massIn(work.volume, unit), {}, {}});
        }
    }
}

void addWeek(std::vector<TrendFigure>& figures, const TrendWeek& week, base::MassUnit unit)
{
    addVolumes(figures, week, unit);
    if (week.attendance.counted() > 0) {
        figures.push_back(figureOf(FigureKind::Came, week.monday, week.attendance.came));
        figures.push_back(figureOf(FigureKind::Counted, week.monday, week.attendance.counted()));
    }
    if (week.load.rated > 0) {
        figures.push_back(figureOf(FigureKind::SessionLoad, week.monday, week.load.load));
    }
    if (week.load.monotony) {
        figures.push_back(figureOf(FigureKind::Monotony, week.monday, *week.load.monotony));
        figures.push_back(figureOf(FigureKind::Strain, week.monday, *week.load.strain));
    }
}

void addLift(std::vector<TrendFigure>& figures, const LiftTrend& lift, std::size_t index)
{
    for (const EstimatePoint& point : lift.singles) {
        figures.push_back({FigureKind::EstimatedSingle, point.date, lift.pattern, index, massIn(point.median, lift.unit), massIn(point.lowest, lift.unit),
                           massIn(point.highest, lift.unit)});
    }
    for (const TargetStep& step : lift.targets) {
        const bool isRange = step.repsLow != step.repsHigh;
        figures.push_back({FigureKind::TargetSets, step.from, lift.pattern, index, static_cast<double>(step.sets.value()), {}, {}});
        figures.push_back({FigureKind::TargetReps, step.from, lift.pattern, index, static_cast<double>(step.repsLow.value()),
                           isRange ? std::optional<double>(step.repsLow.value()) : std::nullopt,
                           isRange ? std::optional<double>(step.repsHigh.value()) : std::nullopt});
        figures.push_back({FigureKind::TargetRest, step.from, lift.pattern, index, static_cast<double>(step.rest.value()), {}, {}});
    }
}

void sortByKind(std::vector<TrendFigure>& figures)
{
    std::stable_sort(figures.begin(), figures.end(), [](const TrendFigure& a, const TrendFigure& b) { return a.kind < b.kind; });
}

}  // namespace

double massIn(base::Mass mass, base::MassUnit unit)
{
    return unit == base::MassUnit::Kilogram ? mass.kilograms() : mass.kilograms() / kKilogramsPerPound;
}

std::vector<TrendFigure> figuresOf(const Trends& trends, base::MassUnit unit)
{
    std::vector<TrendFigure> figures;
    for (const TrendWeek& week : trends.weeks) {
        addWeek(figures, week, unit);
    }
    for (std::size_t i = 0; i < trends.lifts.size(); ++i) {
        addLift(figures, trends.lifts[i], i);
    }
    if (trends.ratio) {
        figures.push_back(figureOf(FigureKind::LoadRatio, trends.ratio->monday, trends.ratio->uncoupled));
        figures.push_back(figureOf(FigureKind::LoadRatioCoupled, trends.ratio->monday, trends.ratio->coupled));
    }
    sortByKind(figures);
    return figures;
}

std::vector<TrendFigure> figuresOf(const StudioTrends& trends)
{
    std::vector<TrendFigure> figures;
    for (const TrendWeek& week : trends.weeks) {
        addWeek(figures, week, base::MassUnit::Kilogram);
    }
    sortByKind(figures);
    return figures;
}

std::string_view keyOf(FigureKind kind)
{
    return base::keyIn(kFigureKeys, kind);
}

}  // namespace chalk::checkin
