#include "ui/direction/plan_chart_scene.h"

#include "core/direction/plan_calendar.h"
#include "core/direction/plan_curves.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace chalk::ui::direction {

namespace {

using chalk::direction::BlockPlan;
using chalk::direction::WeekCurve;
using chalk::direction::WeekKind;

constexpr int kDaysOfChartWeek = 7;

constexpr double kGapOfLabels = 6;

struct PlanChartText {
    Q_DECLARE_TR_FUNCTIONS(PlanChart)
};

QString dayNumber(base::Date day)
{
    return QString::number(static_cast<unsigned>(day.ymd().day()));
}

QString labelOf(const std::vector<WeekCurve>& curves, std::size_t week)
{
    const base::Date monday = curves[week].monday;
    const bool isNewMonth = week == 0 || curves[week - 1].monday.ymd().month() != monday.ymd().month();
    return isNewMonth ? common::shortDayText(monday) : dayNumber(monday);
}

QString spokenOf(const WeekCurve& curve, std::size_t week)
{
    QString spoken = PlanChartText::tr("Week %1, from %2: %3 %, %4 hard sets")
                         .arg(week + 1)
                         .arg(common::shortDayText(curve.monday))
                         .arg(qRound(100 * curve.intensity))
                         .arg(curve.hardSets);
    switch (curve.kind) {
    case WeekKind::Work:
        break;
    case WeekKind::Lighter:
        spoken += PlanChartText::tr(", lighter week");
        break;
    case WeekKind::Test:
        spoken += PlanChartText::tr(", test");
        break;
    }
    return spoken;
}

std::vector<PlanChartPhase> phasesOf(const std::vector<WeekCurve>& curves)
{
    std::vector<PlanChartPhase> phases;
    for (std::size_t i = 0; i < curves.size(); ++i) {
        if (phases.empty() || phases.back().phase != curves[i].phase) {
            phases.push_back({common::phaseName(curves[i].phase), {}, curves[i].phase, i, 0});
        }
        ++phases.back().count;
    }
    for (PlanChartPhase& phase : phases) {
        phase.note = phase.count == 1 ? PlanChartText::tr("1 week") : PlanChartText::tr("%1 weeks").arg(phase.count);
    }
    return phases;
}

/// The days of a closure that lie in a week of the plan, as parts of it; nothing where none does.
std::optional<PlanChartClosure> closedPart(const BlockPlan& plan, std::size_t week, const ClosedDays& closed)
{
    const base::Date monday = plan.weeks[week].monday;
    const int from = std::max(0, closed.first - monday);
    const int to = std::min(kDaysOfChartWeek, closed.last - monday + 1);
    if (from >= to) {
        return std::nullopt;
    }
    const auto at = [week](int day) { return static_cast<double>(week) + static_cast<double>(day) / kDaysOfChartWeek; };
    return PlanChartClosure{at(from), at(to)};
}

void addClosure(std::vector<PlanChartClosure>& closures, const PlanChartClosure& part)
{
    constexpr double kTouch = 1e-9;
    if (!closures.empty() && part.from <= closures.back().to + kTouch) {
        closures.back().to = std::max(closures.back().to, part.to);
    } else {
        closures.push_back(part);
    }
}

std::vector<PlanChartClosure> closuresOf(const BlockPlan& plan, std::span<const ClosedDays> closures)
{
    std::vector<PlanChartClosure> parts;
    for (std::size_t week = 0; week < plan.weeks.size(); ++week) {
        for (const ClosedDays& closed : closures) {
            if (const auto part = closedPart(plan, week, closed)) {
                parts.push_back(*part);
            }
        }
    }
    std::ranges::sort(parts, {}, &PlanChartClosure::from);
    std::vector<PlanChartClosure> joined;
    for (const PlanChartClosure& part : parts) {
        addClosure(joined, part);
    }
    return joined;
}

QString wholeSpoken(const PlanChartScene& scene)
{
    QStringList phases;
    for (const PlanChartPhase& phase : scene.phases) {
        phases.append(QStringLiteral("%1 %2").arg(phase.name, phase.note));
    }
    return PlanChartText::tr("The plan by week, %1 weeks: %2").arg(scene.weeks.size()).arg(phases.join(QStringLiteral(", ")));
}

}  // namespace

PlanChartScene planChartScene(const BlockPlan& plan, std::span<const ClosedDays> closures, std::optional<base::Date> present)
{
    PlanChartScene scene;
    const std::vector<WeekCurve> curves = chalk::direction::curvesOf(plan);
    for (std::size_t i = 0; i < curves.size(); ++i) {
        scene.weeks.push_back({labelOf(curves, i), spokenOf(curves[i], i), curves[i].intensity, curves[i].hardSets, curves[i].kind});
    }
    scene.phases = phasesOf(curves);
    scene.closures = closuresOf(plan, closures);
    scene.present = present ? chalk::direction::weekOn(plan, *present) : std::nullopt;
    scene.spoken = wholeSpoken(scene);
    return scene;
}

std::vector<int> closedWeeks(const BlockPlan& plan, const ClosedDays& closed)
{
    std::vector<int> weeks;
    for (std::size_t week = 0; week < plan.weeks.size(); ++week) {
        if (closedPart(plan, week, closed)) {
            weeks.push_back(static_cast<int>(week) + 1);
        }
    }
    return weeks;
}

QStringList dateLabels(const PlanChartScene& scene, double weekWidth, const std::function<double(const QString&)>& widthOf)
{
    QStringList labels;
    for (std::size_t i = 0; i < scene.weeks.size(); ++i) {
        const QString& label = scene.weeks[i].label;
        const bool hasNext = i + 1 < scene.weeks.size();
        const bool meetsNext = hasNext && (widthOf(label) + widthOf(scene.weeks[i + 1].label)) / 2 + kGapOfLabels > weekWidth;
        labels.append(meetsNext ? label.section(QLatin1Char(' '), 0, 0) : label);
    }
    return labels;
}

}  // namespace chalk::ui::direction
