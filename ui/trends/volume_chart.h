#pragma once

#include "ui/trends/chart_view.h"

#include "core/checkin/trends.h"

namespace chalk::ui::trends {

/// What the bars of the weeks show.
struct VolumeScene {
    std::vector<checkin::TrendWeek> weeks;
    base::MassUnit unit = base::MassUnit::Kilogram;
    int selected = 0;  ///< an index of `weeks`
};

/// From the foot of a bar to its top.
inline constexpr std::array kStackOrder{lifts::Pattern::Squat,        lifts::Pattern::Hinge,          lifts::Pattern::SingleLeg,    lifts::Pattern::HorizontalPush,
                                        lifts::Pattern::VerticalPush, lifts::Pattern::HorizontalPull, lifts::Pattern::VerticalPull, lifts::Pattern::CarryBrace};

/// Stacked bars by pattern, the selected week framed. Answers a spot for each week, in their order.
HotSpots paintVolume(QPainter& painter, const QRectF& area, const VolumeScene& scene, const common::Theme& theme);
/// The selected week in numbers, with the keys of the colours; `note` stands at the foot.
HotSpots paintWeekValues(QPainter& painter, const QRectF& area, const VolumeScene& scene, const QString& note, const common::Theme& theme);
/// The bars and the values of the selected week for screen readers.
[[nodiscard]] QString spokenVolume(const VolumeScene& scene);

}  // namespace chalk::ui::trends
