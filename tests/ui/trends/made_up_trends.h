#pragma once

#include "ui/trends/chart_view.h"
#include "ui/trends/trends_source.h"

#include <QImage>

#include <atomic>

namespace chalk::ui::trends {

/// Wednesday 25 November 2026.
[[nodiscard]] base::Date madeUpDay();
[[nodiscard]] base::Mass madeUpMass(int kilograms);

/// Joaquin Ferro over four weeks: squat and row with load, estimates, targets and a monotony of 2.1 in the last finished week.
[[nodiscard]] store::ClientTrends madeUpClient();
/// Somebody whose lifts have no load yet.
[[nodiscard]] store::ClientTrends madeUpBeginner();
/// The studio of both, and a third whose load fell.
[[nodiscard]] checkin::StudioTrends madeUpStudio();
[[nodiscard]] TrendsView viewOf(store::ClientTrends client);
[[nodiscard]] TrendsView viewOf(checkin::StudioTrends studio);

/// Trends that were made up: client 1 and 2, and everybody. It can be told to fail.
class MadeUpTrends final : public TrendsSource {
public:
    std::atomic<bool> isBroken = false;
    std::atomic<int> readings = 0;
    std::atomic<int> lastWeeks = 0;

    [[nodiscard]] store::Result<TrendsView> read(const TrendsAsk& ask) override;
};

/// A picture of a chart on the ground of the theme, and what it answered.
struct PaintedChart {
    QImage image;
    HotSpots spots;

    /// Pixels that are not of the ground.
    [[nodiscard]] int inked(const common::Theme& theme) const;
};

[[nodiscard]] PaintedChart painted(const ChartPaint& paint, const common::Theme& theme, QSize size = {560, 300});

}  // namespace chalk::ui::trends
