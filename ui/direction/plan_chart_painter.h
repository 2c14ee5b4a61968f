#pragma once

#include "ui/common/theme.h"
#include "ui/direction/plan_chart_scene.h"

#include <QRectF>

class QPainter;

namespace chalk::ui::direction {

/// Where the things of a plan's chart lie. Pixels.
struct PlanChartFrame {
    QRectF phases;         ///< the row on top
    QRectF plot;
    double weekWidth = 1;
    int lowest = 0;        ///< per cent at the bottom of the plot, in tens
    int highest = 100;     ///< per cent at the highest line
    int setsTop = 20;      ///< hard sets at the highest line
    int setsStep = 10;
    double linesTop = 0;   ///< y of the highest line

    [[nodiscard]] double left(double week) const { return plot.left() + week * weekWidth; }
    [[nodiscard]] double centre(std::size_t week) const { return left(static_cast<double>(week) + 0.5); }
    /// `share` from 0 to 1.
    [[nodiscard]] double yOfIntensity(double share) const;
    [[nodiscard]] double yOfSets(int sets) const;
    /// The week under a point; nothing beside the plot.
    [[nodiscard]] std::optional<std::size_t> weekAt(const QPointF& point, std::size_t weeks) const;
};

[[nodiscard]] PlanChartFrame planChartFrame(const PlanChartScene& scene, const QRectF& area, const common::Theme& theme);

/// Phases on top, hard sets as bars, intensity as a line, closed days hatched, dates below; `chosen` is a week that is read.
void paintPlanChart(QPainter& painter, const PlanChartFrame& frame, const PlanChartScene& scene, const std::optional<std::size_t>& chosen,
                    const common::Theme& theme);

}  // namespace chalk::ui::direction
